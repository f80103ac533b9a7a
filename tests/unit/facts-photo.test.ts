/** How a photo changes the facts; what would make the next surer. */
import { describe, expect, test } from 'vitest';
import { barrelOf, withPhotoDepth } from '../../src/horse/barrel.ts';
import { factsOf, type Facts } from '../../src/horse/facts.ts';
import { surerPhoto } from '../../src/horse/photo-surer.ts';
import { namedSetBackSd, stationSeen } from '../../src/horse/ring.ts';
import { shareOf, weighed } from '../../src/horse/weigh.ts';
import { stationAtHeight, solveEllipse } from '../../src/math/ellipse.ts';
import { defaultModel as model } from '../../src/numbers/numbers.ts';
import { orderOf, rigging } from '../support/orders.ts';
import { demoPhoto, photographed } from '../support/photo-scenes.ts';
import { within, withinRelative } from '../support/within.ts';

const usual = { value: 4, sd: 0.5, kind: 'assumed', basis: 'usual' } as const;

test('without the optional marks room and ring are still read, the depth is not', () => {
  const bare = {
    ...demoPhoto,
    plumb: undefined,
    spine: undefined,
    underline: undefined,
    fork: undefined,
    cantle: undefined,
  };
  const marked = { ...bare, spine: demoPhoto.spine, underline: demoPhoto.groove };
  const [without, withDepth] = [bare, marked].map((photo) => factsOf(photographed({ photo }), model));
  expect(without!.photo!.seen.depth).toBeUndefined();
  expect(withDepth!.photo!.seen.depth).toBeDefined();
  for (const name of ['room', 'ringBehindElbow', 'ringHeight'] as const)
    within(without!.photo!.seen[name].value, withDepth!.photo!.seen[name].value, 1e-9);
  expect(without!.room.kind).toBe('photo');
});

describe('a ring seen on a photo', () => {
  /** Inside each test: work done at collection is no test. */
  const shownBy = (order = photographed()) => {
    const facts = factsOf(order, model);
    return { facts, seen: facts.photo!.seen };
  };

  test('its height is a station on the barrel, as unsure as the height and the shape make it', () => {
    const { facts } = shownBy();
    const { ratio } = facts.barrel;
    const on = (height: number, value = ratio.value): number =>
      stationAtHeight(solveEllipse(74, value), height);
    const barrel = { ratio, ellipse: solveEllipse(74, ratio.value) };
    const found = stationSeen({ value: 20, sd: 0.5 }, barrel);
    within(found.value, on(20), 1e-9);
    const tiny = 1e-4;
    const byHeight = ((on(20 + tiny) - on(20 - tiny)) / (2 * tiny)) * 0.5;
    const byRatio = ((on(20, ratio.value + tiny) - on(20, ratio.value - tiny)) / (2 * tiny)) * ratio.sd;
    withinRelative(found.sd, Math.sqrt(byHeight ** 2 + byRatio ** 2), 0.02);
  });

  test('it is weighed with the usual drop, and moves with the girth as both do', () => {
    const { facts, seen } = shownBy();
    const shown = stationSeen(seen.ringHeight, facts.barrel);
    const drop = { ...usual, value: 22, sd: 1.5 };
    const { station, stationPerGirth } = facts.ring;
    within(station.value, weighed(drop, shown, '').value, 1e-9);
    within(station.sd, weighed(drop, shown, '').sd, 1e-9);
    const on = (girth: number): number =>
      stationAtHeight(solveEllipse(girth, facts.barrel.ratio.value), seen.ringHeight.value);
    const share = shareOf(drop, shown);
    const grown = (on(72.01) - on(71.99)) / 0.02;
    withinRelative(stationPerGirth, (1 - share) * (0.5 - 14 / 72) + share * grown, 1e-4);
  });

  test('where it hangs is weighed with what the name of the position means', () => {
    const { facts, seen } = shownBy();
    const { setBack, x } = facts.ring;
    const named = { ...usual, value: seen.barSpan!.value / 8, sd: Math.hypot(1, seen.barSpan!.sd / 8) };
    const back = { value: seen.ringBehindElbow.value - 2, sd: seen.ringBehindElbow.sd };
    within(setBack.value, weighed(named, back, '').value, 1e-12);
    within(setBack.sd, weighed(named, back, '').sd, 1e-12);
    expect(setBack.kind).toBe('photo');
    expect(setBack.basis).toContain('bars measured by photo');
    within(x, facts.room.value - 2 - setBack.value, 1e-12);
  });

  test('distances behind the elbow grow with the horse; unseen bars do not', () => {
    const photo = { ...demoPhoto, fork: undefined, cantle: undefined };
    const { ring, photo: reading } = factsOf(photographed({ photo, horse: { heartGirth: 80 } }), model);
    const k = 80 / 72;
    const named = { ...usual, value: 12 / 8, sd: 1 };
    const { value, sd } = reading!.seen.ringBehindElbow;
    const back = { value: value - 2 * k, sd };
    within(ring.setBack.value, weighed(named, back, '').value, 1e-12);
    const share = shareOf(named, back);
    within(ring.setBackPerGirth, -share * (2 / 72), 1e-12);
  });

  test('a place that contradicts the name is told with the name', () => {
    const { ring } = factsOf(photographed({ saddle: { rigging: rigging('center-fire') } }), {
      ...model,
      'named-position-sd': 0.25,
    });
    expect(ring.setBack.basis).toMatch(
      /disagrees with .*center-fire position|center-fire position.* disagrees/,
    );
    const tall = factsOf(photographed(), { ...model, 'elbow-room': 9 });
    expect(tall.room.basis).toContain('disagrees with the usual hand');
  });

  test('what was measured on the saddle stands', () => {
    const taped = factsOf(
      photographed({ saddle: { rigging: { kind: 'measured', setBack: 1 }, ringToRing: 44 } }),
      model,
    ).ring;
    expect(taped.setBack).toMatchObject({ value: 1, sd: 0.25, kind: 'measured' });
    expect(taped.station).toMatchObject({ value: 22, sd: 0.25, kind: 'measured' });
    expect([taped.setBackPerGirth, taped.stationPerGirth]).toEqual([0, 0]);
  });

  test('a length from it is worked out, not measured', () => {
    const { facts } = shownBy();
    const { ringToRing, measured } = facts.lengthNeed;
    expect(measured).toBe(false);
    expect(ringToRing).toMatchObject({
      value: 2 * facts.ring.station.value,
      sd: 2 * facts.ring.station.sd,
      kind: 'computed',
    });
  });

  test('bars that were taped are surer than bars that were seen', () => {
    const { seen } = shownBy();
    const shown = { ...seen.barSpan!, sd: 3 };
    within(
      namedSetBackSd({ fraction: 0.5, barSpan: undefined, seen: shown }, model),
      Math.hypot(1, 1.5),
      1e-12,
    );
    expect(namedSetBackSd({ fraction: 0.5, barSpan: 12, seen: shown }, model)).toBe(1);
    expect(namedSetBackSd({ fraction: 0.5, barSpan: undefined, seen: undefined }, model)).toBe(1);
  });

  test('room is weighed from both, or one is used where they contradict each other', () => {
    const { facts, seen } = shownBy();
    expect(facts.room.weighed).toBe(true);
    const tall = (room: number): Facts => factsOf(photographed(), { ...model, 'elbow-room': room });
    for (const room of [1, 9]) {
      expect(tall(room).room).toMatchObject({ weighed: false });
      within(tall(room).room.value, Math.min(room, seen.room.value), 0.05);
    }
    expect(tall(1).room.kind).toBe('assumed');
    expect(tall(9).room.kind).toBe('photo');
    within(tall(1).room.perGirth, 1 / 72, 1e-12);
    expect(tall(9).room.perGirth).toBe(0);
  });
});

describe('the reading of a photo', () => {
  const reading = (change: Parameters<typeof orderOf>[0], numbers = model) =>
    factsOf(photographed(change), numbers).photo!;

  test('begins with the barrel and spread known without it', () => {
    const { guess } = reading({ horse: { heartGirth: 90, barrel: 'round' } });
    const plain = solveEllipse(90, 0.78);
    expect(guess.ellipse).toEqual(plain);
    expect(guess.elbowStation).toBe(8.75);
    // Ratio and girth with their own spreads: JCGM 100:2008, 5.1.2.
    const byRatio = solveEllipse(90, 0.78 + 0.07).halfWidth - plain.halfWidth;
    const byGirth = solveEllipse(90.5, 0.78).halfWidth - plain.halfWidth;
    withinRelative(guess.halfWidthSd, Math.hypot(byRatio, byGirth), 1e-6);
    const unsure = reading({ horse: { heartGirth: undefined, height: 70, barrel: 'round' } }).guess;
    expect(unsure.halfWidthSd).toBeGreaterThan(1.1 * guess.halfWidthSd);
  });

  test('is cached while nothing it depends on changes', () => {
    const first = reading({});
    expect(reading({ horse: { elbowRoom: 5 } })).toBe(first);
    expect(reading({ horse: { heartGirth: 80 } }).seen).not.toEqual(first.seen);
    expect(reading({}).seen).toEqual(first.seen);
    expect(reading({}, { ...model, 'photo-click-sd': 0.01 }).seen.room.sd).toBeGreaterThan(
      first.seen.room.sd,
    );
    expect(reading({}).seen).toEqual(first.seen);
    expect(reading({}, { ...model, 'elbow-station': 5 }).guess.elbowStation).toBe(5);
    // The photo does not use this number.
    const again = reading({});
    expect(reading({}, { ...model, stretch: 1.5 })).toBe(again);
  });

  test('tells the depth of the barrel', () => {
    const { barrel, photo, girth } = factsOf(photographed(), model);
    const plain = barrelOf({ trouble: [] }, 72, model);
    expect(barrel).toEqual(withPhotoDepth(plain, { girth, depth: photo!.seen.depth! }, model));
    expect(barrel.ratio.kind).toBe('photo');
  });
});

describe('what would make the next photo surer', () => {
  const open = (change: Partial<typeof demoPhoto>) =>
    surerPhoto(factsOf(photographed({ photo: { ...demoPhoto, ...change } }), model));
  const whats = (ways: readonly { what: string }[]): string[] => ways.map(({ what }) => what);

  test('nothing without a photo', () => {
    expect(surerPhoto(factsOf(orderOf(), model))).toEqual([]);
  });

  test('a plumb line and a paced distance only where they are missing', () => {
    const all = whats(open({ plumb: undefined, cameraDistance: undefined }));
    expect(all).toHaveLength(5);
    const rest = whats(open({}));
    expect(rest).toHaveLength(3);
    expect(all.filter((what) => !rest.includes(what))).toEqual([
      'a plumb line',
      'a camera distance that was paced',
    ]);
  });

  test('each makes something surer and nothing less sure', () => {
    const photo = { ...demoPhoto, plumb: undefined, cameraDistance: undefined };
    const facts = factsOf(photographed({ photo }), model);
    for (const { what, sd } of surerPhoto(facts)) {
      const names = Object.keys(sd) as (keyof typeof sd)[];
      expect(names.length, what).toBeGreaterThan(4);
      const gains = names.map((name) => facts.photo!.seen[name]!.sd - sd[name]!);
      expect(Math.max(...gains), what).toBeGreaterThan(0.001);
      expect(Math.min(...gains), what).toBeGreaterThan(-0.01);
    }
  });

  test('each is the reading with that one doubt made smaller', () => {
    const photo = { ...demoPhoto, plumb: undefined, cameraDistance: undefined };
    const read = (change: object, paced = {}) =>
      factsOf(photographed({ photo: { ...photo, ...paced } }), { ...model, ...change }).photo!.seen;
    const readings = [
      read({ 'photo-roll-sd': model['photo-plumb-sd'] }),
      read({}, { cameraDistance: model['photo-distance'] }),
      read({ 'photo-reference-depth-sd': 0.25 }),
      read({ 'photo-yaw-sd': model['photo-yaw-sd'] / 2 }),
      read({ 'photo-click-sd': model['photo-click-sd'] / 2 }),
    ];
    const ways = open({ plumb: undefined, cameraDistance: undefined });
    ways.forEach(({ what, sd }, i) => {
      for (const name of ['room', 'ringHeight', 'depth', 'barSpan'] as const) {
        withinRelative(sd[name]!, readings[i]![name]!.sd, 1e-9);
        expect(sd[name], what).toBeGreaterThan(0);
      }
    });
  });

  test('what the photo does not show has no spread', () => {
    const [way] = open({ fork: undefined, cantle: undefined });
    expect(Object.keys(way!.sd)).not.toContain('barSpan');
  });
});
