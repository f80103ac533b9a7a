/** The measured spots of a cinch suffice for every edge and elbow line. */
import { Point } from '@flatten-js/core';
import { expect, test } from 'vitest';
import { elbowLineOf } from '../../src/horse/elbow-line.ts';
import { elbowGap } from '../../src/cinch/elbow-gap.ts';
import { cordSpots, frameSpots, type Spot, type Unrolled } from '../../src/cinch/spots.ts';
import { seededRandom } from '../../src/math/random.ts';
import { defaultModel, modelNumbers, type Model, type ModelKey } from '../../src/numbers/numbers.ts';
import { roperShape, straightShape, type Shape } from '../../src/cinch/outline.ts';
import { cordsOf, forwardAt, frameOf, gapOf, pairs, segments } from '../support/laid.ts';
import { within } from '../support/within.ts';

const random = seededRandom(41);
const between = (low: number, high: number): number => low + (high - low) * random.uniform();

/** Within its range, sometimes at an end. */
function anyOf(key: ModelKey): number {
  const { min, max } = modelNumbers[key];
  const at = random.uniform();
  return at < 0.1 ? min : at > 0.9 ? max : between(min, max);
}

function anyModel(): Model {
  const elbow = anyOf('elbow-station');
  const strand = anyOf('strand-pitch');
  return {
    ...defaultModel,
    'opening-above': anyOf('opening-above'),
    'opening-below': anyOf('opening-below'),
    'armpit-station': Math.min(anyOf('armpit-station'), elbow - 0.5),
    'elbow-station': elbow,
    'flare-length': anyOf('flare-length'),
    'bar-spread': anyOf('bar-spread'),
    'strand-pitch': strand,
    'pinch-pitch': Math.min(anyOf('pinch-pitch'), strand),
  };
}

function anySide(model: Model, girth: number): Unrolled {
  const k = girth / 72;
  return {
    line: elbowLineOf(between(1, 8), girth, model),
    slope: between(-0.4, 0.4),
    armpit: model['armpit-station'] * k,
    elbow: model['elbow-station'] * k,
  };
}

function anyShapes(model: Model, girth: number): Shape[] {
  const layers = random.uniform() < 0.5 ? 1 : 2;
  const made = { strands: Math.round(between(7, 31)), layers, top: between(6, girth / 2 - 4) } as const;
  return [
    straightShape({ ...made, bar: between(2, 6) }, model),
    roperShape({ ...made, start: between(0, made.top + 2) }, model),
  ];
}

const models = Array.from({ length: 600 }, (_, i) => (i % 2 === 0 ? defaultModel : anyModel()));
const least = (spots: readonly Spot[]): number => Math.min(...spots.map(({ gap }) => gap.distance));

test('no point of an edge is nearer than the nearest spot, by a geometry library (npm @flatten-js/core)', () => {
  const seen = { apart: 0, over: 0 };
  for (const model of models) {
    const girth = between(40, 100);
    const side = anySide(model, girth);
    const elbow = pairs(side.line);
    const check = (spots: readonly Spot[], edge: ReturnType<typeof pairs>): void => {
      const distance = least(spots);
      // The library takes lines closer than a millionth for crossing.
      within(distance, gapOf(edge, elbow), 2e-6);
      for (const { x, s } of spots) within(x, forwardAt(edge, s), 1e-9);
      seen[distance > 0 ? 'apart' : 'over'] += 1;
    };
    for (const shape of anyShapes(model, girth)) {
      check(cordSpots(shape, side), cordsOf(shape, side.slope));
      const frame = { frameWidth: between(2, 9), frameHeight: between(1.5, 4) };
      check(frameSpots(frame, shape.top, side), frameOf(frame, shape.top, side.slope));
    }
  }
  expect(Math.min(seen.apart, seen.over)).toBeGreaterThan(300);
});

test('a point behind the line is as far from it as the library says; over it, level with it', () => {
  const seen = { behind: 0, over: 0 };
  for (const model of models) {
    const girth = between(40, 100);
    const { line } = anySide(model, girth);
    const elbow = pairs(line);
    const [x, s] = [between(-4, 9), between(0, girth / 2)];
    const { distance, elbowX, elbowS } = elbowGap(x, s, line);
    // The nearest point is on the line, and as far away.
    within(forwardAt(elbow, elbowS), elbowX, 1e-9);
    within(Math.hypot(x - elbowX, s - elbowS), Math.abs(distance), 1e-9);
    const level = forwardAt(elbow, s) - x;
    if (level > 0)
      within(
        distance,
        Math.min(...segments(elbow).map((piece) => piece.distanceTo(new Point(x, s))[0])),
        1e-9,
      );
    else within(distance, level, 1e-9);
    seen[level > 0 ? 'behind' : 'over'] += 1;
  }
  expect(Math.min(seen.behind, seen.over)).toBeGreaterThan(100);
});
