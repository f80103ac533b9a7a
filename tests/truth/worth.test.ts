/** Gains and means: by hand, and the error of a mean against that of many. What a question would find, and what is believed then. */
import { describe, expect, test } from 'vitest';
import type { Advice } from '../../src/advice/advice.ts';
import { askAbout, toAsk, type AskResult, type Worth } from '../../src/advice/ask.ts';
import { oddsOf, oddsTold } from '../../src/advice/odds.ts';
import { barrelAnswers, questions } from '../../src/advice/questions.ts';
import { askedOf, drawOf } from '../../src/advice/unknowns.ts';
import { defaultShop } from '../../src/cinch/default-shop.ts';
import { factsOf, type Facts } from '../../src/horse/facts.ts';
import { sizeOrder } from '../../src/index.ts';
import { fullMean, gainOver, pairedMean } from '../../src/math/worth.ts';
import { ellipsePerimeter } from '../../src/math/ellipse.ts';
import { seededRandom } from '../../src/math/random.ts';
import { defaultModel } from '../../src/numbers/numbers.ts';
import type { Order } from '../../src/order/types.ts';
import { orderOf, rigging } from '../support/orders.ts';
import { demoPhoto } from '../support/photo-scenes.ts';
import { within } from '../support/within.ts';

test('the gain over a choice is how much better the best is', () => {
  expect(gainOver([1, 3, 2], 0)).toBe(2);
  expect(gainOver([1, 3, 2], 1)).toBe(0);
});

test('the error of a stratified mean is that of many repeated means', () => {
  const strata = 8;
  const means: number[] = [];
  const errors: number[] = [];
  for (let seed = 1; seed <= 4000; seed++) {
    const random = seededRandom(seed);
    const values = Array.from({ length: 2 * strata }, (_, i) => {
      const u = (Math.floor(i / 2) + random.uniform()) / strata;
      return u * u + 0.3 * random.normal();
    });
    const { mean, error } = pairedMean(values);
    means.push(mean);
    errors.push(error ** 2);
  }
  const average = (values: readonly number[]): number => values.reduce((a, b) => a + b, 0) / values.length;
  const center = average(means);
  within(center, 1 / 3, 0.005);
  const true2 = average(means.map((mean) => (mean - center) ** 2));
  within(average(errors) / true2, 1, 0.08);
});

test('when every answer was tried, the mean is weighed and has no error', () => {
  expect(fullMean([0.25, 0.75], [4, 8])).toEqual({ mean: 7, error: 0 });
});

/** Where in the facts the reading of each unknown shows: two questions of one length each, four lengths of a photo. */
const shown: Readonly<Record<string, readonly ((facts: Facts) => number)[]>> = {
  'ring to ring': [({ lengthNeed }) => lengthNeed.ringToRing.value],
  'elbow room': [({ room }) => room.value],
  'ring set-back': [({ ring }) => ring.setBack.value],
  'heart girth': [({ girth }) => girth.value],
  'barrel shape': [],
  'side photo': [
    ({ room }) => room.value,
    ({ ring }) => ring.setBack.value,
    ({ girth, ring }) => girth.value / 2 - ring.station.value,
  ],
};

describe.each([
  ['of the average horse', orderOf({ saddle: { rigging: rigging('7/8') } })],
  ['of one known by its height', orderOf({ horse: { heartGirth: undefined, height: 66 } })],
])('a question %s', (_, order) => {
  const facts = factsOf(order, defaultModel);

  test('reads, where the tape falls as expected, what was expected, and 2 spreads off what is 2 spreads off', () => {
    for (const question of questions) {
      const asked = askedOf(question.unknowns(facts), { order, model: defaultModel });
      const [none, high] = [0, 2].map((z) =>
        factsOf(
          drawOf(
            asked,
            asked.unknowns.map(() => z),
          ).read,
          asked.readModel,
        ),
      );
      shown[question.name]!.forEach((of, i) => {
        const { sd, reading, value } = asked.unknowns[i]!;
        within(of(none!), of(facts), 1e-9);
        within(value, of(facts), 1e-9);
        within(of(high!), of(facts) + 2 * Math.hypot(sd, reading), 1e-9);
      });
    }
  });

  // A normal value with a normal reading: Gelman and others, Bayesian Data Analysis, 3rd edition, 2.5: precisions add up.
  test('leaves a belief whose precision is the sum of both, and whose mean is weighed by them', () => {
    for (const question of questions) {
      const asked = askedOf(question.unknowns(facts), { order, model: defaultModel });
      const { believed } = drawOf(
        asked,
        asked.unknowns.map(() => -0.5),
      );
      const then = factsOf(believed, asked.believedModel);
      shown[question.name]!.forEach((of, i) => {
        const { sd, reading, value, spreadKey } = asked.unknowns[i]!;
        const found = value - 0.5 * Math.hypot(sd, reading);
        within(of(then), (value / sd ** 2 + found / reading ** 2) / (1 / sd ** 2 + 1 / reading ** 2), 1e-9);
        expect(Object.keys(defaultModel)).toContain(spreadKey);
        within(asked.believedModel[spreadKey!] ** -2, sd ** -2 + reading ** -2, 1e-9);
        expect(asked.readModel[spreadKey!]).toBe(reading);
      });
    }
  });
});

test.each([
  ['nothing', {}, {}, 4],
  ['the elbow room', { elbowRoom: 4 }, {}, 3],
  ['the set-back', {}, { rigging: { kind: 'measured', setBack: 2 } }, 3],
  ['the rings', {}, { ringToRing: 44 }, 3],
  ['the barrel', { barrel: 'round' }, {}, 3],
] as const)('a photo shows what is open where %s is known', (...[, horse, saddle, lengths]) => {
  const photo = questions.find(({ name }) => name === 'side photo')!;
  expect(photo.unknowns(factsOf(orderOf({ horse, saddle }), defaultModel))).toHaveLength(lengths);
});

test('a photo reads the depth of the barrel, of which girth and ratio are known with their spreads', () => {
  const order = orderOf({ horse: { heartGirth: undefined, height: 66 } });
  const { girth, barrel, ...facts } = factsOf(order, defaultModel);
  const photo = questions.find(({ name }) => name === 'side photo')!;
  const { value, sd, least, enter } = photo.unknowns({ girth, barrel, ...facts }).at(-1)!;
  // An ellipse of depth 1 has so much girth; others are the same, larger.
  const depthAt = (ratio: number): number => girth.value / ellipsePerimeter(ratio / 2, 1 / 2);
  within(value, depthAt(0.7), 1e-6);
  const byRatio = (depthAt(0.63) - depthAt(0.77)) / 2;
  within(sd, Math.hypot(byRatio, (value * girth.sd) / girth.value), 1e-6);
  within(least, value / 2, 1e-9);
  const read = (depth: number) => factsOf(enter(order, depth), defaultModel).barrel.ratio;
  within(read(value).value, 0.7, 1e-3);
  // The deeper, the narrower for its girth.
  expect(read(value + 1).value).toBeLessThan(0.69);
  expect(read(value - 1).value).toBeGreaterThan(0.71);
});

test('what is known exactly is read and believed as it is', () => {
  const order = orderOf();
  const exact = { value: 4, sd: 0, reading: 0, least: 0, spreadKey: 'elbow-room-taped-sd' } as const;
  const asked = askedOf([{ ...exact, enter: (_, elbowRoom) => orderOf({ horse: { elbowRoom } }) }], {
    order,
    model: defaultModel,
  });
  const { read, believed } = drawOf(asked, [1]);
  expect([read.horse.elbowRoom, believed.horse.elbowRoom]).toEqual([4, 4]);
  expect(asked.believedModel['elbow-room-taped-sd']).toBe(0);
});

// Half-way between two ratios, 0.04 off the average, at a spread of 0.07: 0.5714 spreads; the bell curve has 0.2839 beyond them.
test('a barrel is of the word whose ratio it comes nearest to', () => {
  const chances = barrelAnswers(factsOf(orderOf(), defaultModel));
  expect(chances.map(({ word }) => word)).toEqual(['slab-sided', 'average', 'round']);
  for (const [i, share] of [0.2839, 0.4322, 0.2839].entries()) within(chances[i]!.chance, share, 2e-4);
});

/** Facts of rings 44 in apart, each known to `sd`, and cord that gives this much. */
function ringsKnown(sd: number, stretch: number, elbowRoom?: number): Facts {
  const facts = factsOf(orderOf({ horse: { elbowRoom }, saddle: { rigging: rigging('3/4') } }), defaultModel);
  const ring = { ...facts.ring, station: { ...facts.ring.station, sd }, stationPerGirth: 0 };
  return { ...facts, ring, lengthNeed: { ...facts.lengthNeed, stretch } };
}

describe('the chance that a cinch clears and reaches', () => {
  const first = (length: number, elbowRoom?: number) => {
    const { shape, buckle } = sizeOrder(orderOf({ horse: { elbowRoom } }), defaultShop).first!.candidate;
    return { shape, buckle, length };
  };

  // Shares of the bell curve within 1 and 2 spreads, and on one side: any table. Runs of 4 to 8 in are accepted.
  test.each([
    ['a run of 6 in with 1 spread to either end', ringsKnown(2, 0), 32, 0.6827],
    ['with 2 spreads', ringsKnown(1, 0), 32, 0.9545],
    ['with 2 spreads, by the quarter of its give', ringsKnown(0, 4), 28, 0.9545],
    ['a run at the low end', ringsKnown(0.25, 0), 36, 0.5],
    ['at the high end', ringsKnown(0.25, 0), 28, 0.5],
    ['at the low end, all known', ringsKnown(0, 0), 36, 1],
    ['at the high end, all known', ringsKnown(0, 0), 28, 1],
    ['below, all known', ringsKnown(0, 0), 36.1, 0],
    ['above, all known', ringsKnown(0, 0), 27.9, 0],
  ])('%s', (...[, facts, length, reaches]) => {
    const odds = oddsOf(first(length), facts);
    within(odds.reaches, reaches, 5e-5);
    expect(odds.both).toBe(odds.clears * odds.reaches);
  });

  test('is told no surer than the model is good for', () => {
    const facts = ringsKnown(2, 0, 7);
    const tied = first(32, 7);
    const most = defaultModel['chance-most'];
    expect(oddsOf(tied, facts).clears).toBeGreaterThan(most);
    expect(oddsTold(tied, facts).clears).toBe(most);
    within(oddsTold(tied, facts).both, 0.6827 * most, 5e-5);
    const unsure = factsOf(orderOf(), defaultModel);
    expect(oddsTold(tied, unsure).clears).toBe(oddsOf(tied, unsure).clears);
    expect(oddsOf(tied, unsure).clears).toBeLessThan(most);
  });
});

describe('which questions are asked', () => {
  const worth = (name: Worth['name'], worthAsking = true) => ({ name, worthAsking }) as Worth;
  const asked = (...worths: Worth[]) => toAsk({ worths } as unknown as AskResult);

  test('a photo instead of what it shows; beside others it is one more; what is not worth it is not', () => {
    const [room, girth, photo] = [worth('elbow room'), worth('heart girth'), worth('side photo')];
    expect(asked(photo, room, girth)).toEqual({ questions: [room, girth], photo });
    expect(asked(girth, photo)).toEqual({ questions: [girth, photo], photo: undefined });
    expect(asked(room, girth)).toEqual({ questions: [room, girth], photo: undefined });
    expect(asked(worth('elbow room', false), girth, photo)).toEqual({
      questions: [girth, photo],
      photo: undefined,
    });
  });

  test('those before cutting first, then by what they gain in whole percent, then by what they change', () => {
    const slips = orderOf({ horse: { trouble: ['saddle-rolls'] }, saddle: { rigging: rigging('7/8') } });
    for (const order of [orderOf(), slips, orderOf({ photo: demoPhoto })]) {
      const { worths, now } = askAbout(sizeOrder(order, defaultShop), { strata: 2, seed: 4 });
      const percent = (mean: number): number => 100 - Math.round(100 * mean);
      const keys = worths.map(({ name, gain, changes }) =>
        [name === 'ring to ring' ? 0 : 1, percent(gain.mean), percent(changes.mean)]
          .map((key) => String(key).padStart(3, '0'))
          .join(' '),
      );
      expect(keys).toEqual(keys.toSorted());
      expect(now?.both).toBe(now!.clears * now!.reaches);
      for (const { worthAsking, beforeCutting, gain, changes } of worths)
        expect(worthAsking).toBe(beforeCutting || gain.mean >= 0.01 || changes.mean >= 0.1);
      expect(worths.some(({ name }) => name === 'side photo')).toBe(order.photo === undefined);
    }
  });

  test('the shape of the barrel by all its words, each as often as it is the one', () => {
    const advice = sizeOrder(orderOf({ saddle: { rigging: rigging('3/4') } }), defaultShop);
    const first = ({ specs }: Pick<Advice, 'specs'>): string => {
      const { style, strands, length, buckle } = specs[0]!.candidate;
      return `${style} ${strands} ${length} ${buckle.id}`;
    };
    const changed = barrelAnswers(advice.facts).filter(({ word }) => {
      const order = orderOf({ horse: { barrel: word }, saddle: { rigging: rigging('3/4') } });
      return first(sizeOrder(order, defaultShop)) !== first(advice);
    });
    expect(changed).toHaveLength(1);
    const shape = askAbout(advice, { strata: 2, seed: 1 }).worths.find(
      ({ name }) => name === 'barrel shape',
    )!;
    within(shape.changes.mean, changed[0]!.chance, 1e-12);
    expect(shape.changes.error).toBe(0);
  });

  test('a wish is a verdict that may change, too, though nothing else is tied', () => {
    const rig = { rigging: rigging('7/8'), ringToRing: 44 } as const;
    const ask = (wants: Order['wants']) =>
      askAbout(sizeOrder(orderOf({ saddle: rig, wants }), defaultShop), { strata: 8, seed: 1 }).worths;
    const room = (worths: readonly Worth[]) => worths.find(({ name }) => name === 'elbow room')!;
    const [bare, wished] = [room(ask(undefined)), room(ask({ style: 'straight', strands: 21 }))];
    expect(wished.changes.mean).toBeGreaterThan(bare.changes.mean);
    expect(wished.gain).toEqual(bare.gain);
  });

  test('where nothing passes, that something may is worth asking, and what that would be is told', () => {
    const advice = sizeOrder(orderOf({ horse: { elbowRoom: 2.5 } }), defaultShop);
    expect(advice.first).toBeUndefined();
    const { now, worths } = askAbout(advice, { strata: 8, seed: 1 });
    const ring = worths.find(({ name }) => name === 'ring set-back')!;
    expect(now).toBeUndefined();
    expect(ring.changes.mean).toBeGreaterThan(0.05);
    expect(ring.instead?.chance).toBeGreaterThan(0.05);
    expect(ring.wider.mean).toBe(0);
  });
});
