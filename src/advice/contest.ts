/** Finds the first of many candidates by the criteria of ranking, without making any of them an object of its own. */
import type { Criterion } from './criteria.ts';
import type { Judged } from './judge.ts';
import { tieOrder } from './rank.ts';

/** A judged candidate that can become another one of the same order. */
export interface Entrant extends Judged {
  /** Number of the candidate it is. */
  readonly at: number;
  readonly become: (at: number) => void;
}

/** The first so far among those that have entered. A key is computed only where all before it are equal. */
export class Contest {
  readonly #criteria: readonly Criterion[];
  #first: Entrant;
  #next: Entrant;
  #open = true;
  /** Keys of the first, as far as they were asked for. */
  readonly #keys: number[] = [];
  #known = 0;

  /** @param entrants two, to hold each other's place */
  constructor(criteria: readonly Criterion[], entrants: readonly [Entrant, Entrant]) {
    this.#criteria = criteria;
    [this.#first, this.#next] = entrants;
  }

  /** Forgets who entered. */
  restart(): void {
    this.#open = true;
  }

  /** Number of the first; undefined when none has entered. */
  get first(): number | undefined {
    return this.#open ? undefined : this.#first.at;
  }

  enter(at: number): void {
    if (this.#open) {
      this.#first.become(at);
      this.#open = false;
      this.#known = 0;
      return;
    }
    this.#next.become(at);
    if (this.#nextIsBefore()) [this.#first, this.#next] = [this.#next, this.#first];
  }

  #nextIsBefore(): boolean {
    const keys = this.#keys;
    for (let i = 0; i < this.#criteria.length; i++) {
      const { key } = this.#criteria[i] as Criterion;
      if (i === this.#known) keys[this.#known++] = key(this.#first);
      const own = key(this.#next);
      const difference = own - (keys[i] as number);
      if (difference > 0) return false;
      if (difference === 0) continue;
      keys[i] = own;
      this.#known = i + 1;
      return true;
    }
    // All keys are equal, so those that are kept are those of either.
    return tieOrder(this.#next, this.#first) < 0;
  }
}
