/** Edges of a laid cinch corner by corner, and the gap to the elbow line where one lies over the other, by looking at every height. */
import { expect, test } from 'vitest';
import { bodyEdge, flareEdge, frameEdge, pinchedEdge } from '../../src/fit/edges.ts';
import { gapBetween } from '../../src/fit/gap.ts';
import { seededRandom } from '../../src/geometry/random.ts';
import { straightShape } from '../../src/stock/outline.ts';
import { plainBuckle } from '../support/orders.ts';

const roper = { full: 6, pinched: 4, fullUpTo: 5, pinchedFrom: 9, top: 14 };

test('a leading edge is half the width in front of a centre line that leans', () => {
  const at = (station: number, width: number): number[] => [0.1 * station + width / 2, station];
  expect([...bodyEdge(roper, 0.1)]).toEqual([...at(0, 6), ...at(5, 6), ...at(9, 4), ...at(14, 4)]);
  expect([...bodyEdge(straightShape(5, 12), 0.1)]).toEqual([...at(0, 5), ...at(12, 5)]);
  expect([...flareEdge(roper, 0.1)]).toEqual([...at(0, 6), ...at(5, 6), ...at(9, 4)]);
  expect([...pinchedEdge(roper, 0.1)]).toEqual([...at(9, 4), ...at(14, 4)]);
});

test('the edge of a frame is its lower side, from the centre line forward, and its front', () => {
  const { frameWidth, frameHeight } = plainBuckle;
  const low = 14;
  const high = low + frameHeight;
  expect([...frameEdge(plainBuckle, low, 0.1)]).toEqual([
    ...[0.1 * low, low],
    ...[0.1 * low + frameWidth / 2, low],
    ...[0.1 * high + frameWidth / 2, high],
  ]);
});

/** x of a broken line with rising stations, straight between corners and level beyond its ends. */
function forward(line: readonly number[], s: number): number {
  const last = line.length - 2;
  if (s <= line[1]!) return line[0]!;
  for (let i = 0; i < last; i += 2) {
    const [x, from, next, to] = line.slice(i, i + 4) as [number, number, number, number];
    if (s <= to) return x + ((next - x) * (s - from)) / (to - from);
  }
  return line[last]!;
}

/** Broken line of some corners between two stations. */
function lineOf(
  random: ReturnType<typeof seededRandom>,
  corners: number,
  [from, to]: [number, number],
): number[] {
  const step = (to - from) / (corners - 1);
  return Array.from({ length: corners }, (_, i) => [4 + 3 * random.uniform(), from + i * step]).flat();
}

test('where a cinch lies over the elbow line, the gap is the most by which it does, at a height of the cinch', () => {
  const random = seededRandom(12);
  let over = 0;
  for (let i = 0; i < 400; i++) {
    const from = 4 * random.uniform();
    const to = from + 2 + 10 * random.uniform();
    const edge = lineOf(random, 2 + (i % 3), [from, to]);
    const elbow = lineOf(random, 4, [0, 20]);
    let most = 0;
    for (let step = 0; step <= 4000; step++) {
      const s = from + ((to - from) * step) / 4000;
      most = Math.max(most, forward(edge, s) - forward(elbow, s));
    }
    const gap = gapBetween(Float64Array.from(edge), Float64Array.from(elbow));
    if (most === 0) {
      expect(gap.distance).toBeGreaterThanOrEqual(0);
      continue;
    }
    over += 1;
    // Sampled heights fall beside the corners by at most half a step; the lines are no steeper than 3 in a corner's height.
    expect(gap.distance).toBeLessThanOrEqual(-most + 1e-12);
    expect(gap.distance).toBeGreaterThan(-most - 0.02);
    expect([gap.ps, gap.qs]).toEqual([gap.ps, gap.ps]);
    expect(Math.abs(forward(edge, gap.ps) - forward(elbow, gap.ps) + gap.distance)).toBeLessThan(1e-9);
    expect(gap.px - gap.qx).toBeCloseTo(-gap.distance, 9);
    expect(gap.ps).toBeGreaterThan(from - 1e-9);
    expect(gap.ps).toBeLessThan(to + 1e-9);
  }
  expect(over).toBeGreaterThan(100);
});

test('lines that do not lie over one another are as far apart as their nearest points', () => {
  const elbow = Float64Array.of(9, 0, 8, 4, 8, 7, 12, 20);
  const gap = { ...gapBetween(Float64Array.of(3, 0, 5, 5), elbow) };
  expect(gap).toEqual({ distance: 3, px: 5, ps: 5, qx: 8, qs: 5 });
});
