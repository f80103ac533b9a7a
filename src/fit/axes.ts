/** Which choices of the tier each part of a candidate depends on: two candidates that agree on those agree on the part. */
import type { Candidate } from './candidate.ts';

export const STYLE = 1;
export const STRANDS = 2;
export const BUCKLE = 4;
export const LENGTH = 8;
/** How wide it is behind the elbow: many styles, lengths and buckles share one body there. */
export const BODY = 16;
/** Which clearance counts, that of the cords or that of the buckle's frame. */
export const CLEARANCE = 32;
/** No two candidates agree on it. */
export const ALL = STYLE | STRANDS | BUCKLE | LENGTH;

/** The choices behind one candidate as small numbers, from 0: equal numbers, equal choices. Only good within one order. */
export interface Choices {
  readonly styleNo: number;
  readonly strandsNo: number;
  readonly buckleNo: number;
  readonly lengthNo: number;
  readonly bodyNo: number;
  readonly clearanceNo: number;
}

export const axesOf: Readonly<Record<keyof Candidate, number>> = {
  style: STYLE,
  strands: STRANDS,
  buckle: BUCKLE,
  layers: STRANDS | BUCKLE,
  length: LENGTH,
  shape: ALL,
  outline: ALL,
  width: STRANDS,
  buckleWidth: STYLE | STRANDS,
  elbowWidth: BODY,
  flareStart: ALL,
  clearance: CLEARANCE,
  buckleClearance: BUCKLE | LENGTH,
  buckleAboveElbow: BUCKLE | LENGTH,
  buckleBelowWidest: BUCKLE | LENGTH,
  run: LENGTH,
  runSd: 0,
  pressure: BODY,
  gripArea: ALL,
  cordFeet: STRANDS | LENGTH,
  accentFeet: STYLE | STRANDS | BUCKLE | LENGTH,
  accentAtMost: STYLE | STRANDS | LENGTH,
};

/** The choices that some parts depend on together. */
export const axesOfParts = (parts: readonly (keyof Candidate)[]): number =>
  parts.reduce((sum, part) => sum | axesOf[part], 0);
