/** One cinch that could be tied, laid on one horse: the spec and all that follows from it, before anyone judges. */
import type { Buckle, Style } from '../order/types.ts';
import type { Layers } from '../stock/buckles.ts';
import type { Outline, Shape } from '../stock/outline.ts';

/** What is tied to a buckle. */
export interface Made {
  readonly style: Style;
  readonly strands: number;
  /** 0 when the buckle does not take that many strands. */
  readonly layers: Layers | 0;
}

/** What the tier needs to know to tie it. */
export interface Spec extends Made {
  readonly buckle: Buckle;
  /** Finished length, outside to outside of the hardware. */
  readonly length: number;
}

/** Elbow clearance on the unrolled side, inches; negative where the cinch lies over the elbow line. */
export interface Clearance {
  readonly inches: number;
  readonly sd: number;
  /** Chance that it is at least the floor. */
  readonly chance: number;
  /** Station of the cinch's nearest point. */
  readonly station: number;
  readonly where: 'cinch' | 'buckle';
}

export interface Candidate extends Spec {
  readonly shape: Shape;
  readonly outline: Outline;
  /** Width of the body at full spread. */
  readonly width: number;
  readonly buckleWidth: number;
  /** Narrowest width between armpit and point of elbow. */
  readonly elbowWidth: number;
  /** How far below the buckle's low edge a roper begins to widen; undefined for a straight. */
  readonly flareStart: number | undefined;
  readonly clearance: Clearance;
  /** Least distance of the buckle's frame alone from the elbow line. */
  readonly buckleClearance: number;
  /** Height of the buckle's low edge above the point of the elbow, upright, inches. */
  readonly buckleAboveElbow: number;
  /** Skin distance from the buckle's low edge up to the widest part of the barrel; negative when above it. */
  readonly buckleBelowWidest: number;
  /** Latigo run each side, and its spread. */
  readonly run: number;
  readonly runSd: number;
  /** Highest hoop pressure index behind the elbow, psi. */
  readonly pressure: number;
  /** Contact area on both sides above the armpit, square inches. */
  readonly gripArea: number;
  /** Feet of body cord. */
  readonly cordFeet: number;
  /** Feet of accent cord, in the colors of the order. */
  readonly accentFeet: number;
  /** It is never more than this, which costs less to say. */
  readonly accentAtMost: number;
}
