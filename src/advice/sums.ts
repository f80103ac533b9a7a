/** Sums of parts of all candidates of an order, where each part is read as seldom as it can differ. */
import { BODY, BUCKLE, CLEARANCE, STRANDS, STYLE } from '../fit/axes.ts';
import type { LaidCandidate } from '../fit/lay.ts';
import { styleIds } from '../stock/styles.ts';
import { HANG, isWithin, MAKE, type Chosen, type Part, type Rows } from './parts.ts';

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
  /** Of the choices behind a part of makes or of hangs. */
  #ofChoices = new Float64Array(256);

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
    const { makes, buckles, strandCounts } = rows;
    const { axes } = part;
    const ofStyle = (axes & STYLE) === 0 ? 0 : 1;
    const ofStrands = (axes & STRANDS) === 0 ? 0 : styleIds.length;
    const ofBuckle = (axes & BUCKLE) === 0 ? 0 : styleIds.length * strandCounts;
    const known = this.#unread(styleIds.length * strandCounts * buckles);
    const sums = this.ofMakes;
    for (let make = 0; make < makes.length; make++) {
      const { styleNo, strandsNo, buckleNo } = makes[make] as Chosen;
      const key = styleNo * ofStyle + strandsNo * ofStrands + buckleNo * ofBuckle;
      let number = known[key] as number;
      if (number === UNREAD) number = known[key] = part.read(rows.laid(make));
      sums[make] = (sums[make] as number) + number;
    }
  }

  #addToHangs(part: Part, rows: Rows): void {
    const { hangs, buckles, lengths } = rows;
    // It depends on the length, else it were a part of makes.
    const ofBuckle = (part.axes & BUCKLE) === 0 ? 0 : 1;
    const known = this.#unread(buckles * lengths);
    const sums = this.ofHangs;
    for (let hang = 0; hang < hangs.length; hang++) {
      const { buckleNo, lengthNo } = hangs[hang] as Chosen;
      const key = buckleNo * ofBuckle + lengthNo * buckles;
      let number = known[key] as number;
      if (number === UNREAD) number = known[key] = part.read(rows.laid(0, hang));
      sums[hang] = (sums[hang] as number) + number;
    }
  }

  #unread(count: number): Float64Array {
    if (count > this.#ofChoices.length) this.#ofChoices = new Float64Array(count);
    return this.#ofChoices.fill(UNREAD, 0, count);
  }

  /** Sum of a laid candidate. */
  of(make: number, hang: number, laid: LaidCandidate): number {
    let sum = (this.ofMakes[make] as number) + (this.ofHangs[hang] as number);
    if (this.#body !== undefined) sum += kept(this.#ofBodies, laid.bodyNo, this.#body, laid);
    if (this.#clearance !== undefined)
      sum += kept(this.#ofClearances, laid.clearanceNo, this.#clearance, laid);
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
