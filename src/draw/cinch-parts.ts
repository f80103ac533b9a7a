/** Strands, woven bars and buckles, alike on horse and bench. */
import type { Buckle } from '../order/types.ts';
import type { Point, Shape } from './scene.ts';

/** Two edges, point by point. */
export interface Edges {
  readonly front: readonly Point[];
  readonly back: readonly Point[];
}

/** Inches. */
const ROW = 0.25;

const around = ({ front, back }: Edges): Point[] => [...front, ...back.toReversed()];

/** The strands as one area. */
export const cordShapes = (edges: Edges): Shape[] => [
  { kind: 'area', points: around(edges), fill: 'cord', stroke: 'edge' },
];

/** The gaps between strands. */
export const strandShapes = ({ front, back }: Edges, strands: number): Shape[] =>
  Array.from({ length: strands - 1 }, (_, i): Shape => {
    const share = (i + 1) / strands;
    const points = front.map(([x, y], at): Point => {
      const [otherX, otherY] = back[at] ?? [x, y];
      return [x + (otherX - x) * share, y + (otherY - y) * share];
    });
    return { kind: 'line', points, stroke: 'strand' };
  });

/** A woven bar; `across` gives both edges at a place along the cinch. */
export function wovenShapes(
  [from, ...others]: readonly number[],
  across: (at: number) => readonly [Point, Point],
): Shape[] {
  const [start, end] = [from ?? 0, others.at(-1) ?? 0];
  const pairs = [start, ...others].map(across);
  const rows = Math.max(1, Math.round(Math.abs(end - start) / ROW));
  return [
    {
      kind: 'area',
      points: around({ front: pairs.map(([front]) => front), back: pairs.map(([, back]) => back) }),
      fill: 'woven',
      stroke: 'weave',
    },
    ...Array.from({ length: rows - 1 }, (_, i): Shape => ({
      kind: 'line',
      points: across(start + ((end - start) * (i + 1)) / rows),
      stroke: 'weave',
    })),
  ];
}

/** Height of the strap bar, as a share of the frame. */
export const rung = 0.4;

/** `at` maps inches from low edge and middle. */
export function buckleShapes(
  { frameWidth, frameHeight }: Buckle,
  at: (up: number, aside: number) => Point,
): Shape[] {
  const half = frameWidth / 2;
  const middle = rung * frameHeight;
  const points = [at(0, half), at(frameHeight, half), at(frameHeight, -half), at(0, -half)];
  return [
    { kind: 'area', points, fill: 'paper', stroke: 'buckle' },
    { kind: 'line', points: [at(middle, half), at(middle, -half)], stroke: 'buckle' },
    { kind: 'line', points: [at(middle, 0), at(frameHeight, 0)], stroke: 'buckle' },
  ];
}
