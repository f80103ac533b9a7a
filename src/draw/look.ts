/** Lines, areas and letters of pictures; color alone never tells them apart. */
import { colors, type Color } from '../pages/look.ts';

/** Points. */
export interface Stroke {
  readonly color: Color;
  readonly width: number;
  /** Dashes and gaps. */
  readonly dash?: readonly number[];
}

export const strokes = {
  edge: { color: 'ink', width: 1.1 },
  strand: { color: 'shade', width: 0.35 },
  weave: { color: 'ink', width: 0.45 },
  buckle: { color: 'ink', width: 1.7 },
  strap: { color: 'soft', width: 0.8 },
  ring: { color: 'ink', width: 1.9 },
  elbow: { color: 'ink', width: 2.4 },
  /** Ahead of the elbow line, where no cinch belongs. */
  limb: { color: 'soft', width: 0.45 },
  spread: { color: 'soft', width: 0.8, dash: [0.8, 2] },
  /** Closer than this is ruled out. */
  least: { color: 'rust', width: 1.3, dash: [5, 2.6] },
  clearance: { color: 'ink', width: 1.5 },
  leader: { color: 'ink', width: 0.5 },
  middle: { color: 'soft', width: 0.7, dash: [9, 2.5, 2, 2.5] },
  horse: { color: 'shade', width: 1.4 },
  measure: { color: 'ink', width: 0.6 },
  /** For the next sheet's edge. */
  joint: { color: 'soft', width: 0.6, dash: [4, 3] },
  frame: { color: 'line', width: 0.5 },
  /** Under every line on a photo. */
  halo: { color: 'white', width: 4.2 },
  other: { color: 'ink', width: 1.8, dash: [1.8, 2.8] },
  refused: { color: 'ink', width: 1.6, dash: [6, 3] },
} as const satisfies Record<string, Stroke>;

export type StrokeName = keyof typeof strokes;

export const fills = {
  cord: colors.cord,
  woven: colors.rust,
  strap: colors.sand,
  paper: colors.white,
  band: colors.sand,
  /** In a photo's legend. */
  behindSample: colors.line,
  ink: colors.ink,
} as const;

export type FillName = keyof typeof fills;

/** Points apart; degrees left of level. */
export const hatch = { stroke: 'limb', gap: 5.5, slant: 45 } as const;

/** As on papers. */
export type Face = 'text' | 'strong' | 'head';

export interface Hand {
  readonly face: Face;
  readonly size: number;
  readonly color: Color;
}

export const hands = {
  title: { face: 'head', size: 17, color: 'ink' },
  heading: { face: 'strong', size: 10.5, color: 'ink' },
  rust: { face: 'head', size: 10.5, color: 'rust' },
  text: { face: 'text', size: 8.5, color: 'ink' },
  strong: { face: 'strong', size: 8.5, color: 'ink' },
  quiet: { face: 'text', size: 8.5, color: 'soft' },
  fine: { face: 'text', size: 7, color: 'soft' },
  number: { face: 'strong', size: 9.5, color: 'ink' },
  loud: { face: 'strong', size: 11, color: 'white' },
} as const satisfies Record<string, Hand>;

export type HandName = keyof typeof hands;

/** The first comes with the program. */
export const families: Readonly<Record<Face, { readonly names: string; readonly weight: number }>> = {
  text: { names: "'Source Sans 3', 'Segoe UI', 'Helvetica Neue', Arial, sans-serif", weight: 400 },
  strong: { names: "'Source Sans 3', 'Segoe UI', 'Helvetica Neue', Arial, sans-serif", weight: 600 },
  head: { names: "'Source Serif 4', Palatino, Georgia, serif", weight: 600 },
};

/** Share of type size. */
export const leading = 1.24;

/** Points. */
export const arrow = { length: 4.6, half: 1.9 } as const;
