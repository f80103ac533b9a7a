/** Lines of a bill, and what is missing to price them. */
import { amountOf, wholeRate, type Minor } from '../units/money.ts';

/** How a line's amount comes about. */
export type Unit =
  | { readonly per: 'foot' | 'each' | 'hour'; readonly amount: Minor }
  | { readonly per: 'pound'; readonly amount: Minor; readonly feetAPound: number }
  /** `on` is the amount it is a percent of. */
  | { readonly per: 'percent'; readonly percent: number; readonly on: Minor };

export type Part = 'materials' | 'labor' | 'options' | 'rush' | 'tax';

/** A line of a bill; `amount` is rounded once, and undefined when the shop file has no price for it. */
export interface Line {
  readonly part: Part;
  readonly what: string;
  /** Feet, pieces or hours, as `unit` says; undefined for a percent or a flat price. */
  readonly count?: number | undefined;
  readonly unit?: Unit | undefined;
  readonly amount: Minor | undefined;
}

/** What the shop file would have to say, and where. */
export interface Missing {
  readonly what: string;
  readonly where: string;
  /** Where it is not the shop file that has to say it. */
  readonly file?: 'order';
}

/** What one part of an order adds to the bill. */
export interface PartBill {
  readonly lines?: readonly Line[];
  readonly missing?: readonly Missing[];
  /** What was taken because nobody said. */
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
  /** What to say when there is none. */
  readonly missing: Missing;
}

/** So many alike pieces at one price. */
export function piecesBill(
  line: Pick<Line, 'part' | 'what'>,
  count: number,
  { price, missing }: Priced,
): PartBill {
  if (price === undefined) return { lines: [{ ...line, count, amount: undefined }], missing: [missing] };
  const unit: Unit = { per: 'each', amount: price };
  return { lines: [{ ...line, count, unit, amount: amountOf(price, wholeRate(count)) }] };
}
