/** The answers of `check` and `rules`, and problems of files. */
import { parse } from 'csv-parse/sync';
import { describe, expect, test } from 'vitest';
import type { Order, Shop } from '../../src/order/types.ts';
import { standingOf } from '../../src/words/about-check.ts';
import { checkCsv, checkJson } from '../../src/views/check-data.ts';
import { checkMarkdown, checkScreen, oneLine, widest } from '../support/screens.ts';
import { shortCaution } from '../../src/numbers/cautions.ts';
import { escaped } from '../../src/pages/markdown.ts';
import { problemsText } from '../../src/words/problems.ts';
import { phraseText } from '../../src/units/text.ts';
import { rulesCsv, rulesJson } from '../../src/views/rules-data.ts';
import { ruleSheet, rulesSheet } from '../../src/views/rules-sheet.ts';
import { sheetText as sheetsScreen } from '../support/screens.ts';
import type { Sheet } from '../../src/pages/sheet.ts';
import type { CheckResult } from '../../src/words/types.ts';
import { ruleName } from '../../src/words/words.ts';
import { rules } from '../../src/rules/registry.ts';
import { defaultShop } from '../../src/cinch/default-shop.ts';
import { cases, checked, failed, orderWith, plainOptions } from './report-cases.ts';

const wish = (wants: NonNullable<Order['wants']>, rest: Partial<Order> = {}): CheckResult & { ok: true } =>
  checked({ ...orderWith({ wants, saddle: { ringToRing: 44 } }), ...rest });

describe('check', () => {
  const gall = checked(cases.gall);

  test('a sore first, then each cinch: what was asked and filled in, how it stands, its causes, the pick', () => {
    const text = oneLine(checkScreen([gall], plainOptions));
    const places = [
      '2420 Biscuit, Jo Alvarez: GALLED AT THE ELBOW.',
      'Asked for (a straight, 21 strands; we filled in ',
      'Current cinch (a straight, 27 strands, 32 in long; we filled in ',
      'RULED OUT.',
      'Elbow gall: likely from this cinch:',
      'Smallest change that passes: ',
      'Our pick, once healed (',
      shortCaution,
    ].map((part) => text.indexOf(part));
    expect(Math.min(...places), text).toBeGreaterThanOrEqual(0);
    expect(places, text).toEqual(places.toSorted((x, y) => x - y));
  });

  test('tapes that cannot all be right are told before our pick, as size tells them', () => {
    const off = wish({ strands: 25 }, { horse: { ...orderWith({}).horse, height: 48 } });
    const remarks = off.advice.remarks.map((remark) => phraseText(remark, 'in'));
    const text = oneLine(checkScreen([off], plainOptions));
    expect(remarks.length).toBeGreaterThan(0);
    for (const remark of remarks) expect(text).toContain(remark);
    expect(text.indexOf(remarks[0]!)).toBeLessThan(text.indexOf('Our pick ('));
  });

  test('--why names every rule once for each cinch', () => {
    const text = oneLine(
      checkScreen([wish({ style: 'straight', strands: 15 })], { ...plainOptions, why: true }),
    );
    const verdicts = text.slice(text.indexOf('Every check'), text.indexOf('What we went by'));
    for (const { id } of rules) expect(verdicts.split(` ${ruleName(id)}: `), id).toHaveLength(2);
  });

  test('no line is wider than the screen', () => {
    for (const width of [40, 80, 120]) {
      for (const change of [{}, { units: 'cm' }, { why: true }] as const) {
        const text = checkScreen([gall], { ...plainOptions, ...change, width });
        expect(widest(text)).toBeLessThanOrEqual(width);
      }
    }
  });

  test.each([
    ['passes', wish({ style: 'straight', strands: 15 })],
    ['refused', wish({ style: 'straight', strands: 29 })],
  ])('stands as %s', (standing, result) => {
    expect(result.checked.map(standingOf)).toEqual([standing]);
    const word = standing === 'refused' ? 'RULED OUT' : 'PASSES';
    expect(oneLine(checkScreen([result], plainOptions))).toContain(`): ${word}.`);
  });

  test('stands as not sure while it is poor at the elbow', () => {
    const rooms = Array.from({ length: 60 }, (_, i) => 3 + i / 20);
    const poor = rooms
      .map((elbowRoom) =>
        checked(orderWith({ wants: { style: 'straight', strands: 19 }, horse: { elbowRoom } })),
      )
      .find((entry) => entry.checked[0]?.judged?.judgementOf('elbow-clearance') === 'poor');
    if (poor === undefined) throw new Error('none of them is poor');
    expect(poor.checked.map(standingOf)).toEqual(['not sure']);
    expect(oneLine(checkScreen([poor], plainOptions))).toContain('): NOT SURE.');
    expect(JSON.parse(checkJson([poor]))).toMatchObject({
      results: [{ checked: [{ standing: 'not sure' }] }],
    });
  });

  test('passes where only other rules cannot tell, and says so', () => {
    const open = wish({ style: 'straight', strands: 15 }, { use: undefined, colors: { body: ['plum'] } });
    const of = (result: CheckResult): object => JSON.parse(checkJson([result])) as object;
    expect(of(open)).toMatchObject({
      results: [{ checked: [{ standing: 'passes', cannotTell: ['stock', 'roping-strength'] }] }],
    });
    for (const text of [checkScreen([open], plainOptions), checkMarkdown([open], plainOptions)])
      expect(oneLine(text)).toMatch(/Not judged: [^.]*plum[^.]*; no use given\./);
    const known = wish({ style: 'straight', strands: 15 });
    expect(checkScreen([known], plainOptions)).not.toContain('Not judged');
    expect(of(known)).toMatchObject({ results: [{ checked: [{ cannotTell: [] }] }] });
  });

  describe('what is ridden in now', () => {
    const empty = {
      ...defaultShop,
      buckles: defaultShop.buckles.map((b) => ({ ...b, onHand: 0, orderable: false })),
    };
    const few = { ...defaultShop, strands: { min: 17, max: 21 } };
    const cinch = { style: 'straight', strands: 15, length: 32 } as const;
    const judgedAs = (which: 'wants' | 'current', shop: Shop): CheckResult & { ok: true } =>
      checked(orderWith({ [which]: cinch, saddle: { ringToRing: 44 } }), shop);
    const judgedBy = (result: CheckResult): string[] => {
      const { results } = JSON.parse(checkJson([result])) as {
        results: { checked: { findings: { rule: string }[] }[] }[];
      };
      return results[0]!.checked[0]!.findings.map(({ rule }) => rule);
    };

    test.each([
      ['a shelf without buckles', empty, 'stock'],
      ['a shop that does not tie it', few, 'strand-range'],
    ])('is not judged by %s', (_, shop, rule) => {
      const current = judgedAs('current', shop);
      expect(current.checked.map(standingOf)).toEqual(['passes']);
      expect(judgedBy(current)).not.toContain(rule);
      expect(judgedBy(current)).toContain('elbow-clearance');
      expect(checkCsv([current])).not.toContain(`,${rule},`);
      const why = checkScreen([current], { ...plainOptions, why: true });
      expect(why).not.toContain(` ${ruleName(rule)}: `);
      expect(why).not.toContain('Smallest change');
      expect(JSON.parse(checkJson([current]))).toMatchObject({
        results: [{ checked: [{ standing: 'passes', nearest: null }] }],
      });
      const wanted = judgedAs('wants', shop);
      expect(wanted.checked.map(standingOf)).toEqual(['refused']);
      expect(judgedBy(wanted)).toContain(rule);
    });
  });

  test('a buckle nobody has is refused in words, and its name does nothing', () => {
    const result = wish({ strands: 17, buckle: 'gold\u001b[2J' });
    const text = oneLine(checkScreen([result], plainOptions));
    expect(text).toContain('RULED OUT. x The shop file has no buckle called gold\\u{1b}[2J.');
    expect(checkScreen([result], { ...plainOptions, why: true })).not.toContain('Every check');
  });

  test('an order that asks for nothing says so', () => {
    expect(checkScreen([checked(cases.full)], plainOptions)).toMatch(/nothing to check/i);
    expect(checkMarkdown([checked(cases.full)], plainOptions)).toMatch(/nothing to check/i);
  });

  test('json and csv agree', () => {
    const document = JSON.parse(checkJson([gall, failed])) as {
      schema: string;
      results: { order: string; checked: { standing: string; findings: Record<string, unknown>[] }[] }[];
    };
    expect(document.schema).toBe('cinchwright/check/1');
    const [read, unread] = document.results;
    expect(Object.keys(read!).slice(0, 2)).toEqual(['order', 'file']);
    expect(read).toMatchObject({ file: 'orders.yaml' });
    expect(unread).toMatchObject({ order: '99', file: 'bad.yaml', error: { problems: [{ column: 16 }] } });
    const rows = parse(checkCsv([gall]), { columns: true }) as unknown as Record<string, string>[];
    expect(rows.map(({ standing, rule, judgement, text }) => ({ standing, rule, judgement, text }))).toEqual(
      read!.checked.flatMap(({ standing, findings }) =>
        findings.map(({ rule, judgement, text }) => ({ standing, rule, judgement, text })),
      ),
    );
    expect(rows.map(({ margin }) => (margin === '' ? null : Number(margin)))).toEqual(
      read!.checked.flatMap(({ findings }) => findings.map(({ margin }) => margin)),
    );
    expect(parse(checkCsv([failed]), { columns: true })).toMatchObject([
      {
        order: '99',
        standing: '',
        problem: expect.stringMatching(/^line 4, column 16, horse\.heart-girth: /) as unknown,
      },
    ]);
  });

  test('markdown has the answer, every caution, and a line for what could not be read', () => {
    const text = checkMarkdown([gall, failed], plainOptions);
    expect(text).toMatch(/^# 2420 .*\n\n\*\*GALLED AT THE ELBOW/);
    for (const caution of gall.advice.cautions) expect(text).toContain(escaped(caution));
    expect(text).toContain('# 99 in bad.yaml\n\n**Could not be read');
  });
});

describe('rules', () => {
  const screen = (sheets: Sheet[]): string => sheetsScreen(sheets, plainOptions);

  test('the list names each with its question, and which may rule a cinch out', () => {
    const text = oneLine(screen([rulesSheet(rules)]));
    for (const { id, question } of rules) expect(text).toContain(`${id}: ${question}`);
    expect(text).toMatch(/May rule a cinch out - elbow-clearance: .* Only grade it /);
  });

  test('one rule in full shows what it can say, what it reads, on whose word, and its examples', () => {
    const chosen = rules.filter(({ id }) => id === 'latigo-run' || id === 'roping-strength');
    const text = oneLine(screen(chosen.map(ruleSheet)));
    expect(text).toContain('x ruled out: 2 in each side');
    expect(text).toContain('It may say good, fair, poor, does not apply, cannot tell.');
    expect(text).toContain('Of the order: order, practice. Of the cinch: strands.');
    expect(text).toContain('trade practice, disputed');
  });

  test('json and csv hold all of them', () => {
    const { results } = JSON.parse(rulesJson(rules)) as { results: { rule: string }[] };
    expect(results.map(({ rule }) => rule)).toEqual(rules.map(({ id }) => id));
    const rows = parse(rulesCsv(rules), { columns: true }) as unknown as Record<string, string>[];
    expect(rows.map((row) => row['rule'])).toEqual(rules.map(({ id }) => id));
  });
});

describe('problems', () => {
  test('place, key, what was found, what was expected, hint', () => {
    expect(problemsText(failed.problems, plainOptions)).toBe(
      'bad.yaml:4:16: horse.heart-girth\n  73: expected a length with its unit, such as 73 in.\n  Write 73 in.\n',
    );
  });

  test('a missing key, one of several documents, a hostile name', () => {
    const problem = {
      file: 'a\u001b]0;x\u0007.yaml',
      document: 2,
      line: 1,
      column: 1,
      path: '',
      expected: 'an order',
    };
    expect(problemsText([problem], plainOptions)).toBe(
      'a\\u{1b}]0;x\\u{7}.yaml:1:1: document 2\n  Nothing here: expected an order.\n',
    );
    expect(problemsText([], plainOptions)).toBe('');
  });
});
