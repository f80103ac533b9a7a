/** How pictures look: lines, areas and letters, told apart by weight, dashes and hatching, so that none of them needs its color. */
import { colors, type Color } from '../pages/look.ts';

/** A line; sizes in points of the picture, of which an inch of paper has 72. */
export interface Stroke {
  readonly color: Color;
  readonly width: number;
  /** Lengths of dashes and gaps in turn; a solid line has none. */
  readonly dash?: readonly number[];
}

export const strokes = {
  /** Front and back edge of the cords. */
  edge: { color: 'ink', width: 1.1 },
  /** Between two cords. */
  strand: { color: 'shade', width: 0.35 },
  /** Woven bars. */
  weave: { color: 'ink', width: 0.45 },
  buckle: { color: 'ink', width: 1.7 },
  strap: { color: 'soft', width: 0.8 },
  ring: { color: 'ink', width: 1.9 },
  /** Back of the elbow. */
  elbow: { color: 'ink', width: 2.4 },
  /** Forward of it, where no cinch belongs. */
  limb: { color: 'soft', width: 0.45 },
  /** Give or take of the elbow line. */
  spread: { color: 'soft', width: 0.8, dash: [0.8, 2] },
  /** Least clearance, below which a cinch is refused. */
  least: { color: 'rust', width: 1.3, dash: [5, 2.6] },
  /** Where the clearance is measured. */
  clearance: { color: 'ink', width: 1.5 },
  leader: { color: 'ink', width: 0.5 },
  /** Lines that are thought rather than seen: the middle of a cinch. */
  middle: { color: 'soft', width: 0.7, dash: [9, 2.5, 2, 2.5] },
  /** The outline of a horse. */
  horse: { color: 'shade', width: 1.4 },
  measure: { color: 'ink', width: 0.6 },
  /** Where the edge of another sheet comes to lie. */
  joint: { color: 'soft', width: 0.6, dash: [4, 3] },
  frame: { color: 'line', width: 0.5 },
  /** Under every line on a photo. */
  halo: { color: 'white', width: 4.2 },
  /** On a photo, a cinch beside the one that is shown. */
  other: { color: 'ink', width: 1.8, dash: [1.8, 2.8] },
  /** Around what is refused. */
  refused: { color: 'ink', width: 1.6, dash: [6, 3] },
} as const satisfies Record<string, Stroke>;

export type StrokeName = keyof typeof strokes;

/** Areas are flat; what tells them apart in black and white are the lines hatched over them. */
export const fills = {
  cord: colors.cord,
  woven: colors.rust,
  strap: colors.sand,
  paper: colors.white,
  band: colors.sand,
  /** Where a sample of a line on a photo lies. */
  ground: colors.line,
  ink: colors.ink,
} as const;

export type FillName = keyof typeof fills;

/** Lines over the side of the elbow: how far apart, in points, and at which slant, in degrees from level, turning left. */
export const hatch = { stroke: 'limb', gap: 5.5, slant: 45 } as const;

/** Faces of type, as the papers have them. */
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

/** Families of type to try in turn; the first is the one that comes with the program. */
export const families: Readonly<Record<Face, { readonly names: string; readonly weight: number }>> = {
  text: { names: "'Source Sans 3', 'Segoe UI', 'Helvetica Neue', Arial, sans-serif", weight: 400 },
  strong: { names: "'Source Sans 3', 'Segoe UI', 'Helvetica Neue', Arial, sans-serif", weight: 600 },
  head: { names: "'Source Serif 4', Palatino, Georgia, serif", weight: 600 },
};

/** From one line of letters to the next, as a part of their size. */
export const leading = 1.24;

/** Half the length of an arrow head and half its width, points. */
export const arrow = { length: 4.6, half: 1.9 } as const;
