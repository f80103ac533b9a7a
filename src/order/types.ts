/** What stands behind the door: a checked order and a checked shop file. Lengths are inches. */
import type { Inches } from '../units/length.ts';
import type { Model } from '../numbers/numbers.ts';
import type { Minor } from '../units/money.ts';
import type { Photo } from './photo-types.ts';
import type { CordPrice, PutUps, Trade } from './trade-types.ts';
import type { barrelWords, kinds, riggingStyles, styles, troubles, uses, withersWords } from './words.ts';

export type Style = (typeof styles)[number];
export type RiggingStyle = (typeof riggingStyles)[number];
export type BarrelWord = (typeof barrelWords)[number];
export type Withers = (typeof withersWords)[number];
export type Kind = (typeof kinds)[number];
export type Trouble = (typeof troubles)[number];
export type Use = (typeof uses)[number];

/** Where the front ring hangs: a name or fraction as written, or the measured set-back from full position. */
export type Rigging =
  { kind: 'named'; name: string; fraction: number } | { kind: 'measured'; setBack: Inches };

/** A cinch somebody wants or has; what is not said is undefined. `buckle` is the id of a buckle in the shop file. */
export interface CinchAsked {
  style?: Style | undefined;
  strands?: number | undefined;
  buckle?: string | undefined;
  length?: Inches | undefined;
}

export interface Horse {
  name?: string | undefined;
  height?: Inches | undefined;
  heartGirth?: Inches | undefined;
  /** Point of shoulder to point of buttock: tells the weight, nothing else. */
  bodyLength?: Inches | undefined;
  elbowRoom?: Inches | undefined;
  barrel?: BarrelWord | { depth: Inches } | undefined;
  withers?: Withers | undefined;
  /** Henneke score, 1 to 9: moves a girth nobody taped; a fleshy horse lets a saddle slip. */
  condition?: number | undefined;
  kind?: Kind | undefined;
  trouble: readonly Trouble[];
}

export interface Saddle {
  rigging: Rigging;
  style?: RiggingStyle | undefined;
  barSpan?: Inches | undefined;
  ringToRing?: Inches | undefined;
  ringDrop?: Inches | undefined;
  double?: boolean | undefined;
}

export interface Order {
  order: string;
  customer?:
    { name?: string | undefined; phone?: string | undefined; email?: string | undefined } | undefined;
  /** ISO 8601 days. */
  taken?: string | undefined;
  due?: string | undefined;
  quantity: number;
  horse: Horse;
  saddle: Saddle;
  use?: Use | undefined;
  /** `age` is years. */
  current?: (CinchAsked & { age?: number | undefined }) | undefined;
  wants?: CinchAsked | undefined;
  colors?: { body?: readonly string[] | undefined; accent?: readonly string[] | undefined } | undefined;
  /** Names of the shop's options. */
  options?: readonly string[] | undefined;
  /** Landmarks of a side photo. */
  photo?: Photo | undefined;
  notes?: string | undefined;
}

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
