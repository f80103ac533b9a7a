/** Which choices of the tier each part of a candidate depends on: two candidates that agree on those agree on the part. */
import type { Candidate } from './candidate.ts';

export const STYLE = 1;
export const STRANDS = 2;
export const BUCKLE = 4;
export const LENGTH = 8;
export const ALL = STYLE | STRANDS | BUCKLE | LENGTH;

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
  elbowWidth: ALL,
  flareStart: ALL,
  clearance: ALL,
  buckleClearance: BUCKLE | LENGTH,
  buckleAboveElbow: BUCKLE | LENGTH,
  buckleBelowWidest: BUCKLE | LENGTH,
  run: LENGTH,
  runSd: 0,
  pressure: ALL,
  gripArea: ALL,
  cordFeet: STRANDS | LENGTH,
};
