/** What a cutting plan is made from and what it says: plain data, lengths in whole eighths of an inch. */

/** A length of cord in whole eighths of an inch (8 an inch, 96 a foot): sums and comparisons are exact. */
export type Eighths = number;

/** Cord of one order: every piece is one unbroken length. */
export interface Cut {
  /** Unique among the cuts. */
  readonly id: string;
  readonly order: string;
  readonly color: string;
  readonly ply: number;
  readonly length: Eighths;
  readonly quantity: number;
}

/** Spools or skeins that are alike; on the shelf when they are whole, opened when they are remnants. */
export interface PutUp {
  /** Unique among all put-ups, opened or not. */
  readonly id: string;
  readonly color: string;
  readonly ply: number;
  readonly lot: string;
  readonly length: Eighths;
  readonly count: number;
  readonly opened: boolean;
}

/** Put-ups that could be bought; all that is bought of one color and ply comes from one new dye lot. */
export interface Buyable {
  readonly id: string;
  readonly color: string;
  readonly ply: number;
  readonly length: Eighths;
  /** How many there are to be had; as many as needed when left out. */
  readonly count?: number;
}

export interface CuttingTask {
  readonly cuts: readonly Cut[];
  readonly onHand: readonly PutUp[];
  readonly buyable: readonly Buyable[];
  /** A leftover at least this long goes back as a remnant; a shorter one is waste. */
  readonly usable: Eighths;
  /** Work allowed, in elementary steps; about a second's worth when left out. */
  readonly steps?: number;
}

/** Where a put-up comes from. */
export type Origin = 'remnant' | 'shelf' | 'bought';

/** One physical put-up that is cut from. */
export interface CutPutUp {
  readonly id: string;
  /** Which of the `count` alike ones, from 1. */
  readonly copy: number;
  readonly origin: Origin;
  /** "new" for what is bought. */
  readonly lot: string;
  readonly color: string;
  readonly ply: number;
  readonly length: Eighths;
  readonly pieces: readonly Piece[];
  readonly leftover: Eighths;
  /** Whether the leftover goes back as a remnant; else it is waste (0 is neither). */
  readonly goesBack: boolean;
}

export interface Piece {
  readonly cut: string;
  /** Which of the cut's quantity, from 1. */
  readonly number: number;
  readonly order: string;
  readonly length: Eighths;
}

/** What is found beside what is proven: no plan has less than `bound`; `value` equal to `bound` is proven best. */
export interface Proven {
  readonly value: number;
  readonly bound: number;
}

/** Named objectives, the first that differs decides: fewest pieces short, fewest bought, fewest opened, least waste. */
export interface Score {
  readonly short: Proven;
  /** Bound over the plans that leave no more pieces short. */
  readonly bought: Proven;
  /** Whole put-ups of the shelf; bound over the plans that leave no more short and buy no more. */
  readonly opened: Proven;
  /** Eighths of an inch; the bound is 0 unless less was shown to be impossible. */
  readonly waste: Proven;
}

/** Cord of one order that cannot come out of one dye lot. */
export interface ShortOrder {
  readonly order: string;
  readonly pieces: readonly Piece[];
  readonly total: Eighths;
  /** The longest piece is longer than any put-up there is or could be bought. */
  readonly tooLong: boolean;
}

/** The plan of one color and ply; other colors and plies have nothing to do with it. */
export interface MaterialPlan {
  readonly color: string;
  readonly ply: number;
  readonly putUps: readonly CutPutUp[];
  readonly short: readonly ShortOrder[];
  /** What to buy, by id of the buyable put-up. */
  readonly toBuy: readonly { readonly id: string; readonly length: Eighths; readonly count: number }[];
  readonly score: Score;
  /** Whether short, bought and opened are all proven best. */
  readonly proven: boolean;
  /** Total length of the leftovers that go back. */
  readonly returned: Eighths;
}

export interface CuttingPlan {
  readonly materials: readonly MaterialPlan[];
  readonly proven: boolean;
  /** Put-ups newly opened, from the shelf or bought, that may be too many: at most this number. */
  readonly gap: number;
  readonly stepsUsed: number;
}
