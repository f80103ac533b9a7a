/** What stands behind the door: a checked order and a checked shop file. Lengths are inches. */
import type { Inches } from '../units/length.ts';
import type { Model } from '../numbers/numbers.ts';
import type { Minor } from '../units/money.ts';
import type { CordPrice, PutUps, Trade } from './trade-types.ts';
import type { z } from 'zod/mini';
import type { orderSchema } from './order-schema.ts';

/** An order as it is declared in order-schema.ts and keys/, under the names of the program: ring-to-ring is ringToRing. */
export type Order = z.output<typeof orderSchema>;
export type Horse = Order['horse'];
export type Saddle = Order['saddle'];
/** A cinch somebody wants or has; what is not said is undefined. */
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
  /** Strand counts it takes in a single layer, in a double layer; a buckle takes at least one of the two. */
  single?: StrandRange | undefined;
  double?: StrandRange | undefined;
  /** Made for cinches of 7 in and over. */
  special: boolean;
  metal?: string | undefined;
  onHand: number;
  orderable: boolean;
  /** Days until more is here, from the day it is ordered; undefined when the shop does not say. */
  leadDays?: number | undefined;
  /** Of one; undefined when the shop does not say. */
  price?: Minor | undefined;
}

export interface Cord {
  color: string;
  /** 8 for body cord, 2 for accent cord. */
  ply: number;
  putUps: readonly PutUps[];
  /** All put-ups and remnants together, added up at the door. */
  feetOnHand: number;
  orderable: boolean;
  /** As of a buckle. */
  leadDays?: number | undefined;
  price?: CordPrice | undefined;
}

/** Where a number of the model was learned: from how many outcomes of this shop, until which day. */
export interface LearnedFrom {
  outcomes: number;
  /** ISO 8601 day. */
  until: string;
  /** 90 % interval, when the file gives it. */
  low?: Inches | undefined;
  high?: Inches | undefined;
}

/** Numbers that can be learned; the least clearance follows the required one. */
export type LearnedKey = 'required-clearance' | 'floor-clearance' | 'stretch';

export interface Shop extends Trade {
  name: string;
  strands: StrandRange;
  lengths: { min: Inches; max: Inches; step: Inches };
  buckles: readonly Buckle[];
  cords: readonly Cord[];
  /** Complete: defaults with the shop's overrides. */
  model: Model;
  /** Which keys the shop itself set. */
  overridden: readonly (keyof Model)[];
  /** Which of these the shop's own outcomes stand behind. */
  learned?: Readonly<Partial<Record<LearnedKey, LearnedFrom | undefined>>> | undefined;
}
