/** A girth supported by tapes at the rings is out by as much as it says. */
import { describe, expect, test } from 'vitest';
import { factsOf, workingOf } from '../../src/horse/facts.ts';
import { girthFromHeight } from '../../src/horse/girth.ts';
import { withRingTapes } from '../../src/horse/girth-by-ring.ts';
import { stationSd } from '../../src/horse/ring.ts';
import { seededRandom } from '../../src/math/random.ts';
import type { Horse, Saddle } from '../../src/order/types.ts';
import { defaultModel as model } from '../../src/numbers/numbers.ts';
import { long } from '../support/cases.ts';
import { orderOf } from '../support/orders.ts';
import { within, withinRelative } from '../support/within.ts';
import { done, lineOf } from '../support/working.ts';

const rigging: Saddle['rigging'] = { kind: 'named', name: '7/8', fraction: 0.875 };
const usualDrop = model['drop-flat-plate'] / 72; // of the girth

type Taped = readonly ('ringToRing' | 'ringDrop')[];

interface True {
  readonly girth: number;
  readonly drop: number;
}

/** A horse of 60 in with ring tapes; readings out by so many spreads. */
function factsBy(
  { girth, drop }: True,
  { taped, kind }: { taped: Taped; kind: Horse['kind'] },
  out: () => number,
) {
  const read = {
    ringToRing: girth - 2 * drop + model['ring-to-ring-sd'] * out(),
    ringDrop: drop + model['drop-measured-sd'] * out(),
  };
  const tapes = Object.fromEntries(taped.map((key) => [key, read[key]]));
  const saddle: Saddle = { rigging, style: 'flat-plate', ...tapes };
  return factsOf(orderOf({ horse: { heartGirth: undefined, height: 60, kind }, saddle }), model);
}

const cases: readonly (readonly [string, Taped, Horse['kind']])[] = [
  ['ring to ring of a light horse', ['ringToRing'], 'light'],
  ['ring to ring of a pony', ['ringToRing'], 'pony'],
  ['the drop of a light horse', ['ringDrop'], 'light'],
  ['the drop of a mule', ['ringDrop'], 'mule'],
  ['both', ['ringToRing', 'ringDrop'], 'light'],
];

// Draws a horse about the girth by its height, its rings about the usual drop, readings about both; shares no
// formula.
describe('drawn at random, girth and rings are out by what their spreads say', () => {
  test.each(cases)('%s', (_, taped, kind) => {
    const random = seededRandom(2417);
    const normal = (): number => random.normal();
    const usual = girthFromHeight(60, kind);
    const asUsual = { girth: usual.value, drop: usualDrop * usual.value };
    const said = factsBy(asUsual, { taped, kind }, () => 0);
    const draws = long ? 20_000 : 10_000;
    const squares = { girth: 0, station: 0 };
    for (let i = 0; i < draws; i++) {
      const girth = usual.value + usual.sd * normal();
      const horse = { girth, drop: usualDrop * girth + model['drop-sd'] * normal() };
      const found = factsBy(horse, { taped, kind }, normal);
      squares.girth += (found.girth.value - girth) ** 2;
      squares.station += (found.ring.station.value - (girth / 2 - horse.drop)) ** 2;
    }
    // So many draws tell a spread to 0.7 percent.
    withinRelative(Math.sqrt(squares.girth / draws), said.girth.sd, 0.02);
    withinRelative(Math.sqrt(squares.station / draws), stationSd(said.ring, said.girth), 0.02);
    expect(said.girth.sd).toBeLessThan(usual.sd);
  });
});

describe('what is weighed', () => {
  const usual = girthFromHeight(60, 'light');

  test('a mean weighed by one over the squares of the spreads, as of independent readings (Bevington & Robinson 2003, 4.1; from memory)', () => {
    const saddle: Saddle = { rigging, style: 'ring', ringToRing: 46 };
    const c = 0.5 - 14 / 72;
    const [value, sd] = [23 / c, Math.hypot(1.5, 0.25) / c];
    const [a, b] = [usual.sd ** -2, sd ** -2];
    const found = withRingTapes(usual, saddle, model);
    within(found.value, (a * usual.value + b * value) / (a + b), 1e-9);
    within(found.sd, (a + b) ** -0.5, 1e-9);
  });

  test.each<[string, Partial<Saddle>, Partial<Horse>]>([
    ['a taped girth stays', { ringToRing: 46, style: 'ring' }, { heartGirth: 73 }],
    ['without tapes at the rings', { style: 'ring' }, {}],
  ])('%s: nothing', (_, saddle, horse) => {
    const facts = factsOf(orderOf({ horse: { heartGirth: undefined, height: 60, ...horse }, saddle }), model);
    expect(facts.girth.value).toBe(horse.heartGirth ?? girthFromHeight(60, undefined).value);
    expect(facts.girth.moved).toEqual({ own: facts.girth.sd, station: 0, drop: 0 });
  });

  test('a drop without a rigging style counts as that of the assumed ring rigging', () => {
    const drop = { rigging, ringDrop: 15 };
    const undescribed = withRingTapes(usual, drop, model);
    const ring = withRingTapes(usual, { ...drop, style: 'ring' }, model);
    expect({ ...undescribed, basis: '' }).toEqual({ ...ring, basis: '' });
    expect(undescribed.basis).toContain('style not given');
    expect(undescribed.sd).toBeLessThan(usual.sd);
  });

  test('where they are far apart, every part of the spread grows', () => {
    const near = withRingTapes(usual, { rigging, style: 'ring', ringToRing: 42 }, model);
    const far = withRingTapes(usual, { rigging, style: 'ring', ringToRing: 60 }, model);
    expect(far.sd).toBeGreaterThan(1.5 * near.sd);
    expect(far.basis).toContain('the two are far apart');
    const { own, station, drop } = far.moved;
    within(Math.hypot(own, station, drop), far.sd, 1e-9);
  });
});

describe('the working comes to it', () => {
  test.each<[string, Partial<Saddle>]>([
    ['ring to ring', { ringToRing: 46, style: 'ring' }],
    ['both', { ringToRing: 46, ringDrop: 14, style: 'ring' }],
    ['the drop', { ringDrop: 14, style: 'ring' }],
  ])('%s', (_, saddle) => {
    const order = orderOf({ horse: { heartGirth: undefined, height: 60 }, saddle });
    const facts = factsOf(order, model);
    const working = workingOf(facts);
    const byRing = lineOf(working, 'G by the rings');
    within(done(byRing.sum), Number(byRing.result.replace(' in', '')), 0.05); // the factor has three decimals
    expect(lineOf(working, 'G').result).toBe(`${Math.round(facts.girth.value * 100) / 100} in`);
    expect(lineOf(working, 'G by height')).toBeDefined();
  });
});
