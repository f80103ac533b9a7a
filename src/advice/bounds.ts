/** How good each candidate is by the first criteria, or can be at best: one number each, smaller is better. */
import type { Entrant } from './contest.ts';
import type { TiedList } from '../stock/tied.ts';
import type { Criterion } from './criteria.ts';
import { countIn, refuses } from './judge.ts';

/** What is asked of the candidates, which are numbers from 0: of each make every length. */
export interface Field {
  readonly size: number;
  readonly lengths: number;
  readonly tied: Pick<TiedList, 'makes'>;
  /** Number of a candidate's style and strand count. */
  readonly groupOf: (at: number) => number;
  /** Number of the first hang of a make; the other lengths follow. */
  readonly firstHangOf: (make: number) => number;
  /** Verdicts of rules that look at a make, and at a hang; packed. */
  readonly makeTally: (make: number) => number;
  readonly hangTally: (hang: number) => number;
  /** Both, of a candidate. */
  readonly earlyTally: (at: number) => number;
  /** All verdicts. */
  readonly tally: (at: number) => number;
  readonly passes: (at: number) => boolean;
  readonly seat: () => Entrant;
}

/** Nothing is worse: it is refused, or was taken. */
export const OUT = Infinity;

/** Keys are digits of the number: whole, from -32 to 31. The last one may be more, and then counts as no more than that. */
const BASE = 64;
const SHIFT = 32;
/** So many digits fit into a number. */
const MOST = 8;

type Digit = Pick<Criterion, 'counts' | 'of' | 'atBest' | 'key'> & { readonly weight: number };

/** A number of each candidate: its keys by the first criteria, or at least what they can be at best. */
export class Bounds {
  /** The least number of those not taken yet. */
  least = OUT;
  readonly #field: Field;
  readonly #digits: readonly Digit[];
  readonly #numbers: Float64Array;
  /** 1 where the number is what the keys are. */
  readonly #exact: Uint8Array;
  readonly #seat: Entrant;

  constructor(field: Field, criteria: readonly Criterion[]) {
    this.#field = field;
    this.#digits = digitsOf(criteria);
    this.#seat = field.seat();
    this.#numbers = new Float64Array(field.size);
    this.#exact = new Uint8Array(field.size);
    const ofLengths = this.#ofLengths();
    const ofGroups: number[] = [];
    const ofHangs: number[] = [];
    // What is tied and where it hangs add up: a few of each make all candidates.
    let at = 0;
    for (const [make, { groupNo }] of field.tied.makes.entries()) {
      const ofGroup = (ofGroups[groupNo] ??= this.#ofGroup(at));
      const ofMake = ofGroup + this.#ofTally(field.makeTally(make));
      const firstHang = field.firstHangOf(make);
      for (let length = 0; length < field.lengths; length++, at++) {
        const hang = firstHang + length;
        const ofHang = (ofHangs[hang] ??= this.#ofTally(field.hangTally(hang)));
        const number = ofMake + ofHang + (ofLengths[length] as number);
        this.#numbers[at] = number;
        if (number < this.least) this.least = number;
      }
    }
  }

  /** Takes out those that are exactly as good as the best can be; of those that could have been, how good they are is known from then on. */
  takeLeast(): number[] {
    const { least } = this;
    const taken: number[] = [];
    let next = OUT;
    for (let at = 0; at < this.#numbers.length; at++) {
      if (this.#numbers[at] === least) {
        if (this.#exact[at] === 0) this.#settle(at);
        if (this.#numbers[at] === least) {
          this.#numbers[at] = OUT;
          taken.push(at);
        }
      }
      const number = this.#numbers[at] as number;
      if (number < next) next = number;
    }
    this.least = next;
    return taken;
  }

  #settle(at: number): void {
    const field = this.#field;
    const seat = this.#seat;
    this.#exact[at] = 1;
    if (!field.passes(at)) {
      this.#numbers[at] = OUT;
      return;
    }
    seat.become(at);
    let more = this.#ofTally(field.tally(at) - field.earlyTally(at));
    for (const digit of this.#digits) {
      if (digit.atBest === undefined) continue;
      more += inPlace(digit, digit.key(seat)) - inPlace(digit, digit.atBest(seat));
    }
    this.#numbers[at] = (this.#numbers[at] as number) + more;
  }

  #ofGroup(at: number): number {
    this.#seat.become(at);
    let sum = 0;
    for (const digit of this.#digits) {
      if (digit.of === 'make') sum += inPlace(digit, digit.key(this.#seat));
      else if (digit.atBest !== undefined) sum += inPlace(digit, digit.atBest(this.#seat));
    }
    return sum;
  }

  #ofTally(tally: number): number {
    if (refuses(tally)) return OUT;
    let sum = 0;
    for (const digit of this.#digits)
      if (digit.counts !== undefined) sum += digit.weight * countIn(tally, digit.counts);
    return sum;
  }

  /** Lengths have keys of any size: how they stand among each other is a digit. */
  #ofLengths(): number[] {
    const sums: number[] = new Array<number>(this.#field.lengths).fill(0);
    for (const digit of this.#digits) {
      if (digit.of !== 'length') continue;
      const keys = sums.map((_, length) => {
        this.#seat.become(length);
        return digit.key(this.#seat);
      });
      keys.forEach((key, length) => {
        const rank = new Set(keys.filter((other) => other < key)).size;
        sums[length] = (sums[length] as number) + inPlace(digit, rank);
      });
    }
    return sums;
  }
}

const inPlace = ({ weight }: Digit, key: number): number =>
  weight * Math.min(BASE - 1, Math.max(0, key + SHIFT));

/** The criteria, up to the first whose best is not known before cords are laid. */
function digitsOf(criteria: readonly Criterion[]): Digit[] {
  const end = criteria.findIndex(
    ({ counts, of, atBest }) => counts === undefined && of === undefined && atBest === undefined,
  );
  const first = criteria.slice(0, Math.min(MOST, end));
  return first.map(({ counts, of, atBest, key }, i) => {
    return { counts, of, atBest, key, weight: BASE ** (first.length - 1 - i) };
  });
}
