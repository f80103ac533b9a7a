/** A shop's business: hardware and cord with prices, labor, taxes, benches. */
import type { Currency } from '../units/currency.ts';
import type { Inches } from '../units/length.ts';
import type { Minor } from '../units/money.ts';
import type { Exact } from '../units/number.ts';

/** Same length and dye lot, plus opened ones. In feet. */
export interface PutUps {
  /** undefined when not tracked. */
  readonly lot?: string | undefined;
  readonly feet: number;
  readonly count: number;
  readonly opened: readonly number[];
}

/** Per foot, or per pound with feet per pound. */
export type CordPrice =
  | { readonly by: 'foot'; readonly amount: Minor }
  | { readonly by: 'pound'; readonly amount: Minor; readonly feetAPound: Exact };

export interface Dee {
  readonly id: string;
  /** Inside. */
  readonly width: Inches;
  readonly metal?: string | undefined;
  readonly onHand: number;
  readonly orderable: boolean;
  readonly leadDays?: number | undefined;
  readonly price?: Minor | undefined;
}

/** Minutes: set-up once per order; strands and bar per cinch, times style and layers; factors default to 1. */
export interface Labor {
  /** Per hour. */
  readonly rate?: Minor | undefined;
  readonly setUpMinutes: Exact;
  readonly minutesAStrand: Exact;
  readonly minutesAnInchOfBar: Exact;
  readonly byStyle: { readonly straight: Exact; readonly 'high-flare': Exact; readonly 'low-flare': Exact };
  readonly byLayers: { readonly single: Exact; readonly double: Exact };
}

export interface NamedPercent {
  readonly name: string;
  readonly percent: Exact;
}

/** Its dees are priced apart. */
export interface ShopOption {
  readonly name: string;
  readonly price?: Minor | undefined;
  readonly dees?: { readonly id: string; readonly count: number } | undefined;
}

export type Taxed = 'materials' | 'labor' | 'options' | 'rush';

export interface Tax extends NamedPercent {
  readonly on: readonly Taxed[];
}

export type Weekday = 'mon' | 'tue' | 'wed' | 'thu' | 'fri' | 'sat' | 'sun';

export interface Bench {
  readonly name: string;
  readonly hours: Exact;
  readonly days: readonly Weekday[];
}

/** undefined means not said, not "none". */
export interface Trade {
  readonly currency?: Currency | undefined;
  readonly dees: readonly Dee[];
  readonly labor?: Labor | undefined;
  /** Percent of materials. */
  readonly consumables?: readonly NamedPercent[] | undefined;
  /** Percent of materials and consumables. */
  readonly returns?: Exact | undefined;
  readonly options: readonly ShopOption[];
  /** Percent of the total. */
  readonly deposit?: Exact | undefined;
  readonly rush?: { readonly percent: Exact; readonly withinDays: number } | undefined;
  /** Empty when it charges none. */
  readonly taxes?: readonly Tax[] | undefined;
  readonly quoteDays?: number | undefined;
  readonly benches: readonly Bench[];
  /** ISO 8601, rising. */
  readonly holidays: readonly string[];
  readonly houseRules: readonly string[];
}
