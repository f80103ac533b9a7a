/** What a shop says about its trade: hardware and cord with prices, labor, taxes, benches and house rules. Money is minor units. */
import type { Currency } from '../units/currency.ts';
import type { Inches } from '../units/length.ts';
import type { Minor } from '../units/money.ts';
import type { Exact } from '../units/number.ts';

/** Put-ups of one length and dye lot, and what is left of opened ones. Feet. */
export interface PutUps {
  /** Undefined when the shop does not keep lots apart. */
  readonly lot?: string | undefined;
  readonly feet: number;
  readonly count: number;
  readonly opened: readonly number[];
}

/** By the foot, or by the pound with how many feet go on one. */
export type CordPrice =
  | { readonly by: 'foot'; readonly amount: Minor }
  | { readonly by: 'pound'; readonly amount: Minor; readonly feetAPound: Exact };

export interface Dee {
  readonly id: string;
  /** Inside width. */
  readonly width: Inches;
  readonly metal?: string | undefined;
  readonly onHand: number;
  readonly orderable: boolean;
  readonly leadDays?: number | undefined;
  readonly price?: Minor | undefined;
}

/** Minutes of an order: set-up once, then strands and bar of each cinch, all x style x layers; a factor nobody wrote is 1. */
export interface Labor {
  /** Of an hour; undefined when the file does not say. */
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

/** Something a customer may add; its dees are priced apart. */
export interface ShopOption {
  readonly name: string;
  readonly price?: Minor | undefined;
  readonly dees?: { readonly id: string; readonly count: number } | undefined;
}

/** Parts of a price that a tax may be on. */
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

/** Second half of a shop file; what is undefined was not said, which is not the same as nothing. */
export interface Trade {
  readonly currency?: Currency | undefined;
  readonly dees: readonly Dee[];
  readonly labor?: Labor | undefined;
  /** Each a percent of the materials. */
  readonly consumables?: readonly NamedPercent[] | undefined;
  /** Percent of materials and consumables together. */
  readonly returns?: Exact | undefined;
  readonly options: readonly ShopOption[];
  /** Percent of the total. */
  readonly deposit?: Exact | undefined;
  readonly rush?: { readonly percent: Exact; readonly withinDays: number } | undefined;
  /** An empty list is a shop that charges none. */
  readonly taxes?: readonly Tax[] | undefined;
  readonly quoteDays?: number | undefined;
  readonly benches: readonly Bench[];
  /** ISO 8601 days, rising. */
  readonly holidays: readonly string[];
  readonly houseRules: readonly string[];
}
