/** Many cinches on many horses, and gaps measured slowly. */
import { Point, Segment } from '@flatten-js/core';
import { expect } from 'vitest';
import { factsOf } from '../../src/horse/facts.ts';
import { lay } from '../../src/cinch/lay.ts';
import { sideOf } from '../../src/cinch/side.ts';
import type { Buckle, Order, Style } from '../../src/order/types.ts';
import { defaultModel as model } from '../../src/numbers/numbers.ts';
import { widthAt, type Shape } from '../../src/cinch/outline.ts';
import { orderOf, plainBuckle, rigging } from './orders.ts';

export type Line = readonly (readonly [number, number])[];
/** Flat [x, s, ...] as points. */
export const pairs = (flat: ArrayLike<number>): Line =>
  Array.from({ length: flat.length / 2 }, (_, i) => [flat[2 * i]!, flat[2 * i + 1]!] as const);

/** Level beyond the ends. */
export function forwardAt(line: Line, s: number): number {
  if (s <= line[0]![1]) return line[0]![0];
  for (let i = 1; i < line.length; i++) {
    const [[x0, s0], [x1, s1]] = [line[i - 1]!, line[i]!];
    if (s <= s1 && s1 > s0) return x0 + ((x1 - x0) * (s - s0)) / (s1 - s0);
  }
  return line.at(-1)![0];
}

export const segments = (line: Line): Segment[] =>
  line.slice(1).map(([x, s], i) => new Segment(new Point(...line[i]!), new Point(x, s)));

/** By the library; where lines cross, minus the greatest overlap of a fine scan. */
export function gapOf(edge: Line, elbow: Line): number {
  let overlap = 0;
  const [from, to] = [edge[0]![1], edge.at(-1)![1]];
  const corners = [...edge, ...elbow].map(([, s]) => s).filter((s) => s >= from && s <= to);
  const scan = Array.from({ length: 50 }, (_, i) => from + ((to - from) * i) / 49);
  for (const s of [...corners, ...scan])
    overlap = Math.min(overlap, forwardAt(elbow, s) - forwardAt(edge, s));
  if (overlap < 0) return overlap;
  return Math.min(
    ...segments(edge).flatMap((mine) => segments(elbow).map((other) => mine.distanceTo(other)[0])),
  );
}

export const below = (line: Line, s: number): Line =>
  line.at(-1)![1] <= s ? line : [...line.filter((point) => point[1] < s), [forwardAt(line, s), s]];

const buckles: readonly Buckle[] = [plainBuckle, { ...plainBuckle, frameWidth: 6, frameHeight: 3.25 }];

interface Case {
  readonly order: Order;
  readonly style: Style;
  readonly strands: number;
  readonly layers?: 1 | 2;
  readonly length: number;
  readonly buckle: Buckle;
}

/** Rings far ahead to far behind, ponies to drafts, narrow to far too wide. */
const cases: readonly Case[] = (
  [
    orderOf(),
    orderOf({ saddle: { rigging: rigging('7/8') } }),
    orderOf({ saddle: { rigging: rigging('5/8') }, horse: { barrel: 'round', heartGirth: 80 } }),
    orderOf({ saddle: { rigging: rigging('center-fire'), ringToRing: 40 } }),
    orderOf({ horse: { heartGirth: 56, elbowRoom: 2.5 } }),
    orderOf({ horse: { heartGirth: undefined, height: 66 }, saddle: { rigging: rigging('7/8') } }),
  ] as const
).flatMap((order) =>
  (['straight', 'high-flare', 'low-flare'] as const).flatMap((style) =>
    ([1, 2] as const).flatMap((layers) =>
      [11, 17, 25, 31].flatMap((strands) =>
        [14, 24, 30, 36].flatMap((length) =>
          buckles.map((buckle) => ({ order, style, strands, layers, length, buckle })),
        ),
      ),
    ),
  ),
);

/** Undefined when it cannot be laid. */
export const laid = ({ order, layers = 1, ...spec }: Case) => {
  const facts = factsOf(order, model);
  const side = sideOf(facts);
  const candidate = lay({ ...spec, layers }, side);
  return candidate === undefined ? undefined : { facts, side, candidate };
};
export type One = NonNullable<ReturnType<typeof laid>>;

export const each = (check: (one: One, asked: Case) => void): void => {
  let seen = 0;
  for (const asked of cases) {
    const one = laid(asked);
    if (one === undefined) continue;
    seen += 1;
    check(one, asked);
  }
  expect(seen).toBeGreaterThan(600);
};

/** Leading edge of the cords, by a shape's widths. */
export const cordsOf = (shape: Shape, slope: number): Line => {
  const stations = [0, shape.fullUpTo, shape.pinchedFrom, shape.top].filter(
    (s, i, all) => i === 0 || s > all[i - 1]!,
  );
  return stations.map((s) => [slope * s + widthAt(shape, s) / 2, s] as const);
};

export const frameOf = (
  { frameWidth, frameHeight }: Pick<Buckle, 'frameWidth' | 'frameHeight'>,
  low: number,
  slope: number,
): Line => [low, low + frameHeight].map((s) => [slope * s + frameWidth / 2, s] as const);
