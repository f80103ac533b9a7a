/** Bill lines, and what they lack. */
import { amountOf, sumOf, wholeRate, type Minor } from '../units/money.ts';

export type Unit =
  | { readonly per: 'foot' | 'each' | 'hour'; readonly amount: Minor }
  | { readonly per: 'pound'; readonly amount: Minor; readonly feetAPound: number }
  /** A percent of `on`. */
  | { readonly per: 'percent'; readonly percent: number; readonly on: Minor };

export type Part = 'materials' | 'labor' | 'options' | 'rush' | 'tax';

/** `amount` is rounded once; undefined without a price. */
export interface Line {
  readonly part: Part;
  readonly what: string;
  /** Feet, pieces or hours; undefined for percents and flat prices. */
  readonly count?: number | undefined;
  readonly unit?: Unit | undefined;
  readonly amount: Minor | undefined;
}

/** What the shop file lacks, and under which key. */
export interface Missing {
  readonly what: string;
  readonly where: string;
  /** Set when the order must say it. */
  readonly file?: 'order';
}

export interface PartBill {
  readonly lines?: readonly Line[];
  readonly missing?: readonly Missing[];
  readonly taken?: readonly string[];
}

/** Several parts as one. */
export function joined(parts: readonly PartBill[]): Required<PartBill> {
  return {
    lines: parts.flatMap(({ lines = [] }) => lines),
    missing: parts.flatMap(({ missing = [] }) => missing),
    taken: parts.flatMap(({ taken = [] }) => taken),
  };
}

interface Priced {
  readonly price: Minor | undefined;
  readonly missing: Missing;
}

/** Equal pieces at one price. */
export function piecesBill(
  line: Pick<Line, 'part' | 'what'>,
  count: number,
  { price, missing }: Priced,
): PartBill {
  if (price === undefined) return { lines: [{ ...line, count, amount: undefined }], missing: [missing] };
  const unit: Unit = { per: 'each', amount: price };
  return { lines: [{ ...line, count, unit, amount: amountOf(price, wholeRate(count)) }] };
}

/** Lines without an amount count as 0. */
export const sumLines = (lines: readonly Line[]): Minor => sumOf(lines.map(({ amount = 0 }) => amount));
