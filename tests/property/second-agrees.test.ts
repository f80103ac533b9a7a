/** Two geometries written apart agree on any horse and cinch. */
import { expect, test } from 'vitest';
import { factsOf } from '../../src/horse/facts.ts';
import { lay } from '../../src/cinch/lay.ts';
import { sideOf } from '../../src/cinch/side.ts';
import { cordSpots, frameSpots, type Spot } from '../../src/cinch/spots.ts';
import { seededRandom } from '../../src/math/random.ts';
import { defaultShop } from '../../src/cinch/default-shop.ts';
import { styleIds } from '../../src/cinch/styles.ts';
import { plainCinch, plainHorse } from '../support/plain-case.ts';
import { randomOrders } from '../support/random-cases.ts';
import { secondGeometry, type Gaps } from '../support/second-geometry.ts';
import { within } from '../support/within.ts';

const orders = randomOrders(77, 200);
const random = seededRandom(5);

test('on 200 orders, every style in one layer and two on every buckle of the built-in shop', () => {
  const met = { cinches: 0, over: 0, pinchedBesideElbow: 0, frameNearest: 0, frameBelowElbow: 0 };
  for (const order of orders) {
    const facts = factsOf(order, defaultShop.model);
    const side = sideOf(facts);
    // An untaped girth is tested elsewhere.
    const horse = plainHorse(order, facts.girth.value);
    for (const style of styleIds)
      for (const buckle of defaultShop.buckles) {
        const layers = random.uniform() < 0.5 ? 1 : 2;
        const strands = 2 * Math.floor(4 + 12 * random.uniform()) + 1;
        const length = Math.round(18 + 24 * random.uniform());
        const cinch = lay({ style, strands, layers, buckle, length }, side);
        if (cinch === undefined) continue;
        const cords = cordSpots(cinch.shape, side);
        const frame = frameSpots(buckle, cinch.low, side);
        const least = (spots: readonly Spot[]): number => Math.min(...spots.map(({ gap }) => gap.distance));
        const found: Gaps = {
          skin: least(cords.filter(({ skin }) => skin)),
          // The point of the elbow belongs to both.
          muscle: least([...frame, ...cords.filter(({ s, skin }) => !skin || s === side.elbow)]),
          frame: least(frame),
        };
        const second = secondGeometry(horse, plainCinch(cinch));
        for (const front of ['skin', 'muscle', 'frame'] as const) within(found[front], second[front], 1e-3);
        met.cinches += 1;
        if (second.skin < 0) met.over += 1;
        if (style !== 'straight' && cinch.shape.pinchedFrom < side.elbow) met.pinchedBesideElbow += 1;
        if (second.frame < second.skin - facts.k) met.frameNearest += 1;
        if (cinch.low < side.elbow) met.frameBelowElbow += 1;
      }
  }
  expect(met.cinches).toBeGreaterThan(3500);
  expect(Math.min(...Object.values(met))).toBeGreaterThan(100);
});

test('the orders are of every kind', () => {
  const seen = new Set<string>();
  for (const { horse, saddle } of orders) {
    const { rigging, style, ringToRing } = saddle;
    seen.add(rigging.kind === 'measured' ? 'measured' : `at ${rigging.fraction}`);
    seen.add(style ?? 'no style').add(ringToRing === undefined ? 'no ring tape' : 'ring tape');
    seen.add(horse.barrel === 'round' ? 'round' : 'not round').add(horse.kind ?? 'no kind');
    seen.add(horse.elbowRoom === undefined ? 'no room' : 'room');
    seen.add(horse.heartGirth === undefined ? 'no girth' : horse.heartGirth < 58 ? 'small' : 'grown');
  }
  // 6 riggings, 5 styles, 2 tapes, 2 barrels, 5 kinds, 2 rooms, 3 girths.
  expect(seen.size).toBe(25);
});
