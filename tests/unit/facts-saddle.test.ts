/** Length, ring, and the facts as told. */
import { describe, expect, it, test } from 'vitest';
import { lengthsFor } from '../../src/advice/lengths.ts';
import { asAssumption, short } from '../../src/horse/estimate.ts';
import { assumptionsOf, factsOf, workingOf } from '../../src/horse/facts.ts';
import { lengthFromGirth, runFor } from '../../src/horse/length.ts';
import { weightWorking } from '../../src/horse/weight.ts';
import { heightAt } from '../../src/math/ellipse.ts';
import type { RiggingStyle } from '../../src/order/types.ts';
import { defaultModel } from '../../src/numbers/numbers.ts';
import { defaultShop } from '../../src/cinch/default-shop.ts';
import { orderOf, rigging } from '../support/orders.ts';
import { within } from '../support/within.ts';
import { done, lineOf } from '../support/working.ts';

const facts = (...order: Parameters<typeof orderOf>) => factsOf(orderOf(...order), defaultModel);

describe('length', () => {
  test('the target is ring to ring less two runs and the give, and twice as unsure as the ring', () => {
    const found = facts({ saddle: { ringToRing: 45 } });
    const { lengthNeed: need, ring } = found;
    expect(need).toMatchObject({ runTarget: 6, stretch: 1, measured: true });
    expect(need.ringToRing).toMatchObject({ value: 45, sd: 0.5, kind: 'measured', basis: 'measured' });
    expect(need.target).toMatchObject({ value: 32, sd: 2 * ring.station.sd, kind: 'computed' });
    expect(need.crossCheck).toBe(lengthFromGirth(72));
    within(runFor(need.target.value, need), need.runTarget, 1e-12);
    expect(runFor(30, need)).toBe(7);
  });

  it.each([
    [40, 4],
    [60, 5],
    [72, 6],
    [90, 7.5],
    [110, 8],
  ])('a horse of %f in is given a run of %f in, within what is accepted', (heartGirth, run) => {
    within(facts({ horse: { heartGirth } }).lengthNeed.runTarget, run, 1e-12);
  });

  it.each([
    ['a measured drop', { ringDrop: 14 }, 'computed'],
    ['a usual drop', {}, 'assumed'],
  ] as const)('by %s it is not measured', (_, saddle, kind) => {
    const { lengthNeed: need, ring } = facts({ saddle });
    expect(need.measured).toBe(false);
    expect(need.ringToRing).toMatchObject({ kind, value: 44, sd: 2 * ring.station.sd });
  });

  // 45 less 1 in of give leave 44: two runs of 3 to 10 in leave 24 to 38.
  it.each([
    ['the shop ties', { min: 20, max: 40, step: 1 }, Array.from({ length: 15 }, (_, i) => 24 + i)],
    ['its steps allow', { min: 20, max: 40, step: 4 }, [24, 28, 32, 36]],
    ['it is long enough for', { min: 20, max: 25, step: 0.5 }, [24, 24.5, 25]],
    ['comes nearest, where all are too short', { min: 16, max: 22, step: 1 }, [22]],
    ['comes nearest, where all are too long', { min: 40, max: 44, step: 1 }, [40]],
  ])('every length is tried that %s', (_, lengths, tried) => {
    const found = facts({ saddle: { ringToRing: 45 } });
    expect(lengthsFor({ ...found, shop: { ...defaultShop, lengths } })).toEqual(tried);
  });

  it.each([
    ['taped', { ringToRing: 45 }, /^taped$/],
    ['not taped', {}, /^2 x 22$/],
  ] as const)('the working of a length, %s, comes to the length', (_, saddle, from) => {
    const { lengthNeed: need, ...rest } = facts({ saddle });
    const lines = workingOf({ ...rest, lengthNeed: need });
    expect(lineOf(lines, 'ring to ring').sum).toMatch(from);
    expect(lineOf(lines, 'ring to ring').result).toBe(`${need.ringToRing.value} in`);
    within(done(lineOf(lines, 'L').sum), need.target.value, 0.02);
    expect(lineOf(lines, 'L').result).toBe(`${short(need.target.value)} in`);
    within(done(lineOf(lines, 'L by girth').sum), 33, 1e-9);
    expect(lineOf(lines, 'L by girth').result).toBe('34 in');
  });
});

describe('ring', () => {
  const drops: Readonly<Record<RiggingStyle, number>> = {
    ring: 14,
    'flat-plate': 14.5,
    'in-skirt': 16,
    dropped: 17,
  };

  it.each(Object.entries(drops) as [RiggingStyle, number][])('%s hangs %f in down', (style, drop) => {
    const { ring } = facts({ horse: { heartGirth: 90 }, saddle: { style } });
    expect(ring.station).toMatchObject({ value: 45 - drop * 1.25, sd: 1.5, kind: 'assumed' });
    expect(ring.taped).toBe(false);
  });

  test('a style that is not given is ring rigging', () => {
    const { ring } = facts({ saddle: { style: undefined } });
    expect(ring.station.basis).toContain('not given');
    expect(facts({ saddle: { style: 'in-skirt' } }).ring.station.basis).toBe(
      'usual drop of in-skirt rigging',
    );
    expect(ring.station).toMatchObject({ value: 22, sd: 1.5, kind: 'assumed' });
  });

  test('a tape or a measured drop is never less sure than no measurement', () => {
    expect(facts({ saddle: { ringToRing: 45 } }).ring.station).toMatchObject({
      value: 22.5,
      sd: 0.25,
      kind: 'measured',
    });
    expect(facts({ saddle: { ringDrop: 15 } }).ring.station).toMatchObject({
      value: 21,
      sd: 0.5,
      kind: 'measured',
    });
    const sure = { ...defaultModel, 'drop-sd': 0.1 };
    for (const saddle of [{ ringToRing: 45 }, { ringDrop: 15 }]) {
      expect(factsOf(orderOf({ saddle }), sure).ring.station.sd).toBe(0.1);
    }
  });

  // A 7/8 ring hangs an eighth of the bars behind full: common practice, no source.
  it.each([
    ['full', 0],
    ['7/8', 1.5],
    ['3/4', 3],
    ['5/8', 4.5],
    ['center-fire', 6],
  ] as const)('%s position is set back by its share of the bars', (name, setBack) => {
    const { ring, room } = facts({ saddle: { rigging: rigging(name) } });
    expect(ring.setBack).toMatchObject({ value: setBack, sd: 1, kind: 'told' });
    within(ring.x, room.value - 2 - setBack, 1e-12);
    expect(ring.setBack.basis).toContain('usual bars');
    const bars = facts({ saddle: { rigging: rigging(name), barSpan: 14 } }).ring.setBack;
    within(bars.value, (setBack / 12) * 14, 1e-12);
    expect(bars.sd).toBe(1);
    expect(bars.basis).toContain('measured bars');
  });

  test('a tree does not grow with the horse; the two inches behind the elbow at full do', () => {
    for (const [heartGirth, behind] of [
      [54, 1.5],
      [90, 2.5],
    ] as const) {
      const { ring, room } = facts({ horse: { heartGirth }, saddle: { rigging: rigging('3/4') } });
      expect(ring.setBack.value).toBe(3);
      within(ring.x, room.value - behind - 3, 1e-12);
    }
  });

  test('a measured set-back is used, and never less sure than a name', () => {
    const order = orderOf({ saddle: { rigging: { kind: 'measured', setBack: 2.5 } } });
    expect(factsOf(order, defaultModel).ring.setBack).toMatchObject({
      value: 2.5,
      sd: 0.25,
      kind: 'measured',
      basis: 'measured',
    });
    expect(factsOf(order, { ...defaultModel, 'named-position-sd': 0.1 }).ring.setBack.sd).toBe(0.1);
  });

  test('the working gives the place of the ring', () => {
    const found = facts({ horse: { heartGirth: 80 }, saddle: { rigging: rigging('7/8') } });
    const lines = workingOf(found);
    within(done(lineOf(lines, 'x_ring').sum), found.ring.x, 0.02);
    expect(lineOf(lines, 'x_ring').result).toContain(`${short(found.ring.x)} in `);
    expect(lineOf(lines, 's_ring').result).toContain(`${short(found.ring.station.value)} in `);
  });
});

describe('all facts together', () => {
  test('clearances and the elbow grow with the horse', () => {
    const found = facts({ horse: { heartGirth: 90 } });
    expect(found).toMatchObject({
      k: 1.25,
      floor: 1.25,
      required: 1.5625,
      elbowStation: 8.75,
      photo: undefined,
    });
    within(found.elbowHeight, heightAt(found.barrel.ellipse, 8.75), 1e-12);
  });

  test('every input is told, with its unit, value and spread', () => {
    const found = facts({ horse: { barrel: 'round' } });
    const told = assumptionsOf(found).map(({ input, value, unit, sd, kind }) => [
      input,
      value,
      unit,
      sd,
      kind,
    ]);
    expect(told).toEqual([
      ['heart girth', 72, 'in', 0.5, 'measured'],
      ['elbow room', 4, 'in', 0.5, 'assumed'],
      ['ring set-back', 0, 'in', 1, 'told'],
      ['ring to ring', 44, 'in', 3, 'assumed'],
      ['barrel width over depth', 0.78, 'ratio', 0.07, 'told'],
      ['spring of rib', 0.4, 'in', 0.1, 'told'],
      ['width of a strand', 0.25, 'in', 0.015, 'assumed'],
      ['stretch in new cord', 1, 'in', 0.5, 'assumed'],
    ]);
    expect(asAssumption('x', found.room)).toMatchObject({ input: 'x', unit: 'in', sd: found.room.sd });
  });

  test('working is told in the order in which one thing follows from another', () => {
    const symbols = workingOf(facts({ horse: { bodyLength: 67 } })).map(({ symbol }) => symbol);
    expect(symbols).toEqual([
      'k',
      'weight',
      'a',
      'b',
      'E',
      'x_ring',
      's_ring',
      'ring to ring',
      'L',
      'L by girth',
    ]);
  });

  test('the working of the weight comes to the weight, and there is none without a body length', () => {
    const [line] = weightWorking(76, 67);
    expect(line?.symbol).toBe('weight');
    within(done(line!.sum), 1173, 1);
    expect(line?.result).toBe('about 1173 lb');
    expect(weightWorking(76, undefined)).toEqual([]);
  });

  it.each([
    [1, '1'],
    [1.005, '1'],
    [1.006, '1.01'],
    [-2.5, '-2.5'],
    [1 / 3, '0.33'],
  ])('%f stands in a line of working as %s', (value, text) => {
    expect(short(value)).toBe(text);
  });
});
