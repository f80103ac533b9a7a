/** Elbow clearance of whole candidates against an independent geometry library. */
import { Point, Segment } from '@flatten-js/core';
import { describe, expect, it } from 'vitest';
import { frameEdge, bodyEdge } from '../../src/fit/edges.ts';
import { factsOf, type Facts } from '../../src/facts/facts.ts';
import type { Candidate } from '../../src/fit/candidate.ts';
import { sizeOrder } from '../../src/index.ts';
import { defaultModel } from '../../src/sources/numbers.ts';
import { defaultShop } from '../../src/stock/default-shop.ts';
import { orderOf, rigging } from '../support/orders.ts';
import { within } from '../support/within.ts';

const segmentsOf = (points: ArrayLike<number>): Segment[] => {
  const found: Segment[] = [];
  for (let i = 2; i < points.length; i += 2) {
    const from = new Point(points[i - 2] ?? 0, points[i - 1] ?? 0);
    const to = new Point(points[i] ?? 0, points[i + 1] ?? 0);
    if (!from.equalTo(to)) found.push(new Segment(from, to));
  }
  return found;
};

/** Least distance of body and frame to the elbow line, by the library. */
function distanceByLibrary({ shape, buckle }: Candidate, { centreLine, elbowLine }: Facts): number {
  const body = segmentsOf(Array.from(bodyEdge(shape, centreLine.slope)));
  const frame = segmentsOf(Array.from(frameEdge(buckle, shape.top, centreLine.slope)));
  let least = Infinity;
  for (const mine of [...body, ...frame]) {
    for (const elbow of segmentsOf(elbowLine)) least = Math.min(least, mine.distanceTo(elbow)[0]);
  }
  return least;
}

describe('clearance of every candidate that does not lie over the elbow', () => {
  // Oracle: segment distance of the npm library @flatten-js/core.
  it.each(['full', '7/8', '3/4', '5/8', 'center-fire'] as const)('%s', (position) => {
    const order = orderOf({ saddle: { rigging: rigging(position) } });
    const facts = factsOf(order, defaultModel);
    const clear = sizeOrder(order, defaultShop).every.filter(
      ({ candidate }) => candidate.clearance.inches > 0,
    );
    expect(clear.length).toBeGreaterThan(100);
    for (const { candidate } of clear) {
      within(candidate.clearance.inches, distanceByLibrary(candidate, facts), 1e-9);
    }
  });
});
