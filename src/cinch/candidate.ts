/** One cinch on one horse: the spec and everything that follows from it, before judging. */
import type { Buckle, Style } from '../order/types.ts';
import type { Layers } from './buckles.ts';
import type { Shape } from './outline.ts';

export interface Made {
  readonly style: Style;
  readonly strands: number;
  /** 0 when the buckle does not take this many strands. */
  readonly layers: Layers | 0;
}

/** What the maker needs to tie it. */
export interface Spec extends Made {
  readonly buckle: Buckle;
  /** Outside to outside of the hardware. */
  readonly length: number;
}

/** Distance to the elbow line on the unrolled side, inches; negative where the cinch reaches over it. */
export interface Clearance {
  readonly inches: number;
  readonly sd: number;
  /** Least allowed there: less against muscle than in thin skin. */
  readonly floor: number;
  /** Chance that every spot keeps its floor, capped at what the model can claim. */
  readonly chance: number;
  /** The same, not capped. */
  readonly likely: number;
  /** Station of the spot with least to spare. */
  readonly station: number;
  readonly where: 'cinch' | 'buckle';
  /** In thin skin of armpit and elbow, not against muscle. */
  readonly skin: boolean;
  /** That spot and the nearest point of the elbow line, [x, s]. */
  readonly from: readonly [number, number];
  readonly to: readonly [number, number];
}

/** Where a buckle sits at one length, whatever is tied to it. */
export interface Seat {
  readonly buckle: Buckle;
  readonly length: number;
  /** Station of its low edge, where the strands end. */
  readonly low: number;
  /** Height of that edge above the point of the elbow. */
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
  /** Narrowest between armpit and point of elbow. */
  readonly elbowWidth: number;
  /** Below the buckle's low edge; undefined for a straight. */
  readonly flareStart: number | undefined;
  /** Strands and buckle frame. */
  readonly clearance: Clearance;
  /** Strands in thin skin only. */
  readonly cordClearance: Clearance;
  /** Highest behind the elbow, psi. */
  readonly pressure: number;
  /** Body cord. */
  readonly cordFeet: number;
  /** In the order's colors. */
  readonly accentFeet: number;
}
