/** Everything the shop could tie for one order meets the rules: style x strands x buckle that takes it x length step. */
import { lengthSteps } from '../facts/length.ts';
import { Ground, type Hang } from '../fit/ground.ts';
import { Laid } from '../fit/lay.ts';
import type { CaseFacts, Judgement } from '../rules/rule.ts';
import { tiedBy, type Make, type TiedList } from '../stock/tied.ts';
import { Contest, type Entrant } from './contest.ts';
import type { Criterion } from './criteria.ts';
import { frontRunners } from './front-runners.ts';
import { countIn, Judge, refuses, type Finding, type Judged } from './judge.ts';

/** In the place of a tally: it cannot be tied, or the rules were not asked yet. */
const NOTHING = -1;
const OPEN = -2;

/**
 * All candidates of one order, in a fixed order that does not depend on the order of the shop's lists. Each is a number:
 * that of its make (style, strands and buckle) times the number of lengths, plus that of its length. It is judged when
 * somebody asks, and its tally alone is kept; it is laid again when it is looked at, as few of them are.
 */
export class Trial {
  readonly judge: Judge;
  readonly ground: Ground;
  readonly tied: TiedList;
  /** How many lengths there are. */
  readonly lengths: number;
  /** Of each buckle every length: a hang's number is that of its buckle times the number of lengths, plus that of its length. */
  readonly #hangs: readonly Hang[];
  readonly #tallies: Int32Array;
  /** Of each make and of each hang: what of a tally is known without laying any cords. */
  readonly #ofMakes: Int32Array;
  readonly #ofHangs: Int32Array;
  /** The one that is judged just now. */
  readonly #laid: Laid;

  constructor(facts: CaseFacts) {
    const tied = tiedBy(facts.shop);
    const { makes, strands, buckles } = tied;
    const ground = new Ground(facts, tied);
    const lengths = lengthSteps(facts.lengthNeed.target.value, facts.shop.lengths);
    const hangs: Hang[] = [];
    for (const buckle of buckles) for (const length of lengths) hangs.push(ground.hang(buckle, length));
    this.tied = tied;
    this.ground = ground;
    this.lengths = lengths.length;
    this.#hangs = hangs;
    this.#laid = new Laid(ground);
    const sizes = { strands: strands.length, buckles: buckles.length, lengths: lengths.length };
    this.judge = new Judge(facts, sizes, tied);
    this.#ofMakes = new Int32Array(makes.length).fill(OPEN);
    this.#ofHangs = new Int32Array(hangs.length).fill(OPEN);
    this.#tallies = new Int32Array(makes.length * lengths.length).fill(OPEN);
  }

  /** How many candidates there are, those that cannot be tied among them. */
  get size(): number {
    return this.#tallies.length;
  }

  /** All that can be tied. */
  get all(): Judged[] {
    const found: Judged[] = [];
    for (let at = 0; at < this.size; at++) if (this.tally(at) !== NOTHING) found.push(this.judgedAt(at));
    return found;
  }

  /** Of what passes the first of each style and strand count, by these criteria. */
  bestOfEach(criteria: readonly Criterion[]): Judged[] {
    const telling = criteria.filter((criterion) => criterion.of !== 'make');
    const contest = new Contest(telling, [this.seat(), this.seat()]);
    const found: Judged[] = [];
    for (const group of this.tied.groups) {
      contest.restart();
      for (const make of group) {
        const from = make * this.lengths;
        for (let at = from; at < from + this.lengths; at++) if (this.passes(at)) contest.enter(at);
      }
      if (contest.first !== undefined) found.push(this.judgedAt(contest.first));
    }
    return found;
  }

  /** The first two by these criteria, each of another style or strand count; the others are not even laid. */
  frontRunners(criteria: readonly Criterion[]): Judged[] {
    return frontRunners(this, criteria).map((at) => this.judgedAt(at));
  }

  passes(at: number): boolean {
    const known = this.#tallies[at] as number;
    if (known === OPEN && refuses(this.earlyTally(at))) return false; // no cords need be laid for that
    const tally = this.tally(at);
    return tally !== NOTHING && !refuses(tally);
  }

  /** Verdicts of a candidate, counted and packed. */
  tally(at: number): number {
    const known = this.#tallies[at] as number;
    if (known !== OPEN) return known;
    const early = this.earlyTally(at); // lays others to find out
    const can = this.lay(this.#laid, at);
    return (this.#tallies[at] = can ? early + this.judge.ofRest(this.#laid) : NOTHING);
  }

  /** What of a tally is known without laying any cords. */
  earlyTally(at: number): number {
    return this.makeTally(this.#makeOf(at)) + this.hangTally(this.#hangOf(at));
  }

  /** Verdicts of rules that look at a make, whatever its length. */
  makeTally(make: number): number {
    const known = this.#ofMakes[make] as number;
    if (known !== OPEN) return known;
    this.#lay(this.#laid, make, this.firstHangOf(make));
    return (this.#ofMakes[make] = this.judge.ofMake(this.#laid));
  }

  /** Verdicts of rules that look at how a buckle hangs, whatever is tied to it. */
  hangTally(hang: number): number {
    const known = this.#ofHangs[hang] as number;
    if (known !== OPEN) return known;
    this.#lay(this.#laid, 0, hang);
    return (this.#ofHangs[hang] = this.judge.ofHang(this.#laid));
  }

  /** Number of the shortest hang of a make's buckle. */
  firstHangOf(make: number): number {
    return (this.tied.makes[make] as Make).buckleNo * this.lengths;
  }

  /** Number of a candidate's style and strand count. */
  groupOf(at: number): number {
    return (this.tied.makes[this.#makeOf(at)] as Make).groupNo;
  }

  #makeOf(at: number): number {
    return Math.floor(at / this.lengths);
  }

  #hangOf(at: number): number {
    return this.firstHangOf(this.#makeOf(at)) + (at % this.lengths);
  }

  judgedAt(at: number): Judged {
    const seat = this.seat();
    seat.become(at);
    return seat;
  }

  seat(): Entrant {
    return new Seat(this);
  }

  /** Lays the candidate of a number; false when it cannot be tied. */
  lay(laid: Laid, at: number): boolean {
    return this.#lay(laid, this.#makeOf(at), this.#hangOf(at));
  }

  #lay(laid: Laid, make: number, hang: number): boolean {
    return laid.lay(this.tied.makes[make] as Make, this.#hangs[hang] as Hang);
  }
}

/** A candidate of a trial by its number, laid when it is looked at. */
class Seat implements Entrant {
  at = 0;
  private readonly trial: Trial;
  private readonly laid: Laid;
  private isLaid = false;

  constructor(trial: Trial) {
    this.trial = trial;
    this.laid = new Laid(trial.ground);
  }

  become(at: number): void {
    this.at = at;
    this.isLaid = false;
  }

  get candidate(): Laid {
    if (!this.isLaid) this.trial.lay(this.laid, this.at);
    this.isLaid = true;
    return this.laid;
  }

  get findings(): readonly Finding[] {
    return this.trial.judge.findingsOf(this.candidate);
  }

  countOf(judgement: Judgement): number {
    return countIn(this.trial.tally(this.at), judgement);
  }

  judgementOf(rule: string): Judgement | undefined {
    return this.trial.judge.judgementOf(rule, this.candidate);
  }
}
