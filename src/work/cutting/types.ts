/** What the cutting plan takes and gives. */

/** Whole eighths of an inch, so sums are exact. */
export type Eighths = number;

/** Cord of one order, each piece unbroken. */
export interface Cut {
  readonly id: string;
  readonly order: string;
  readonly color: string;
  readonly ply: number;
  readonly length: Eighths;
  readonly quantity: number;
}

/** Equal spools or hanks, whole or remnants. */
export interface PutUp {
  readonly id: string;
  readonly color: string;
  readonly ply: number;
  readonly lot: string;
  readonly length: Eighths;
  readonly count: number;
  readonly opened: boolean;
}

/** What we can buy; all of one color and ply is one dye lot. */
export interface Buyable {
  readonly id: string;
  readonly color: string;
  readonly ply: number;
  readonly length: Eighths;
  /** Unlimited when left out. */
  readonly count?: number;
}

export interface CuttingTask {
  readonly cuts: readonly Cut[];
  readonly onHand: readonly PutUp[];
  readonly buyable: readonly Buyable[];
  /** A shorter leftover is waste. */
  readonly usable: Eighths;
  /** When left out, about a second of work. */
  readonly steps?: number;
}

export type Origin = 'remnant' | 'shelf' | 'bought';

/** One spool that is cut. */
export interface CutPutUp {
  readonly id: string;
  /** Of equal ones, from 1. */
  readonly copy: number;
  readonly origin: Origin;
  /** "new" when bought. */
  readonly lot: string;
  readonly color: string;
  readonly ply: number;
  readonly length: Eighths;
  readonly pieces: readonly Piece[];
  readonly leftover: Eighths;
  /** Whether something is left and long enough. */
  readonly goesBack: boolean;
}

export interface Piece {
  readonly cut: string;
  /** Of the cut's quantity, from 1. */
  readonly number: number;
  readonly order: string;
  readonly length: Eighths;
}

/** Found, and least there can be; equal means proven. */
export interface Proven {
  readonly value: number;
  readonly bound: number;
}

/** First what matters most. */
export interface Score {
  readonly short: Proven;
  /** Least of plans with no more pieces short. */
  readonly bought: Proven;
  /** Whole shelf spools; least with no more bought either. */
  readonly opened: Proven;
  /** Bound 0 unless more is proven. */
  readonly waste: Proven;
}

/** Cord of one order that no dye lot has. */
export interface ShortOrder {
  readonly order: string;
  readonly pieces: readonly Piece[];
  readonly total: Eighths;
  /** A piece is longer than any spool. */
  readonly tooLong: boolean;
}

/** The plan for one color and ply. */
export interface MaterialPlan {
  readonly color: string;
  readonly ply: number;
  readonly putUps: readonly CutPutUp[];
  readonly short: readonly ShortOrder[];
  readonly toBuy: readonly { readonly id: string; readonly length: Eighths; readonly count: number }[];
  readonly score: Score;
  readonly proven: boolean;
  readonly returned: Eighths;
}

export interface CuttingPlan {
  readonly materials: readonly MaterialPlan[];
  readonly proven: boolean;
  /** At most so many spools too many. */
  readonly gap: number;
}
