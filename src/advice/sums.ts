/** Sums of parts of all candidates of an order, where each part is read as seldom as it can differ. */
import { BODY, BUCKLE, CLEARANCE } from '../fit/axes.ts';
import type { LaidCandidate } from '../fit/lay.ts';
import { HANG, isWithin, MAKE, type Part, type Rows } from './parts.ts';

/** Not read yet. */
const UNREAD = -1;
/** Bodies and clearances of one order have numbers below this, nearly always; what has not is read each time. */
const MOST_KEPT = 512;

/**
 * Sums that are filled anew for each order: their arrays cost more to make than to fill. Only one order's at a time, so
 * all that is asked of them must be asked before the next one begins.
 */
export class Sums {
  /** Of each make and of each hang what is known without laying any cords. */
  ofMakes = new Float64Array(256);
  ofHangs = new Float64Array(256);
  #body: Part | undefined;
  #clearance: Part | undefined;
  readonly #others: Part[] = [];
  readonly #ofBodies = new Float64Array(MOST_KEPT);
  readonly #ofClearances = new Float64Array(MOST_KEPT);
  /** What a part says of each kind of make or of hang. */
  #ofKinds = new Float64Array(256);

  /** @param start what the makes begin with; nothing by default */
  restart({ makes, hangs }: Rows, start?: Float64Array): void {
    if (makes.length > this.ofMakes.length) this.ofMakes = new Float64Array(makes.length);
    if (hangs.length > this.ofHangs.length) this.ofHangs = new Float64Array(hangs.length);
    if (start === undefined) this.ofMakes.fill(0, 0, makes.length);
    else this.ofMakes.set(start);
    this.ofHangs.fill(0, 0, hangs.length);
    this.#body = undefined;
    this.#clearance = undefined;
    this.#others.length = 0;
  }

  /** Adds a part. Of one that follows from the body alone, and of one from the clearance alone, what was read is kept. */
  add(part: Part, rows: Rows): void {
    const { axes } = part;
    if (isWithin(axes, MAKE)) this.#addToMakes(part, rows);
    else if (isWithin(axes, HANG)) this.#addToHangs(part, rows);
    else if (axes === BODY && this.#body === undefined) {
      this.#body = part;
      this.#ofBodies.fill(UNREAD);
    } else if (axes === CLEARANCE && this.#clearance === undefined) {
      this.#clearance = part;
      this.#ofClearances.fill(UNREAD);
    } else this.#others.push(part);
  }

  #addToMakes(part: Part, rows: Rows): void {
    const { firsts, kinds } = rows.alike(part.axes);
    const said = this.#said(firsts.length);
    for (let kind = 0; kind < firsts.length; kind++)
      said[kind] = part.read(rows.laid(firsts[kind] as number));
    const sums = this.ofMakes;
    for (let make = 0; make < kinds.length; make++)
      sums[make] = (sums[make] as number) + (said[kinds[make] as number] as number);
  }

  #addToHangs(part: Part, rows: Rows): void {
    const { hangs, lengths } = rows;
    // It depends on the length, else it were a part of makes.
    const kinds = (part.axes & BUCKLE) === 0 ? lengths : hangs.length;
    const said = this.#said(kinds);
    for (let kind = 0; kind < kinds; kind++) said[kind] = part.read(rows.laid(0, kind));
    const sums = this.ofHangs;
    for (let hang = 0; hang < hangs.length; hang++)
      sums[hang] = (sums[hang] as number) + (said[hang % kinds] as number);
  }

  #said(count: number): Float64Array {
    if (count > this.#ofKinds.length) this.#ofKinds = new Float64Array(count);
    return this.#ofKinds;
  }

  /** Sum of a laid candidate. */
  of(make: number, hang: number, laid: LaidCandidate): number {
    return (this.ofMakes[make] as number) + (this.ofHangs[hang] as number) + this.ofCords(laid);
  }

  /** What is still to be added for a laid candidate to what is known of its make and its hang. */
  ofCords(laid: LaidCandidate): number {
    let sum = 0;
    if (this.#clearance !== undefined)
      sum += kept(this.#ofClearances, laid.clearanceNo, this.#clearance, laid);
    if (this.#body !== undefined) sum += kept(this.#ofBodies, laid.bodyNo, this.#body, laid);
    for (let i = 0; i < this.#others.length; i++) sum += (this.#others[i] as Part).read(laid);
    return sum;
  }
}

// Four plain parameters: it is called for every candidate.
// eslint-disable-next-line max-params
function kept(known: Float64Array, number: number, part: Part, laid: LaidCandidate): number {
  const found = known[number];
  if (found !== undefined && found !== UNREAD) return found;
  return (known[number] = part.read(laid));
}
