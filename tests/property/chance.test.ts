/** How often what we call likely happens on horses of the second geometry. */
import { beforeAll, describe, expect, test } from 'vitest';
import { factsOf } from '../../src/horse/facts.ts';
import { clearanceOf } from '../../src/cinch/clearance.ts';
import type { Candidate } from '../../src/cinch/candidate.ts';
import { lay } from '../../src/cinch/lay.ts';
import { sideOf, type Side } from '../../src/cinch/side.ts';
import { cordSpots, frameSpots } from '../../src/cinch/spots.ts';
import { normalCdf } from '../../src/math/normal.ts';
import { seededRandom, type Random } from '../../src/math/random.ts';
import { sizeOrder } from '../../src/index.ts';
import type { Order } from '../../src/order/types.ts';
import { layersOf } from '../../src/cinch/buckles.ts';
import { defaultShop } from '../../src/cinch/default-shop.ts';
import { styleIds } from '../../src/cinch/styles.ts';
import { cases, long } from '../support/cases.ts';
import { pick } from '../support/draw.ts';
import { orderOf, rigging } from '../support/orders.ts';
import { plainCinch, plainHorse } from '../support/plain-case.ts';
import { likelyOrders } from '../support/random-cases.ts';
import { shareThatClears } from '../support/second-geometry.ts';

interface Called {
  readonly likely: number;
  /** Of the draws that cleared. */
  readonly share: number;
  readonly first: boolean;
}

const DRAWS = cases(2000, 4000);

/** The first spec and cinches nobody chose. */
function calledOf(order: Order, seed: number, random: Random): Called[] {
  const { first, facts } = sizeOrder(order, defaultShop);
  const horse = plainHorse(order, facts.girth.value);
  const side = sideOf(facts);
  const called = (candidate: Candidate, isFirst: boolean): Called => ({
    likely: candidate.clearance.likely,
    share: shareThatClears(horse, plainCinch(candidate), { draws: DRAWS, seed }),
    first: isFirst,
  });
  const others = Array.from({ length: 3 }, () => {
    const buckle = pick(random, defaultShop.buckles);
    const strands = pick(random, [13, 15, 17, 19, 21, 23, 25, 27]);
    const layers = layersOf(buckle, strands)[0] ?? 1;
    const length = 2 * Math.round(facts.girth.value / 4 - 3 + 2 * random.uniform());
    return lay({ style: pick(random, styleIds), strands, layers, buckle, length }, side);
  });
  return [
    ...(first === undefined ? [] : [called(first.candidate, true)]),
    ...others.flatMap((each) =>
      each === undefined || Math.abs(each.clearance.likely - 0.5) > 0.48 ? [] : [called(each, false)],
    ),
  ];
}

const all: Called[] = [];
beforeAll(() => {
  const random = seededRandom(8);
  for (const taped of [true, false])
    likelyOrders(taped ? 31 : 17, cases(120, 500), { taped }).forEach((order, i) => {
      all.push(...calledOf(order, 2 * i + Number(taped), random));
    });
}, 600_000);

const mean = (values: readonly number[]): number =>
  values.reduce((sum, each) => sum + each, 0) / values.length;
const overBy = (called: readonly Called[]): number[] => called.map(({ likely, share }) => likely - share);

describe(`what is called likely, against ${String(DRAWS)} drawn horses each`, () => {
  test.each([0, 1, 2, 3, 4, 5, 6, 7, 8, 9])('from %i in ten on: happens as often', (tenth) => {
    const bin = all.filter(({ likely }) => Math.min(9, Math.floor(10 * likely)) === tenth);
    expect(bin.length).toBeGreaterThanOrEqual(cases(10, 50));
    const over = overBy(bin);
    expect(Math.abs(mean(over))).toBeLessThan(0.01);
    // A share of 2000 draws has a standard deviation of one point.
    expect(over.filter((each) => Math.abs(each) > 0.03).length).toBeLessThanOrEqual(bin.length / 20);
    expect(Math.max(...over.map(Math.abs))).toBeLessThan(0.05);
  });

  test('first specs: at most two in a hundred are three points off, on either side, and none is five', () => {
    const over = overBy(all.filter(({ first }) => first));
    expect(over.length).toBeGreaterThan(cases(200, 900));
    expect(Math.abs(mean(over))).toBeLessThan(0.005);
    expect(over.filter((each) => Math.abs(each) > 0.03).length).toBeLessThanOrEqual(over.length / 50);
    expect(Math.max(...over.map(Math.abs))).toBeLessThan(0.05);
  });

  test('two fronts and the armpit all near: a small horse short of room on 7/8', () => {
    const order = orderOf({
      horse: { heartGirth: 62, elbowRoom: 2.99 },
      saddle: { rigging: rigging('7/8'), style: 'flat-plate', ringToRing: 38.2 },
    });
    const { specs } = sizeOrder(order, defaultShop);
    const { candidate } = specs[0]!;
    const share = shareThatClears(plainHorse(order), plainCinch(candidate), { draws: 20_000, seed: 9 });
    expect(Math.abs(candidate.clearance.likely - share)).toBeLessThan(0.01);
  });

  // A plumb ring: a straight is near the elbow line at armpit and elbow.
  test.each([
    [15, 3.2],
    [17, 3.4],
  ])('where a straight of %i strands is equally near at armpit and elbow', (strands, room) => {
    const order = orderOf({
      horse: { elbowRoom: room },
      saddle: { rigging: { kind: 'measured', setBack: room - 2 }, ringToRing: 44 },
    });
    const facts = factsOf(order, defaultShop.model);
    const buckle = defaultShop.buckles.find(({ id }) => id === 'plain 3')!;
    const { clearance, ...cinch } = lay(
      { style: 'straight', strands, layers: 1, buckle, length: 30 },
      sideOf(facts),
    )!;
    const drawn = { draws: 20_000, seed: strands };
    const share = shareThatClears(plainHorse(order), plainCinch({ ...cinch, clearance }), drawn);
    expect(Math.abs(clearance.likely - share)).toBeLessThan(0.015);
    // One of the two alone would say more.
    expect(normalCdf((clearance.inches - clearance.floor) / clearance.sd) - share).toBeGreaterThan(0.04);
  });
});

const step = long ? 0.05 : 0.1;
describe(`with more room, measured in steps of ${String(step)} in`, () => {
  const rooms = Array.from({ length: 1 + Math.round(3 / step) }, (_, i) => 2.5 + step * i);
  const finished = defaultShop.buckles.flatMap((buckle) =>
    [13, 17, 21, 25].flatMap((strands) =>
      layersOf(buckle, strands).flatMap((layers) =>
        styleIds.map((style) => ({ style, strands, layers, buckle })),
      ),
    ),
  );

  /** The same finished cinch on another horse: its low flare stays. */
  const likelyOn = ({ shape, buckle, low }: Candidate, side: Side) =>
    clearanceOf([...cordSpots(shape, side), ...frameSpots(buckle, low, side)], side);

  test.each(['full', '7/8', '3/4', '5/8', 'center-fire'] as const)(
    '%s: a finished cinch is no less sure',
    (name) => {
      let [steps, grown] = [0, 0];
      for (const girth of [62, 72, 84])
        for (const barrel of [undefined, 'round'] as const) {
          const sideWith = (elbowRoom: number): Side =>
            sideOf(
              factsOf(
                orderOf({
                  horse: { heartGirth: girth, elbowRoom, barrel },
                  saddle: { rigging: rigging(name), ringToRing: (girth * 44) / 72 },
                }),
                defaultShop.model,
              ),
            );
          const sides = rooms.map(sideWith);
          const usual = sideWith(girth / 18);
          for (const made of finished) {
            const cinch = lay({ ...made, length: 2 * Math.round(girth / 4 - 3) }, usual)!;
            const clearances = sides.map((side) => likelyOn(cinch, side));
            clearances.slice(1).forEach(({ likely }, i) => {
              const before = clearances[i]!;
              steps += 1;
              if (likely > before.likely) grown += 1;
              expect(before.likely - likely).toBeLessThan(0.0005);
            });
          }
        }
      expect(steps).toBeGreaterThan(cases(5_000, 10_000));
      expect(grown).toBeGreaterThan(0.99 * steps);
    },
  );
});
