/** The side picture shows what was judged, measured in the file. */
import { Point as FlatPoint, Segment } from '@flatten-js/core';
import { describe, expect, test } from 'vitest';
import type { Candidate } from '../../src/cinch/candidate.ts';
import { sizeOrder } from '../../src/index.ts';
import type { Order } from '../../src/order/types.ts';
import { behindBy } from '../../src/draw/elbow.ts';
import { sideScene } from '../../src/draw/page.ts';
import { shownSpec } from '../../src/draw/shown.ts';
import { pointsOf } from '../../src/draw/side.ts';
import { sceneSvg } from '../../src/draw/svg.ts';
import { defaultShop } from '../../src/cinch/default-shop.ts';
import { orderOf, rigging } from '../support/orders.ts';
import { within } from '../support/within.ts';
import { cornersOf, distance, inLayer, readSvg } from '../support/read-svg.ts';
import { outlineOf } from '../../src/cinch/outline.ts';

/** The writer rounds to thousandths of a point, both corners of a line. */
const ROUNDED = 0.002;

/** "1 3/8 in" as eighths of an inch. */
function eighths(text: string): number {
  const [, whole = '0', over = '0', under = '8'] = /^(?:(\d+) ?)??(?:(\d)\/(\d))? in$/.exec(text)!;
  return 8 * Number(whole) + (8 * Number(over)) / Number(under);
}

const orders: readonly [string, Order][] = [
  ['an average horse', orderOf()],
  ['a center-fire', orderOf({ saddle: { rigging: rigging('center-fire') } })],
  ['a pony', orderOf({ horse: { heartGirth: 52, kind: 'pony' }, saddle: { rigging: rigging('7/8') } })],
  ['a draft', orderOf({ horse: { heartGirth: 94, kind: 'draft' }, saddle: { rigging: rigging('3/4') } })],
  [
    'a saddle that rolls',
    orderOf({ horse: { trouble: ['saddle-rolls'] }, saddle: { rigging: rigging('3/4') } }),
  ],
];

describe.each(orders)('%s', (_, order) => {
  const advice = sizeOrder(order, defaultShop);
  const specs = advice.specs.slice(0, 3);
  const shown = specs.map((spec) => shownSpec(spec, advice, 'in'));
  const svg = readSvg(sceneSvg(sideScene({ advice, shown, units: 'in' })));
  const candidates = specs.map(({ candidate }): Candidate => candidate);
  /** Inches of horse in a point of the file. */
  const inches = svg.scale / 72;

  test('the paper is in points, one of its units to a point', () => {
    expect(svg.size).toEqual([`${String(svg.viewBox[2])}pt`, `${String(svg.viewBox[3])}pt`]);
  });

  test.each(candidates.map((candidate, i) => [i + 1, candidate] as const))(
    'no. %i: the line is as long as the clearance, its number says so, the cords are as wide as they are tied',
    (rank, candidate) => {
      const layer = `shown-${String(rank)}`;
      const { clearance, cordClearance } = candidate;
      const nearest = Math.min(clearance.inches, cordClearance.inches);
      const [line] = inLayer(svg, layer, 'clearance');
      const [from, to] = cornersOf(line!);
      expect(Math.abs(distance(from!, to!) * inches - nearest)).toBeLessThan(ROUNDED * inches);
      const labels = inLayer(svg, layer, 'clearance').filter(({ name }) => name === 'text');
      expect(eighths(labels[0]!.text)).toBe(Math.floor(8 * nearest));

      const [cords] = inLayer(svg, layer, 'cords');
      const corners = cornersOf(cords!);
      const { stations, widths } = outlineOf(candidate.shape);
      const [midline] = corners[0]!.slice(1);
      const fronts = corners.slice(0, corners.length / 2);
      const backs = corners.slice(corners.length / 2).reverse();
      stations.forEach((station, i) => {
        const at = fronts.findLastIndex(
          ([, y]) => Math.abs((midline! - y) * inches - station) < ROUNDED * inches,
        );
        within((backs[at]![0] - fronts[at]![0]) * inches, widths[i]!, ROUNDED * inches);
        within(backs[at]![1], fronts[at]![1], 0);
      });
    },
  );

  test('the outline has withers, groove, midline and elbow where the horse has them, and keeps inside its panel', () => {
    const { girth, elbowLine, ring } = advice.facts;
    const corners = inLayer(svg, 'shown-1', 'horse').flatMap(cornersOf);
    const box = cornersOf(inLayer(svg, 'shown-1', 'panel')[0]!);
    for (const axis of [0, 1] as const) {
      const edges = box.map((corner) => corner[axis]);
      for (const corner of corners) {
        expect(corner[axis]).toBeGreaterThanOrEqual(Math.min(...edges) - ROUNDED);
        expect(corner[axis]).toBeLessThanOrEqual(Math.max(...edges) + ROUNDED);
      }
    }
    // The model places the ring, which locates the rest.
    const [circle] = inLayer(svg, 'shown-1', 'ring');
    const grooveAt = Number(circle!.attributes['cx']) + ring.x / inches;
    const [cords] = inLayer(svg, 'shown-1', 'cords');
    const midline = cornersOf(cords!)[0]![1];
    const has = (x: number, s: number): boolean =>
      corners.some(
        ([px, py]) =>
          Math.abs((grooveAt - px) * inches - x) < 2 * ROUNDED * inches &&
          Math.abs((midline - py) * inches - s) < 2 * ROUNDED * inches,
      );
    expect(has(0, 0)).toBe(true);
    expect(has(0, girth.value / 2)).toBe(true);
    expect(has(elbowLine[0]!, 0)).toBe(true);
  });

  test('the scale bar is as long as it says', () => {
    const bar = inLayer(svg, 'legend').filter(({ attributes }) => attributes['stroke-width'] === '0.6');
    const xs = bar.flatMap(cornersOf).map(([x]) => x);
    const length = Math.max(...xs) - Math.min(...xs);
    const said = inLayer(svg, 'legend').find(({ text }) => /^\d+ in$/.test(text))!.text;
    within(length * inches, parseFloat(said), ROUNDED * inches);
  });

  test.each(['floor', 'required'] as const)(
    'the %s line keeps its distance from the elbow line everywhere',
    (key) => {
      const { facts } = advice;
      const elbow = pointsOf(facts.elbowLine);
      // By an independent geometry library.
      const pieces = elbow.slice(1).map(([x, s], i) => {
        const [fromX, fromS] = elbow[i]!;
        return new Segment(new FlatPoint(fromX, fromS), new FlatPoint(x, s));
      });
      for (const [x, s] of behindBy(elbow, facts[key])) {
        const far = Math.min(...pieces.map((piece) => new FlatPoint(x, s).distanceTo(piece)[0]));
        within(far, facts[key], 1e-9);
      }
    },
  );
});
