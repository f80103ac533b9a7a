/** Input and output of the cutting plan: plain data, lengths in whole eighths of an inch. */

/** Whole eighths of an inch (96 a foot), so sums and comparisons are exact. */
export type Eighths = number;

/** Cord of one order; each piece is one unbroken length. */
export interface Cut {
  readonly id: string;
  readonly order: string;
  readonly color: string;
  readonly ply: number;
  readonly length: Eighths;
  readonly quantity: number;
}

/** Equal spools or hanks: whole ones on the shelf, opened ones as remnants. */
export interface PutUp {
  /** Unique among all, opened or not. */
  readonly id: string;
  readonly color: string;
  readonly ply: number;
  readonly lot: string;
  readonly length: Eighths;
  readonly count: number;
  readonly opened: boolean;
}

/** What we can buy; everything bought of one color and ply is one new dye lot. */
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
  /** A leftover at least this long returns to the shelf as a remnant; a shorter one is waste. */
  readonly usable: Eighths;
  /** Step limit; about a second of work when left out. */
  readonly steps?: number;
}

export type Origin = 'remnant' | 'shelf' | 'bought';

/** One physical spool that is cut. */
export interface CutPutUp {
  readonly id: string;
  /** Which of `count` equal ones, from 1. */
  readonly copy: number;
  readonly origin: Origin;
  /** "new" when bought. */
  readonly lot: string;
  readonly color: string;
  readonly ply: number;
  readonly length: Eighths;
  readonly pieces: readonly Piece[];
  readonly leftover: Eighths;
  /** Whether the leftover returns to the shelf; false means waste (or nothing left). */
  readonly goesBack: boolean;
}

export interface Piece {
  readonly cut: string;
  /** Which of the cut's quantity, from 1. */
  readonly number: number;
  readonly order: string;
  readonly length: Eighths;
}

/** The value found and a proven lower bound; equal means proven best. */
export interface Proven {
  readonly value: number;
  readonly bound: number;
}

/** Objectives in order of priority. */
export interface Score {
  readonly short: Proven;
  /** Bound for plans with no more pieces short. */
  readonly bought: Proven;
  /** Whole shelf spools; bound for plans with no more short and no more bought. */
  readonly opened: Proven;
  /** Eighths of an inch; the bound stays 0 unless more was proven necessary. */
  readonly waste: Proven;
}

/** Cord of one order that no single dye lot can supply. */
export interface ShortOrder {
  readonly order: string;
  readonly pieces: readonly Piece[];
  readonly total: Eighths;
  /** The longest piece is longer than any spool on hand or for sale. */
  readonly tooLong: boolean;
}

/** The plan for one color and ply, independent of all others. */
export interface MaterialPlan {
  readonly color: string;
  readonly ply: number;
  readonly putUps: readonly CutPutUp[];
  readonly short: readonly ShortOrder[];
  /** By id of the buyable spool. */
  readonly toBuy: readonly { readonly id: string; readonly length: Eighths; readonly count: number }[];
  readonly score: Score;
  readonly proven: boolean;
  readonly returned: Eighths;
}

export interface CuttingPlan {
  readonly materials: readonly MaterialPlan[];
  readonly proven: boolean;
  /** At most this many newly opened spools, shelf or bought, may be more than needed. */
  readonly gap: number;
  readonly stepsUsed: number;
}
