/** What tells candidates apart on some axes. */
import type { Judged } from '../../src/advice/judge.ts';
import { BODY, BUCKLE, CLEARANCE, LENGTH, STRANDS, STYLE } from '../../src/fit/axes.ts';
import type { LaidCandidate } from '../../src/fit/lay.ts';

/** The numbers of the choices behind some axes, of a candidate that was laid. */
export function numbersOf(axes: number, { candidate }: Judged): string {
  const c = candidate as LaidCandidate;
  return [
    (axes & STYLE) > 0 ? c.styleNo : '',
    (axes & STRANDS) > 0 ? c.strandsNo : '',
    (axes & BUCKLE) > 0 ? c.buckleNo : '',
    (axes & LENGTH) > 0 ? c.lengthNo : '',
    (axes & BODY) > 0 ? c.bodyNo : '',
    (axes & CLEARANCE) > 0 ? c.clearanceNo : '',
  ].join();
}
