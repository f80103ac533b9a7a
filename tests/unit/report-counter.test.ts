/** What a clerk who knows only the README needs to be told on the screen of `size`. */
import { describe, expect, test } from 'vitest';
import { sizeMarkdown } from '../support/screens.ts';
import { sizeScreen } from '../support/screens.ts';
import type { ReportOptions, SizeResult } from '../../src/report/types.ts';
import { tiedText } from '../../src/report/words.ts';
import { defaultShop } from '../../src/stock/default-shop.ts';
import { formatLength } from '../../src/units/print.ts';
import { cases, orderWith, plainOptions, sized } from './report-cases.ts';

const screen = (result: SizeResult, change: Partial<ReportOptions> = {}): string =>
  sizeScreen([result], { ...plainOptions, ...change });

describe('at the counter', () => {
  test('a roper tells all its widths that a reason may speak of', async () => {
    const { advice } = sized(cases.full);
    const text = await screen(sized(cases.full), { top: 40 });
    expect(text).toMatch(/wide, pinched to \d.* in, (\d.* in behind the elbow, )?\d\d in\s+long/);
    expect(sizeMarkdown([sized(cases.full)], { ...plainOptions, top: 40 })).toMatch(/ in, pinched to \d/);
    for (const { candidate } of advice.specs) {
      const told = tiedText(candidate, advice.facts.order, 'in');
      expect(told).toContain(`${formatLength(candidate.elbowWidth)} `.trim());
      expect(told.includes('pinched')).toBe(candidate.style !== 'straight');
    }
  });

  test('buckles that must be ordered are told with the spec, even where cord is the longer tale', async () => {
    const buckles = defaultShop.buckles.map((buckle) => ({ ...buckle, onHand: 3 }));
    const told = async (quantity: number, colors?: { body: string[] }): Promise<string> => {
      const result = sized(orderWith({ quantity, colors }), { ...defaultShop, buckles });
      expect(sizeMarkdown([result], plainOptions).includes('(must be ordered)')).toBe(quantity > 1);
      return (await screen(result)).replace(/\s+/g, ' ');
    };
    expect(await told(1)).not.toContain('must be ordered');
    expect(await told(2)).toMatch(/ buckle, \w+ layer; the buckles must be ordered\./);
    expect(await told(2, { body: ['sorrel'] })).toMatch(/ buckle, \w+ layer; the buckles must be ordered\./);
  });

  test('a rank is claimed only for the very same cinch', async () => {
    const wish = { style: 'straight', strands: 13, length: 32, buckle: 'plain 2 1/2' } as const;
    const taped = { saddle: { ringToRing: 44 } };
    const same = await screen(sized(orderWith({ ...taped, wants: wish })), { top: 9 });
    expect(same).toMatch(/Passes, (much like )?no\. \d here:/);
    const other = await screen(sized(orderWith({ ...taped, wants: { ...wish, length: 30 } })));
    expect(other.replace(/\s+/g, ' ')).toMatch(/Passes, much like no\. \d here:/);
  });

  test('a wish names the rule of thumb of lengths only where somebody taped ring to ring', async () => {
    const wants = { style: 'straight', strands: 15, length: 28 } as const;
    const told = async (saddle: object): Promise<string> =>
      /The customer asked for:.*?(?= To tie)/.exec(
        (await screen(sized(orderWith({ wants, saddle })))).replace(/\s+/g, ' '),
      )?.[0] ?? '';
    expect(await told({})).toContain('nothing refuses it');
    expect(await told({})).not.toContain('length agreement');
    expect(await told({ ringToRing: 42 })).toContain('length agreement');
  });

  test('what is ridden in now is named beside its trouble', async () => {
    expect((await screen(sized(cases.gall))).replace(/\s+/g, ' ')).toContain(
      'Ridden in now: straight, 27 strands, 32 in long. Whether it explains the trouble (elbow gall and saddle rolls): cinchwright check',
    );
  });

  test('where nothing passes by a taped room, that is taped again first; where only the length fails, it is named', async () => {
    const text = (await screen(sized(cases.nothing))).replace(/\s+/g, ' ');
    expect(text).toContain(
      'Measure next, and what it gains if the tape reads what was assumed - Elbow room again',
    );
    const long = sized(orderWith({ horse: { elbowRoom: 4 }, saddle: { ringToRing: 60 } }));
    expect(long.advice.specs).toEqual([]);
    expect((await screen(long)).replace(/\s+/g, ' ')).toMatch(
      /needs a cinch of about \d.* in; the shop ties \d+ in to \d+ in\./,
    );
  });

  test('the next wider one that passes is named, unless it is shown or poor at the elbow', async () => {
    const seen = { none: 0, shown: 0, poor: 0, acceptable: 0, good: 0 };
    const rooms = [undefined, ...Array.from({ length: 16 }, (_, i) => 3 + i / 4)];
    for (const elbowRoom of rooms) {
      const result = sized(orderWith({ horse: { elbowRoom }, saddle: { ringToRing: 44 } }));
      const { advice } = result;
      const [first] = advice.specs;
      if (first?.candidate.style !== 'straight') continue;
      for (const top of [1, 3, 40]) {
        const text = (await screen(result, { top })).replace(/\s+/g, ' ');
        const [, strands, chance, rank, why] =
          /Wider: straight, (\d+) strands, passes at (\d+) % \((\d+)(?:st|nd|rd|th)\); (measure before it is tied\.|no\. 1 stands before it because )/.exec(
            text,
          ) ?? [];
        const [wider] = advice.specs
          .filter(({ candidate: c }) => c.style === 'straight' && c.strands > first.candidate.strands)
          .sort((a, b) => a.candidate.strands - b.candidate.strands);
        const elbow = wider?.judgementOf('elbow-clearance');
        const kind = wider === undefined ? 'none' : wider.rank <= top ? 'shown' : elbow;
        seen[kind as keyof typeof seen] += 1;
        expect(text.includes('Wider:'), text).toBe(kind === 'acceptable' || kind === 'good');
        if (wider === undefined || strands === undefined) continue;
        const percent = Math.round(100 * wider.candidate.clearance.chance);
        expect([strands, chance, rank].map(Number)).toEqual([wider.candidate.strands, percent, wider.rank]);
        // One that is good at the elbow need not be measured first: it stands behind for another reason.
        expect(why!.startsWith('measure')).toBe(kind === 'acceptable');
      }
    }
    expect(Math.min(...Object.values(seen)), JSON.stringify(seen)).toBeGreaterThan(0);
  });

  test('the next in rank is compared with as in "first because"', () => {
    const { advice } = sized(cases.full);
    const [first, second] = advice.specs;
    expect(advice.whyFirst(second!)).toEqual(first!.becauseOf!.words);
  });
});
