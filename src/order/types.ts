/** A checked order and a checked shop file; lengths in inches. */
import type { Inches } from '../units/length.ts';
import type { Model } from '../numbers/numbers.ts';
import type { Minor } from '../units/money.ts';
import type { CordPrice, PutUps, Trade } from './trade-types.ts';
import type { z } from 'zod/mini';
import type { orderSchema } from './order-schema.ts';

/** Declared in order-schema.ts and keys/, here in camel case. */
export type Order = z.output<typeof orderSchema>;
export type Horse = Order['horse'];
export type Saddle = Order['saddle'];
/** undefined when not said. */
export type CinchAsked = NonNullable<Order['wants']>;
export type Style = NonNullable<CinchAsked['style']>;
export type RiggingStyle = NonNullable<Saddle['style']>;
export type BarrelWord = Extract<Horse['barrel'], string>;
export type Withers = NonNullable<Horse['withers']>;
export type Kind = NonNullable<Horse['kind']>;
export type Trouble = Horse['trouble'][number];
export type Use = NonNullable<Order['use']>;

export interface StrandRange {
  min: number;
  max: number;
}

export interface Buckle {
  id: string;
  barWidth: Inches;
  frameWidth: Inches;
  frameHeight: Inches;
  /** Strand counts; at least one is set. */
  single?: StrandRange | undefined;
  double?: StrandRange | undefined;
  /** For cinches of 7 in and wider. */
  special: boolean;
  metal?: string | undefined;
  onHand: number;
  orderable: boolean;
  /** From ordering to delivery. */
  leadDays?: number | undefined;
  /** Each. */
  price?: Minor | undefined;
}

export interface Cord {
  color: string;
  /** 8 for body cord, 2 for accent. */
  ply: number;
  putUps: readonly PutUps[];
  /** Spools, hanks and remnants together. */
  feetOnHand: number;
  orderable: boolean;
  leadDays?: number | undefined;
  price?: CordPrice | undefined;
}

/** How many of the shop's outcomes, through which day. */
export interface LearnedFrom {
  outcomes: number;
  until: string;
  /** 90% interval. */
  low?: Inches | undefined;
  high?: Inches | undefined;
}

/** The least clearance follows the required one. */
export type LearnedKey = 'required-clearance' | 'floor-clearance' | 'stretch';

export interface Shop extends Trade {
  name: string;
  strands: StrandRange;
  lengths: { min: Inches; max: Inches; step: Inches };
  buckles: readonly Buckle[];
  cords: readonly Cord[];
  /** With the shop's overrides. */
  model: Model;
  /** By the shop. */
  overridden: readonly (keyof Model)[];
  /** From outcomes. */
  learned?: Readonly<Partial<Record<LearnedKey, LearnedFrom | undefined>>> | undefined;
}
