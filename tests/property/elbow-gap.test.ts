/** The gap by the elbow line's form is that of any two broken lines, for every kind of edge on every elbow line that the numbers allow. */
import { expect, test } from 'vitest';
import { elbowLineOf } from '../../src/facts/elbow-line.ts';
import { bodyEdge, flareEdge, frameEdge, pinchedEdge } from '../../src/fit/edges.ts';
import { elbowGap } from '../../src/fit/elbow-gap.ts';
import { gapBetween } from '../../src/fit/gap.ts';
import { seededRandom } from '../../src/geometry/random.ts';
import { defaultModel, modelNumbers, type ModelKey } from '../../src/sources/numbers.ts';
import { roperShape, straightShape } from '../../src/stock/outline.ts';
import { gapOf, pairs } from '../support/laid.ts';
import { plainBuckle } from '../support/orders.ts';
import { within } from '../support/within.ts';

const random = seededRandom(41);
const between = (low: number, high: number): number => low + (high - low) * random.uniform();

/** Anywhere in its range, or at an end of it now and then. */
function anyOf(key: ModelKey): number {
  const { min, max } = modelNumbers[key];
  const at = random.uniform();
  return at < 0.1 ? min : at > 0.9 ? max : between(min, max);
}

function anyModel(): typeof defaultModel {
  const elbow = anyOf('elbow-station');
  const strand = anyOf('strand-pitch');
  return {
    ...defaultModel,
    'opening-above': anyOf('opening-above'),
    'opening-below': anyOf('opening-below'),
    'armpit-station': Math.min(anyOf('armpit-station'), elbow),
    'elbow-station': elbow,
    'flare-length': anyOf('flare-length'),
    'strand-pitch': strand,
    'pinch-pitch': Math.min(anyOf('pinch-pitch'), strand),
  };
}

/** The four kinds of edges of one cinch. */
function* edges(model: typeof defaultModel, girth: number): Generator<Float64Array> {
  const slope = between(-0.4, 0.4);
  const strands = Math.round(between(7, 31));
  const top = between(6, girth / 2);
  yield bodyEdge(straightShape(strands * model['strand-pitch'], top), slope);
  const shape = roperShape({ strands, start: between(0, top + 2), top }, model);
  yield bodyEdge(shape, slope);
  yield flareEdge(shape, slope);
  yield pinchedEdge(shape, slope);
  yield frameEdge({ ...plainBuckle, frameWidth: between(2, 9) }, top, slope);
}

/** A default and a wild model by turns. */
const models = Array.from({ length: 600 }, (_, i) => (i % 2 === 0 ? defaultModel : anyModel()));

test('it is as wide as between any two broken lines, and from point to point the same', () => {
  const seen = { apart: 0, over: 0, points: 0 };
  for (const model of models) {
    const girth = between(40, 100);
    const elbow = elbowLineOf(between(1, 8), girth, model);
    for (const edge of edges(model, girth)) {
      const { distance, ...points } = { ...elbowGap(edge, elbow) };
      const general = { ...gapBetween(edge, elbow) };
      within(distance, general.distance, 1e-12);
      seen[distance > 0 ? 'apart' : 'over'] += 1;
      // Two places may be equally near but for rounding; then either will do.
      const same = Math.abs(points.ps - general.ps) < 1e-9 && Math.abs(points.qs - general.qs) < 1e-9;
      if (same) seen.points += 1;
      if (distance <= 0) continue;
      within(Math.hypot(points.px - points.qx, points.ps - points.qs), distance, 1e-12);
      if (same) within(points.px, general.px, 1e-9);
    }
  }
  expect(Math.min(seen.apart, seen.over)).toBeGreaterThan(300);
  expect(seen.points).toBeGreaterThan(0.99 * (seen.apart + seen.over));
});

test('it is the least distance that a geometry library finds (npm @flatten-js/core)', () => {
  for (const model of models.slice(0, 60)) {
    const girth = between(40, 100);
    const elbow = elbowLineOf(between(3, 8), girth, model);
    for (const edge of edges(model, girth)) {
      // The library takes no sides without length.
      const line = pairs(edge).filter(([x, s], i, all) => x !== all[i - 1]?.[0] || s !== all[i - 1]?.[1]);
      if (line.length > 1) within(elbowGap(edge, elbow).distance, gapOf(line, pairs(elbow)), 1e-9);
    }
  }
});

test('where all of the middle is equally near, the first place counts, as between any two broken lines', () => {
  const elbow = elbowLineOf(4, 72, defaultModel);
  for (const [from, to] of [
    [0, 10],
    [0, 5],
    [4, 10],
    [4, 5],
  ] as const) {
    const edge = Float64Array.of(2, from, 2, to);
    expect(elbowGap(edge, elbow)).toEqual({ ...gapBetween(edge, elbow) });
  }
});
