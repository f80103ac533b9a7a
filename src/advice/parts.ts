/** What is said of candidates, part by part, and what tells candidates of which the same is said. */
import { BUCKLE, LENGTH, STRANDS, STYLE } from '../fit/axes.ts';
import type { LaidCandidate } from '../fit/lay.ts';
import type { CaseFacts } from '../rules/rule.ts';
import type { TiedList } from '../stock/tied.ts';

/** Something about a candidate as a number, never negative, that depends on no more than some axes. */
export interface Part {
  readonly axes: number;
  read(candidate: LaidCandidate): number;
}

/** What is tied, and where it hangs. */
export const MAKE = STYLE | STRANDS | BUCKLE;
export const HANG = BUCKLE | LENGTH;

/** Whether these axes are among the others. */
export const isWithin = (axes: number, others: number): boolean => (axes & ~others) === 0;

/** Makes that are alike on some axes are of one kind. */
export interface Kinds {
  /** Of each kind its first make. */
  readonly firsts: readonly number[];
  /** Of each make its kind. */
  readonly kinds: Int32Array;
}

/** The candidates of an order: each is a make on a hang. */
export interface Rows {
  readonly makes: readonly unknown[];
  /** Of each buckle every length. */
  readonly hangs: readonly unknown[];
  readonly lengths: number;
  readonly alike: (axes: number) => Kinds;
  /** Lays a make on a hang; on the shortest it can have where none is named. Good until the next one is laid. */
  readonly laid: (make: number, hang?: number) => LaidCandidate;
}

/** The same with what is known of them. */
export interface Field extends Rows {
  readonly facts: CaseFacts;
  /** Whose makes these are. */
  readonly tied: TiedList;
}
