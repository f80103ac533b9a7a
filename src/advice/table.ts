/** Numbers that many candidates share, kept in tables: most rules see a few lengths or buckles, not hundreds of candidates. */
import { BODY, BUCKLE, CLEARANCE, LENGTH, STRANDS, STYLE } from '../fit/axes.ts';
import type { LaidCandidate } from '../fit/lay.ts';
import { styleIds } from '../stock/styles.ts';

/** Of a candidate with these choices nothing is kept yet. */
const UNKNOWN = -1;

/** A number of some rules about a candidate. */
export type Reading = (candidate: LaidCandidate) => number;

/** Rules that look at no more than some axes of a candidate. */
interface Part {
  readonly axes: number;
  readonly read: Reading;
}

/** How many different choices there are. */
export interface Sizes {
  readonly strands: number;
  readonly buckles: number;
  readonly lengths: number;
}

/** More bodies and clearances than the candidates of one order have. */
const MOST_BODIES = 256;

/** The same number for candidates that agree on the axes: kept in a table, addressed by the numbers of their choices. */
export class Table {
  readonly axes: number;
  readonly #read: Reading;
  readonly #known: number[];
  readonly #style: number;
  readonly #strands: number;
  readonly #buckle: number;
  readonly #length: number;
  readonly #body: number;
  readonly #clearance: number;

  constructor({ axes, read }: Part, sizes: Sizes) {
    let size = 1;
    const stride = (axis: number, most: number): number => {
      if ((axes & axis) === 0) return 0;
      size *= most;
      return size / most;
    };
    this.axes = axes;
    this.#read = read;
    this.#style = stride(STYLE, styleIds.length);
    this.#strands = stride(STRANDS, sizes.strands);
    this.#buckle = stride(BUCKLE, sizes.buckles);
    this.#length = stride(LENGTH, sizes.lengths);
    this.#body = stride(BODY, MOST_BODIES);
    this.#clearance = stride(CLEARANCE, MOST_BODIES);
    this.#known = new Array<number>(size).fill(UNKNOWN);
  }

  read(c: LaidCandidate): number {
    let key =
      c.styleNo * this.#style +
      c.strandsNo * this.#strands +
      c.buckleNo * this.#buckle +
      c.lengthNo * this.#length;
    // These are not known before the cords are laid.
    if (this.#body !== 0) key += c.bodyNo * this.#body;
    if (this.#clearance !== 0) key += c.clearanceNo * this.#clearance;
    const known = this.#known[key] ?? UNKNOWN;
    if (known !== UNKNOWN) return known;
    const found = this.#read(c);
    if (key < this.#known.length) this.#known[key] = found;
    return found;
  }
}

/** What tables hold about a candidate, added up. */
export function sumOf(tables: readonly Table[], candidate: LaidCandidate): number {
  let sum = 0;
  for (let i = 0; i < tables.length; i++) sum += (tables[i] as Table).read(candidate);
  return sum;
}
