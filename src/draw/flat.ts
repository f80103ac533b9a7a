/** A cinch laid flat, inches: x along it from its middle, y across. */
import type { Candidate } from '../cinch/candidate.ts';
import type { Buckle } from '../order/types.ts';
import { placedBars, type PlacedBar } from '../cinch/accent.ts';
import { flatOf, profileOf, type Flat } from '../cinch/flat.ts';
import { buckleShapes, cordShapes, strandShapes, wovenShapes } from './cinch-parts.ts';
import type { Layer, Point, Shape } from './scene.ts';

/** As on its ticket. */
export interface FlatCinch {
  readonly candidate: Candidate;
  readonly flat: Flat;
  readonly bars: readonly PlacedBar[];
  /** `at` is from the buckle's low edge. */
  readonly profile: readonly { readonly at: number; readonly width: number }[];
}

/** Bars take the order's accent colors. */
export function flatCinch(candidate: Candidate, accent: readonly string[]): FlatCinch {
  const flat = flatOf(candidate);
  return {
    candidate,
    flat,
    bars: placedBars(flat, accent),
    profile: profileOf(flat, candidate.buckle.barWidth),
  };
}

/** Half the finished length, hardware included. */
export const halfLength = ({ flat, candidate }: FlatCinch): number =>
  flat.half + candidate.buckle.frameHeight;

/** Half its greatest width. */
export const halfWidth = ({ candidate: { shape, buckle } }: FlatCinch): number =>
  Math.max(shape.full, shape.pinched, buckle.frameWidth) / 2;

/** From the bottom up. */
export function flatLayers(cinch: FlatCinch): Layer[] {
  const { candidate, flat, bars } = cinch;
  const front = edgeOf(cinch);
  const edges = { front, back: front.map(([x, y]): Point => [x, -y]) };
  return [
    { name: 'cords', shapes: cordShapes(edges) },
    { name: 'strands', shapes: strandShapes(edges, candidate.strands) },
    { name: 'bars', shapes: bars.flatMap((bar) => barShapes(bar, flat)) },
    { name: 'buckle', shapes: [-1, 1].flatMap((side) => buckleAt(candidate.buckle, flat.half, side)) },
  ];
}

/** The upper edge: as in the profile, full width from the first woven bar on. */
function edgeOf({ flat, profile, bars }: FlatCinch): Point[] {
  const { half, turns, widthFrom } = flat;
  const gathered = profile[0]?.width ?? widthFrom(0);
  const first = Math.min(bars[0]?.from ?? 0, half);
  const corners = [...(gathered < widthFrom(0) && first > 0 ? [first] : []), ...turns, half].filter(
    (at) => at > 0 && at <= half,
  );
  const distances = [...new Set(corners)].sort((a, b) => a - b);
  const left: Point[] = [
    [-half, gathered / 2],
    ...distances.map((at): Point => [at - half, widthFrom(at) / 2]),
  ];
  const right = left
    .slice(0, -1)
    .toReversed()
    .map(([x, y]): Point => [-x, y]);
  return [...left, ...right];
}

/** On both halves; the center bar once. */
function barShapes(bar: PlacedBar, { half, turns, widthFrom }: Flat): Shape[] {
  const { kind, from, length } = bar;
  // The center bar ends at the middle.
  const to = kind === 'centre' ? half : Math.min(half, from + length);
  const corners = [from, ...turns.filter((at) => at > from && at < to), to];
  return [-1, 1].flatMap((side) =>
    wovenShapes(corners, (at) => {
      const [x, y] = [side * (half - at), widthFrom(at) / 2];
      return [
        [x, y],
        [x, -y],
      ];
    }),
  );
}

/** -1 left, 1 right. */
function buckleAt(buckle: Buckle, half: number, side: number): Shape[] {
  const at = (out: number, y: number): Point => [side * (half + out), y];
  const bar = Math.min(buckle.barWidth, buckle.frameWidth) / 2;
  // The bar the strands sit on.
  return [...buckleShapes(buckle, at), { kind: 'line', points: [at(0, -bar), at(0, bar)], stroke: 'buckle' }];
}
