/** What an advice says is true. */
import { describe, expect, test } from 'vitest';
import { checkCinch } from '../../src/advice/check.ts';
import type { Clearance } from '../../src/cinch/candidate.ts';
import { sizeOrder } from '../../src/index.ts';
import { reasonsText } from '../../src/words/wish-words.ts';
import { situation } from '../../src/words/about-order.ts';
import { refusedTexts } from '../../src/words/about-rest.ts';
import { nearestText } from '../../src/words/about-specs.ts';
import { phraseText, spreadNumber } from '../../src/units/text.ts';
import { defaultShop } from '../../src/cinch/default-shop.ts';
import { orderOf, rigging } from '../support/orders.ts';

const onThreeQuarter = { rigging: rigging('3/4'), ringToRing: 44 };

describe('ring to ring from a measured drop', () => {
  const advice = sizeOrder(orderOf({ saddle: { ringDrop: 16 } }), defaultShop);

  test('is computed, and the length stays provisional', () => {
    const entry = advice.assumptions.find(({ input }) => input === 'ring to ring');
    expect(entry).toMatchObject({ kind: 'computed', value: 40 });
    expect(advice.facts.lengthNeed.measured).toBe(false);
  });
});

describe('lengths', () => {
  test('the shop does not tie are not offered', () => {
    const small = orderOf({ horse: { heartGirth: 49 }, saddle: { ringToRing: 30 } });
    const { specs } = sizeOrder(small, defaultShop);
    const offered = specs.flatMap(({ evenLengths }) => evenLengths.map(({ length }) => length));
    expect(offered.length).toBeGreaterThan(0);
    expect(Math.min(...offered)).toBeGreaterThanOrEqual(defaultShop.lengths.min);
  });

  test('of 76 cm count as 30 in', () => {
    const advice = sizeOrder(orderOf({ saddle: onThreeQuarter }), defaultShop);
    const asked = { style: 'straight', strands: 17, length: 76 / 2.54 } as const;
    const { judged } = checkCinch(asked, 'wants', advice);
    expect(judged?.judgementOf('usual-length')).toBe('good');
  });

  test('tell to check the tape only where one was laid', () => {
    const apart = (saddle: object): string => {
      const asked = { style: 'straight', strands: 17, length: 26 } as const;
      const { judged } = checkCinch(asked, 'wants', sizeOrder(orderOf({ saddle }), defaultShop));
      const found = judged?.findings.find(({ rule }) => rule === 'length-agreement');
      return found === undefined ? '' : phraseText(found.reason, 'in');
    };
    expect(apart(onThreeQuarter)).toMatch(/check the tape$/);
    expect(apart({})).toMatch(/tape ring to ring$/);
  });
});

describe('words', () => {
  test('short cord is the reason told, not a buckle another could replace', () => {
    const order = orderOf({ quantity: 3, colors: { body: ['buckskin'] }, saddle: onThreeQuarter });
    const texts = refusedTexts(sizeOrder(order, defaultShop), 'in').join('\n');
    expect(texts).toMatch(/strands: (?:\d+ )?needs \d+ ft of buckskin cord; 160 ft on hand/);
    expect(texts).not.toContain('buckles');
  });

  test('a cinch over the elbow line has no distance below zero', () => {
    const at = { inches: -0.19, sd: 0.4, station: 7, where: 'cinch' } as Clearance;
    expect(nearestText(at, 'in')).toContain(': 0.19 in over it, give or take 0.4.');
  });

  test.each([
    [0, 'Ring at full position (measured);'],
    [1.5, 'Ring 1 1/2 in back of full position;'],
    [-0.5, 'Ring 1/2 in ahead of full position;'],
  ])('a set-back of %s in', (setBack, words) => {
    const order = orderOf({ saddle: { rigging: { kind: 'measured', setBack }, style: undefined } });
    expect(situation(sizeOrder(order, defaultShop).facts, 'in')).toContain(words);
  });
});

describe('a cinch refused for two reasons', () => {
  test('has them told in two sentences, each with its own margin', () => {
    const advice = sizeOrder(orderOf({ saddle: { rigging: rigging('7/8'), ringToRing: 46 } }), defaultShop);
    const checked = checkCinch({ style: 'straight', strands: 17, length: 24 }, 'wants', advice);
    const refused = checked.judged?.findings.filter(({ judgement }) => judgement === 'refuse') ?? [];
    expect(refused.map(({ rule }) => rule)).toEqual(['buckle-height', 'latigo-run']);
    const told = reasonsText(checked, 'in');
    for (const { reason } of refused) expect(told).toContain(phraseText(reason, 'in').replace(': ', ', '));
    const run = checked.judged?.findings.find(({ rule }) => rule === 'latigo-run');
    expect(run?.margin).toBe(-0.5);
  });
});

test('a spread is never told as nothing', () => {
  expect([spreadNumber(0.015, 'in'), spreadNumber(0.015, 'cm')]).toEqual(['0.015', '0.04']);
});
