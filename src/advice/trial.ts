/** Everything the shop could tie for one order meets the rules: style x strands x buckle that takes it x length step. */
import { lengthSteps } from '../facts/length.ts';
import { Ground, type Hang } from '../fit/ground.ts';
import { Laid } from '../fit/lay.ts';
import type { Style } from '../order/types.ts';
import type { CaseFacts, Judgement } from '../rules/rule.ts';
import { styleIds } from '../stock/styles.ts';
import { tiedBy, type Tied, type TiedList } from '../stock/tied.ts';
import { Contest, type Entrant } from './contest.ts';
import type { Criterion } from './criteria.ts';
import { frontRunners } from './front-runners.ts';
import { countIn, Judge, type Finding, type Judged } from './judge.ts';

/** In the place of a tally: it cannot be tied, or the rules were not asked yet. */
const NOTHING = -1;
const OPEN = -2;

const STYLES = styleIds.length;

/**
 * All candidates of one order, in a fixed order that does not depend on the order of the shop's lists. Each is a number,
 * judged when somebody asks, of which its tally alone is kept; it is laid again when it is looked at, as few of them are.
 */
export class Trial {
  readonly judge: Judge;
  readonly ground: Ground;
  readonly #tied: TiedList;
  /** Of each buckle, by length. */
  readonly #hangs: readonly (readonly Hang[])[];
  /** How many lengths there are. */
  readonly lengths: number;
  readonly #tallies: Int32Array;
  /** Of what is tied, and of each buckle at each length: what of a tally is known without laying any cords. */
  readonly #makes: Int32Array;
  readonly #hung: Int32Array;
  /** The one that is judged just now. */
  readonly #laid: Laid;

  constructor(facts: CaseFacts) {
    const tied = tiedBy(facts.shop);
    const ground = new Ground(facts, tied);
    const lengths = lengthSteps(facts.lengthNeed.target.value, facts.shop.lengths);
    this.#tied = tied;
    this.ground = ground;
    this.#laid = new Laid(ground);
    this.lengths = lengths.length;
    this.#hangs = tied.buckles.map((buckle) => lengths.map((length) => ground.hang(buckle, length)));
    const sizes = { strands: tied.strands.length, buckles: tied.buckles.length, lengths: lengths.length };
    this.judge = new Judge(facts, sizes, tied);
    const makes = tied.all.length * STYLES;
    this.#makes = new Int32Array(makes).fill(OPEN);
    this.#hung = new Int32Array(tied.buckles.length * this.lengths).fill(OPEN);
    this.#tallies = new Int32Array(makes * this.lengths).fill(OPEN);
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
    const { strands, starts } = this.#tied;
    const found: Judged[] = [];
    for (let n = 0; n < strands.length; n++) {
      for (let style = 0; style < STYLES; style++) {
        contest.restart();
        for (let tied = starts[n] as number; tied < (starts[n + 1] as number); tied++) {
          const from = (tied * STYLES + style) * this.lengths;
          for (let at = from; at < from + this.lengths; at++) if (this.passes(at)) contest.enter(at);
        }
        if (contest.first !== undefined) found.push(this.judgedAt(contest.first));
      }
    }
    return found;
  }

  /** The first two by these criteria, each of another style or strand count; the others are not even laid. */
  frontRunners(criteria: readonly Criterion[]): Judged[] {
    return frontRunners(this, criteria).map((at) => this.judgedAt(at));
  }

  passes(at: number): boolean {
    const tally = this.tally(at);
    return tally !== NOTHING && countIn(tally, 'refuse') === 0;
  }

  /** Verdicts of a candidate, counted and packed. */
  tally(at: number): number {
    const known = this.#tallies[at] as number;
    if (known !== OPEN) return known;
    const early = this.makeTally(at) + this.hangTally(at);
    const can = this.lay(this.#laid, at);
    return (this.#tallies[at] = can ? early + this.judge.ofRest(this.#laid) : NOTHING);
  }

  /** Verdicts of rules that look at what is tied, whatever its length. */
  makeTally(at: number): number {
    const made = Math.floor(at / this.lengths);
    const known = this.#makes[made] as number;
    if (known !== OPEN) return known;
    this.lay(this.#laid, at);
    return (this.#makes[made] = this.judge.ofMake(this.#laid));
  }

  /** Verdicts of rules that look at how the buckle hangs. */
  hangTally(at: number): number {
    const hang = this.hangOf(at);
    const known = this.#hung[hang] as number;
    if (known !== OPEN) return known;
    this.lay(this.#laid, at);
    return (this.#hung[hang] = this.judge.ofHang(this.#laid));
  }

  /** Number of its style and strand count. */
  groupOf(at: number): number {
    const made = Math.floor(at / this.lengths);
    const { strandsNo } = this.#tied.all[Math.floor(made / STYLES)] as Tied;
    return strandsNo * STYLES + (made % STYLES);
  }

  /** Number of its buckle at its length. */
  hangOf(at: number): number {
    const tied = this.#tied.all[Math.floor(at / this.lengths / STYLES)] as Tied;
    return tied.buckleNo * this.lengths + (at % this.lengths);
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
    const l = at % this.lengths;
    const made = (at - l) / this.lengths;
    const style = made % STYLES;
    const tied = this.#tied.all[(made - style) / STYLES] as Tied;
    const hangs = this.#hangs[tied.buckleNo] as readonly Hang[];
    return laid.lay(styleIds[style] as Style, tied, hangs[l] as Hang);
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
