/** The answers of `check` and `rules`, and problems of files. */
import { parse } from 'csv-parse/sync';
import { describe, expect, test } from 'vitest';
import type { Order, Shop } from '../../src/order/types.ts';
import { standingOf } from '../../src/report/about-check.ts';
import { checkColumns, checkCsv } from '../../src/report/check-csv.ts';
import { checkJson, checkSchema } from '../../src/report/check-json.ts';
import { checkMarkdown } from '../support/screens.ts';
import { checkScreen } from '../support/screens.ts';
import { problemsText } from '../../src/report/problems.ts';
import { rulesCsv } from '../../src/report/rules-csv.ts';
import { rulesJson } from '../../src/report/rules-json.ts';
import { rulesMarkdown } from '../../src/report/rules-markdown.ts';
import { rulesScreen } from '../../src/report/rules-screen.ts';
import type { CheckResult } from '../../src/report/types.ts';
import { columns } from '../../src/report/width.ts';
import { ruleName } from '../../src/report/words.ts';
import { rules } from '../../src/rules/registry.ts';
import { defaultShop } from '../../src/stock/default-shop.ts';
import { cases, checked, failed, orderWith, plainOptions } from './report-cases.ts';

const widest = (text: string): number => Math.max(...text.split('\n').map(columns));
const oneLine = (text: string): string => text.replace(/\s+/g, ' ');
const wish = (wants: NonNullable<Order['wants']>, rest: Partial<Order> = {}): CheckResult & { ok: true } =>
  checked({ ...orderWith({ wants, saddle: { ringToRing: 44 } }), ...rest });

describe('check', () => {
  const gall = checked(cases.gall);

  test('says what was asked, what was filled in, how it stands, why, what would pass, and the causes', () => {
    const text = oneLine(checkScreen([gall], plainOptions));
    expect(text).toContain('What the customer wants Straight, 21 strands (not said, so taken: buckle');
    expect(text).toContain('x REFUSED: clears the elbow by only');
    expect(text).toContain('Nearest the elbow: the front edge of the cinch,');
    expect(text).toContain('Nearest that passes: straight,');
    expect(text).toContain('What changes:');
    expect(text).toContain('Best for this pair:');
    expect(text).toContain('Elbow gall: likely because');
    expect(text).toContain('Keep in mind');
  });

  test('names every rule once for each cinch', () => {
    const text = oneLine(checkScreen([wish({ style: 'straight', strands: 15 })], plainOptions));
    const verdicts = text.slice(text.indexOf('Rule by rule'), text.indexOf('Keep in mind'));
    for (const { id } of rules) expect(verdicts).toContain(id.replaceAll('-', ' '));
  });

  test('no line is wider than the screen', () => {
    for (const change of [{}, { units: 'cm' }, { why: true }] as const) {
      expect(widest(checkScreen([gall], { ...plainOptions, ...change }))).toBeLessThanOrEqual(80);
    }
  });

  test.each([
    ['passes', wish({ style: 'straight', strands: 15 })],
    ['refused', wish({ style: 'straight', strands: 29 })],
  ])('stands as %s', (standing, result) => {
    expect(result.checked.map(standingOf)).toEqual([standing]);
    expect(checkScreen([result], plainOptions)).toContain(`${standing.toUpperCase()}:`);
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
    expect(checkScreen([poor], plainOptions)).toContain('? NOT SURE: nothing refuses it;');
  });

  test('passes where only something else cannot be told, says so in the same line, and never looks good', () => {
    const open = wish({ style: 'straight', strands: 15 }, { use: undefined, colors: { body: ['plum'] } });
    const why =
      'nobody can tell stock: no plum body cord in the shop file; nor roping strength: nobody said what the horse is used for.';
    expect(oneLine(checkScreen([open], plainOptions))).toMatch(
      new RegExp(
        // Of a least clearance in thin skin; against muscle there is none to be sure of.
        `\\? PASSES: nothing refuses it; clears [^;]* \\d\\d % sure( of at least \\d\\.\\d\\d in)?(; only [^;]*)?; ${why}`,
      ),
    );
    expect(checkMarkdown([open], plainOptions)).toMatch(new RegExp(`\\*\\*Passes\\*\\*: .*; ${why}`));
    expect(JSON.parse(checkJson([open]))).toMatchObject({
      results: [
        { checked: [{ standing: 'passes', passes: true, cannotTell: ['stock', 'roping-strength'] }] },
      ],
    });
    const known = wish({ style: 'straight', strands: 15 });
    expect(checkScreen([known], plainOptions)).toContain('+ PASSES:');
    expect(JSON.parse(checkJson([known]))).toMatchObject({ results: [{ checked: [{ cannotTell: [] }] }] });
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
    const printed = (result: CheckResult): string[] => [
      checkScreen([result], plainOptions),
      checkScreen([result], { ...plainOptions, why: true }),
      checkMarkdown([result], plainOptions),
      checkCsv([result]),
      checkJson([result]),
    ];

    test.each([
      ['a shelf without buckles', empty, /\bstock\b/],
      ['a shop that does not tie it', few, /strand[ -]range/],
    ])('is not judged by %s', (_, shop, rule) => {
      const current = judgedAs('current', shop);
      expect(current.checked.map(standingOf)).toEqual(['passes']);
      for (const text of printed(current)) {
        expect(text).not.toMatch(rule);
        expect(text).not.toContain('Nearest that passes');
        expect(text).toContain('elbow');
      }
      expect(JSON.parse(checkJson([current]))).toMatchObject({
        results: [{ checked: [{ passes: true, nearest: null }] }],
      });
      const wanted = judgedAs('wants', shop);
      expect(wanted.checked.map(standingOf)).toEqual(['refused']);
      for (const text of printed(wanted)) expect(text).toMatch(rule);
    });
  });

  describe('a cinch in use whose buckle nobody named', () => {
    const tall = (change: object) => ({ ...defaultShop.buckles[1]!, id: 'tall', frameHeight: 8, ...change });
    const low = { ...defaultShop.buckles[1]!, id: 'low' };
    const only = (...buckles: Shop['buckles'][number][]): Shop => ({ ...defaultShop, buckles });
    const asked = { style: 'straight', strands: 15, length: 26 } as const;
    const inUse = (shop: Shop, change: object = {}): CheckResult & { ok: true } =>
      checked(
        orderWith({ current: { ...asked, ...change }, saddle: { ringToRing: 44 }, horse: { elbowRoom: 4 } }),
        shop,
      );

    test('is refused only where every buckle that takes the strands is', () => {
      expect(inUse(only(low)).checked.map(standingOf)).toEqual(['passes']);
      expect(inUse(only(tall({}))).checked.map(standingOf)).toEqual(['refused']);
      for (const shop of [only(low, tall({})), only(tall({ frameWidth: 3 }), low)]) {
        const result = inUse(shop);
        expect(result.checked.map(standingOf)).toEqual(['not sure']);
        const text = oneLine(checkScreen([result], plainOptions));
        expect(text).toContain('? NOT SURE: nothing refuses it with the buckle taken; clears the elbow by');
        expect(text).toContain(
          'nobody can tell buckle height: it depends on the buckle, which nobody named: tall would be refused',
        );
        expect(text).toContain('not said, so taken: buckle low');
        expect(text).not.toContain('Nearest that passes');
      }
      const many = only(low, tall({ single: { min: 21, max: 25 }, double: undefined }));
      expect(inUse(many).checked.map(standingOf)).toEqual(['passes']);
    });

    test('a named one is judged as it is', () => {
      const shop = only(low, tall({}));
      expect(inUse(shop, { buckle: 'tall' }).checked.map(standingOf)).toEqual(['refused']);
      expect(inUse(shop, { buckle: 'low' }).checked.map(standingOf)).toEqual(['passes']);
    });

    test('that no buckle of the shop takes has one of another shop', () => {
      const few = inUse(only({ ...low, single: { min: 21, max: 25 }, double: undefined }));
      expect(few.checked.map(standingOf)).toEqual(['not sure']);
      expect(oneLine(checkScreen([few], plainOptions))).toContain(
        'nobody can tell buckle strands: no buckle of the shop file takes that many strands',
      );
    });

    test('is refused all the same by what no buckle changes', () => {
      expect(inUse(only(low, tall({})), { length: 40 }).checked.map(standingOf)).toEqual(['refused']);
      expect(inUse(defaultShop, { strands: 31 }).checked.map(standingOf)).toEqual(['refused']);
    });
  });

  test('a buckle nobody has is refused in words, and its name does nothing', () => {
    const result = wish({ strands: 17, buckle: 'gold\u001b[2J' });
    const text = oneLine(checkScreen([result], plainOptions));
    expect(text).toContain('x REFUSED: the shop file has no buckle called gold\\u{1b}[2J.');
    expect(text).not.toContain('Rule by rule');
  });

  test('an order that asks for nothing says so', () => {
    expect(checkScreen([checked(cases.full)], plainOptions)).toContain('Nothing to check');
    expect(checkMarkdown([checked(cases.full)], plainOptions)).toContain('Nothing to check');
  });

  test('json and csv agree', () => {
    const document = JSON.parse(checkJson([gall, failed])) as {
      schema: string;
      results: { order: string; checked: { standing: string; findings: Record<string, unknown>[] }[] }[];
    };
    expect(document.schema).toBe(checkSchema);
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
    expect(checkColumns.every(({ about }) => about !== '')).toBe(true);
    expect(parse(checkCsv([failed]), { columns: true })).toMatchObject([
      { order: '99', standing: 'not read' },
    ]);
  });

  test('markdown has a table of all rules', () => {
    const text = checkMarkdown([gall, failed], plainOptions);
    expect(text).toContain('**Refused**: clears the elbow by only');
    expect(text).toContain('| flare position | does not apply |');
    for (const { id } of rules) expect(text).toContain(`\n| ${ruleName(id)} | `);
    expect(text).toContain('Order 99 in bad.yaml could not be read.');
  });
});

describe('rules', () => {
  test('the list names each with its question, and which may refuse', () => {
    const text = oneLine(rulesScreen(rules, plainOptions));
    for (const { id, question } of rules) expect(text).toContain(`${id}: ${question}`);
    expect(text).toMatch(/^May refuse a cinch elbow-clearance: .* Only grade it /);
    expect(widest(rulesScreen(rules, plainOptions))).toBeLessThanOrEqual(80);
  });

  test('one rule in full shows its examples', () => {
    const chosen = rules.filter(({ id }) => id === 'latigo-run');
    const text = rulesScreen(chosen, { ...plainOptions, why: true });
    expect(text).toContain('x refused: 2 in each side');
    expect(text).toContain('It may refuse a cinch.');
  });

  test('json, csv and markdown hold all of them', () => {
    const { results } = JSON.parse(rulesJson(rules)) as { results: { rule: string }[] };
    expect(results.map(({ rule }) => rule)).toEqual(rules.map(({ id }) => id));
    const rows = parse(rulesCsv(rules), { columns: true }) as unknown as Record<string, string>[];
    expect(rows.map((row) => row['rule'])).toEqual(rules.map(({ id }) => id));
    for (const { id } of rules) expect(rulesMarkdown(rules)).toContain(`\n## ${id}\n`);
  });

  test('markdown of one tells what it can say, what it reads and on whose word', () => {
    const text = rulesMarkdown(rules.filter(({ id }) => id === 'roping-strength'));
    expect(text).toContain('Can say: good, acceptable, poor, does not apply, cannot tell.');
    expect(text).toContain('Reads of the order: `order`, `practice`.');
    expect(text).toContain('Looks at of the cinch: `strands`.');
    expect(text).toContain('practice of the trade, disputed');
    expect(text).not.toContain('## stock');
  });
});

describe('problems', () => {
  test('place, key, what was found, what was expected, hint', () => {
    expect(problemsText(failed.problems, plainOptions)).toBe(
      'bad.yaml:4:16: horse.heart-girth\n  found 73; expected a length with its unit, such as 73 in\n  hint: write 73 in\n',
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
      'a\\u{1b}]0;x\\u{7}.yaml:1:1: document 2\n  found nothing; expected an order\n',
    );
    expect(problemsText([], plainOptions)).toBe('');
  });
});
