/** One cinch on one horse, before judging. */
import type { Buckle, Style } from '../order/types.ts';
import type { Layers } from './buckles.ts';
import type { Shape } from './outline.ts';

export interface Made {
  readonly style: Style;
  readonly strands: number;
  /** 0 when the buckle does not take the strands. */
  readonly layers: Layers | 0;
}

/** What the maker needs to tie it. */
export interface Spec extends Made {
  readonly buckle: Buckle;
  /** Outside to outside of the hardware. */
  readonly length: number;
}

/** Inches to the elbow line on the unrolled side; negative over it. */
export interface Clearance {
  readonly inches: number;
  readonly sd: number;
  /** Least allowed there: more in thin skin than against muscle. */
  readonly floor: number;
  /** Chance that every spot keeps its floor, capped. */
  readonly chance: number;
  /** Not capped. */
  readonly likely: number;
  /** Of the spot with least to spare. */
  readonly station: number;
  readonly where: 'cinch' | 'buckle';
  /** Thin skin of armpit and elbow, not muscle. */
  readonly skin: boolean;
  /** That spot and its nearest elbow point, [x, s]. */
  readonly from: readonly [number, number];
  readonly to: readonly [number, number];
}

/** Where a buckle sits, whatever is tied to it. */
export interface Seat {
  readonly buckle: Buckle;
  readonly length: number;
  /** Station of its low edge. */
  readonly low: number;
  /** Height of that edge. */
  readonly buckleAboveElbow: number;
  /** Along the skin; negative above the widest part. */
  readonly buckleBelowWidest: number;
  /** Each side. */
  readonly run: number;
  readonly runSd: number;
  readonly frameClearance: Clearance;
}

export interface Candidate extends Spec, Seat {
  readonly shape: Shape;
  /** At full spread. */
  readonly width: number;
  readonly buckleWidth: number;
  /** Narrowest from armpit to point of elbow. */
  readonly elbowWidth: number;
  /** Below the buckle's low edge; undefined for a straight. */
  readonly flareStart: number | undefined;
  /** Strands and buckle frame. */
  readonly clearance: Clearance;
  /** Thin skin only, without the frame. */
  readonly cordClearance: Clearance;
  /** Highest behind the elbow, psi. */
  readonly pressure: number;
  /** Body cord. */
  readonly cordFeet: number;
  readonly accentFeet: number;
}
