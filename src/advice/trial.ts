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
import { countIn, Judge, type Finding, type Judged } from './judge.ts';

/** Tally of what cannot be tied. */
const NOTHING = -1;

/**
 * All candidates of one order, laid and judged, in a fixed order that does not depend on the order of the shop's lists.
 * Each is a number and keeps its tally alone; it is laid again when somebody looks at it, since most are never looked at.
 */
export class Trial {
  readonly judge: Judge;
  readonly ground: Ground;
  readonly #tied: TiedList;
  /** Of each buckle, by length. */
  readonly #hangs: readonly (readonly Hang[])[];
  readonly #lengths: number;
  readonly #tallies: Int32Array;

  constructor(facts: CaseFacts) {
    const tied = tiedBy(facts.shop);
    const ground = new Ground(facts, tied);
    const lengths = lengthSteps(facts.lengthNeed.target.value, facts.shop.lengths);
    this.#tied = tied;
    this.ground = ground;
    this.#lengths = lengths.length;
    this.#hangs = tied.buckles.map((buckle) => lengths.map((length) => ground.hang(buckle, length)));
    const sizes = { strands: tied.strands.length, buckles: tied.buckles.length, lengths: lengths.length };
    this.judge = new Judge(facts, sizes, tied);
    this.#tallies = this.#judgeAll();
  }

  #judgeAll(): Int32Array {
    const { all } = this.#tied;
    const tallies = new Int32Array(all.length * styleIds.length * this.#lengths);
    const laid = new Laid(this.ground);
    let at = 0;
    for (const tied of all) {
      const hangs = this.#hangsOf(tied);
      for (const style of styleIds) {
        for (let l = 0; l < hangs.length; l++) {
          const can = laid.lay(style, tied, hangs[l] as Hang);
          tallies[at++] = can ? this.judge.tallyOf(laid) : NOTHING;
        }
      }
    }
    return tallies;
  }

  /** All that can be tied, in the order in which they were laid. */
  get all(): Judged[] {
    const found: Judged[] = [];
    this.#tallies.forEach((tally, at) => {
      if (tally !== NOTHING) found.push(this.#judgedAt(at));
    });
    return found;
  }

  /** Of what passes the first of each style and strand count, by these criteria. */
  bestOfEach(criteria: readonly Criterion[]): Judged[] {
    const telling = criteria.filter(({ sameWithin }) => sameWithin !== true);
    const contest = new Contest(telling, [new Seat(this), new Seat(this)]);
    const { strands, starts } = this.#tied;
    const found: Judged[] = [];
    for (let n = 0; n < strands.length; n++) {
      for (let style = 0; style < styleIds.length; style++) {
        contest.restart();
        for (let tied = starts[n] as number; tied < (starts[n + 1] as number); tied++) {
          const from = (tied * styleIds.length + style) * this.#lengths;
          for (let at = from; at < from + this.#lengths; at++) if (this.#passes(at)) contest.enter(at);
        }
        if (contest.first !== undefined) found.push(this.#judgedAt(contest.first));
      }
    }
    return found;
  }

  #passes(at: number): boolean {
    const tally = this.tally(at);
    return tally !== NOTHING && countIn(tally, 'refuse') === 0;
  }

  /** Verdicts of a candidate, counted and packed. */
  tally(at: number): number {
    return this.#tallies[at] as number;
  }

  #judgedAt(at: number): Judged {
    const seat = new Seat(this);
    seat.become(at);
    return seat;
  }

  /** Lays the candidate of a number. */
  lay(laid: Laid, at: number): void {
    const l = at % this.#lengths;
    const made = (at - l) / this.#lengths;
    const style = made % styleIds.length;
    const tied = this.#tied.all[(made - style) / styleIds.length] as Tied;
    laid.lay(styleIds[style] as Style, tied, this.#hangsOf(tied)[l] as Hang);
  }

  #hangsOf({ buckleNo }: Tied): readonly Hang[] {
    return this.#hangs[buckleNo] as readonly Hang[];
  }
}

/** A candidate of a trial by its number, laid when it is looked at. */
class Seat implements Entrant {
  at = 0;
  private laid: Laid | undefined;
  private isLaid = false;
  private readonly trial: Trial;

  constructor(trial: Trial) {
    this.trial = trial;
  }

  become(at: number): void {
    this.at = at;
    this.isLaid = false;
  }

  get candidate(): Laid {
    const laid = (this.laid ??= new Laid(this.trial.ground));
    if (!this.isLaid) this.trial.lay(laid, this.at);
    this.isLaid = true;
    return laid;
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
