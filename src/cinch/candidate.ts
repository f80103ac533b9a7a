/** One cinch that could be tied, laid on one horse: the spec and all that follows from it, before anyone judges. */
import type { Buckle, Style } from '../order/types.ts';
import type { Layers } from './buckles.ts';
import type { Shape } from './outline.ts';

/** What is tied to a buckle. */
export interface Made {
  readonly style: Style;
  readonly strands: number;
  /** 0 when the buckle does not take that many strands. */
  readonly layers: Layers | 0;
}

/** What the maker needs to know to tie it. */
export interface Spec extends Made {
  readonly buckle: Buckle;
  /** Finished length, outside to outside of the hardware. */
  readonly length: number;
}

/** Elbow clearance on the unrolled side, inches; negative where the cinch lies over the elbow line. */
export interface Clearance {
  readonly inches: number;
  readonly sd: number;
  /** Least it must keep: less against muscle than in thin skin. */
  readonly floor: number;
  /** Chance that it and every other spot keep their floors, as told: never more than the model is known to be good for. */
  readonly chance: number;
  /** The same as reckoned. */
  readonly likely: number;
  /** Station of the spot with the least to spare. */
  readonly station: number;
  readonly where: 'cinch' | 'buckle';
  /** Whether it lies in the thin skin of armpit and elbow, not against muscle. */
  readonly skin: boolean;
  /** That spot and the nearest point of the elbow line, [x, s]. */
  readonly from: readonly [number, number];
  readonly to: readonly [number, number];
}

/** Where a buckle sits at one finished length, whatever is tied to it. */
export interface Seat {
  readonly buckle: Buckle;
  readonly length: number;
  /** Station of its low edge, where the cords end. */
  readonly low: number;
  /** Height of that edge above the point of the elbow, upright, inches. */
  readonly buckleAboveElbow: number;
  /** Skin distance from it up to the widest part of the barrel; negative when above it. */
  readonly buckleBelowWidest: number;
  /** Latigo run each side, and its spread. */
  readonly run: number;
  readonly runSd: number;
  /** Clearance of the frame alone. */
  readonly frameClearance: Clearance;
}

export interface Candidate extends Spec, Seat {
  readonly shape: Shape;
  /** Width of the body at full spread. */
  readonly width: number;
  readonly buckleWidth: number;
  /** Narrowest width between armpit and point of elbow. */
  readonly elbowWidth: number;
  /** How far below the buckle's low edge a roper begins to widen; undefined for a straight. */
  readonly flareStart: number | undefined;
  /** Clearance of the whole: cords and frame. */
  readonly clearance: Clearance;
  /** Clearance of the cords alone, in thin skin. */
  readonly cordClearance: Clearance;
  /** Highest hoop pressure index behind the elbow, psi. */
  readonly pressure: number;
  /** Feet of body cord. */
  readonly cordFeet: number;
  /** Feet of accent cord, in the colors of the order. */
  readonly accentFeet: number;
}
