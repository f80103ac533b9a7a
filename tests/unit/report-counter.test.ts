/** What a clerk needs to read on the screen of `size`. */
import { describe, expect, test } from 'vitest';
import { oddsText } from '../../src/words/counter-words.ts';
import { defaultShop } from '../../src/cinch/default-shop.ts';
import { oneLine } from '../support/screens.ts';
import { cases, orderWith, screen, sized } from './report-cases.ts';

describe('size', () => {
  test('buckles that must be ordered are told with what to tie', () => {
    const buckles = defaultShop.buckles.map((buckle) => ({ ...buckle, onHand: 3 }));
    const told = (quantity: number): string =>
      oneLine(screen(sized(orderWith({ quantity }), { ...defaultShop, buckles })));
    expect(told(1)).not.toContain('order the buckles');
    expect(told(2)).toContain('(order the buckles first)');
  });

  test.each([
    [{ style: 'straight', strands: 15 }, /That is what was asked for\./],
    [{ style: 'straight', strands: 13 }, /\b13 strands, as asked, passes too: /],
    [{ style: 'straight', strands: 29 }, /Not 29 strands, as asked: (?:too close|reaches)/],
    [{ strands: 17, buckle: 'gold' }, /Not 17 strands, gold buckle, as asked: .*no buckle called gold/],
  ] as const)('what was asked for is answered: %j', (wants, answer) => {
    const result = sized(orderWith({ wants, saddle: { ringToRing: 44 } }));
    expect(result.advice.first?.candidate).toMatchObject({ style: 'straight', strands: 15 });
    expect(oneLine(screen(result))).toMatch(answer);
  });

  test('another is called surer only where the chance beside it says so too', () => {
    for (const order of Object.values(cases)) {
      const result = sized(order);
      const { first } = result.advice;
      if (first === undefined) continue;
      const least = Math.round(100 * first.candidate.clearance.chance);
      const rows = screen(result, { top: 40 }).split('\n');
      for (const row of rows.filter((line) => /^ {2}.*%.*\bSurer/.test(line)))
        expect(Number(/(\d+)%/.exec(row)![1]), row).toBeGreaterThan(least);
    }
  });

  test('where nothing passes by a taped room, that is taped again first; where only the length fails, it is named', () => {
    expect(oneLine(screen(sized(cases.nothing)))).toContain('Tape the elbow room again first');
    const long = sized(orderWith({ horse: { elbowRoom: 4 }, saddle: { ringToRing: 60 } }));
    expect(long.advice.specs).toEqual([]);
    expect(oneLine(screen(long))).toMatch(/need a cinch of about \d.* in; we tie \d+ in to \d+ in\./);
  });

  test('the next in rank is compared with as in "first because"', () => {
    const { advice } = sized(cases.full);
    const [first, second] = advice.specs;
    expect(advice.firstBefore(second!).words).toEqual(first!.becauseOf!.words);
  });
});

// Words never promise more than the number.
test.each([
  [0.999, '99 out of 100 (>99%)'],
  [0.949, '19 out of 20 (95%)'],
  [0.944, '9 out of 10 (94%)'],
  [0.81, '4 out of 5 (81%)'],
  [0.79, '3 out of 4 (79%)'],
  [0.66, '6 out of 10 (66%)'],
  [0.49, 'less than even (49%)'],
])('odds of %d in words', (chance, words) => {
  expect(oddsText(chance)).toBe(words);
});
