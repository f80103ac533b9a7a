/** The answer of `size`: readable at the counter, the same for scripts and spreadsheets, harmless whatever the file says. */
import { parse } from 'csv-parse/sync';
import { describe, expect, test } from 'vitest';
import { simulateClearance } from '../../src/advice/simulate.ts';
import type { Order, Shop } from '../../src/order/types.ts';
import { sizeColumns, sizeCsv } from '../../src/report/size-csv.ts';
import { sizeJson, sizeSchema } from '../../src/report/size-json.ts';
import { sizeMarkdown } from '../support/screens.ts';
import { loadColors } from '../../src/report/pen.ts';
import { sizeScreen } from '../support/screens.ts';
import type { ReportOptions, SizeResult } from '../../src/report/types.ts';
import { columns } from '../../src/report/width.ts';
import { unguard } from '../../src/report/csv.ts';
import { defaultShop } from '../../src/stock/default-shop.ts';
import { cases, failed, orderWith, plainOptions, sized } from './report-cases.ts';
import { escapes, formulas } from './report-payloads.ts';

const names = Object.keys(cases) as (keyof typeof cases)[];
const screen = (result: SizeResult, change: Partial<ReportOptions> = {}): string =>
  sizeScreen([result], { ...plainOptions, ...change });
const widest = (text: string): number => Math.max(...text.split('\n').map(columns));

describe('screen', () => {
  test.each(names)('%s: no line is wider than the screen, in any form', async (name) => {
    const result = sized(cases[name]);
    for (const change of [
      {},
      { units: 'cm' },
      { why: true },
      { all: true },
      { top: 40 },
      { width: 200 },
    ] as const) {
      expect(widest(await screen(result, change))).toBeLessThanOrEqual(80);
    }
    expect(widest(await screen(result, { width: 50 }))).toBeLessThanOrEqual(50);
    expect(widest(await screen(result, { width: Number.NaN }))).toBeLessThanOrEqual(80);
  });

  test.each(names)('%s: about one screen, no NaN, never called safe or certain', async (name) => {
    const text = await screen(sized(cases[name]));
    expect(text.split('\n').length).toBeLessThanOrEqual(66);
    expect(text).not.toMatch(/NaN|Infinity|undefined|\bsafe\b|100 %|[^\d]0 %/);
    expect(text.endsWith('\n')).toBe(true);
  });

  test('says what a customer asks at the counter', async () => {
    const text = await screen(sized(cases.full));
    expect(text).toContain('Order 2417: Jo Alvarez, horse Biscuit');
    expect(text).toMatch(/Room behind the elbow: 4\.0 in, give or take 0\.5 \(assumed: about a hand/);
    expect(text).toMatch(
      / 1 {2}straight, \d+ strands +clears the elbow by \d\.\d\d in( at the buckle)?, \d\d % sure/,
    );
    expect(text).toMatch(/^To tie, best first \(sure: at least 1\.00 in, buckle clear, standing square\)$/m);
    expect(text).toMatch(
      /^Straight or roper\? Straight\.\n {2}- high-flare roper[^]*\n {2}- low-flare roper/m,
    );
    expect(text).toContain('First because');
    expect(text).toContain('Provisional length, roughly judged: do not cut until ring to ring is taped.');
    expect(text).toContain('Will not do');
    expect(text).toContain('Ring to ring (before any cord is cut)');
    expect(text).toContain('Assumed:');
    expect(text).toContain('veterinary');
  });

  test('a taped ring to ring takes the warning away', async () => {
    expect(await screen(sized(cases.measured))).not.toContain('do not cut');
  });

  test('when nothing passes that comes before everything that could be mistaken for advice', async () => {
    const text = await screen(sized(cases.nothing));
    expect(text).toContain('x Nothing the shop can tie passes for this pair.');
    expect(text).not.toContain('To tie');
    expect(text.indexOf('Nothing the shop')).toBeLessThan(text.indexOf('Will not do'));
  });

  test('the wish of the customer stands in its own paragraph', async () => {
    const text = (await screen(sized(cases.gall))).replace(/\s+/g, ' ');
    expect(text).toMatch(/The customer asked for: straight, 21 strands \(not said, so taken: /);
  });

  test("the shop's own numbers are named when they are in force", async () => {
    const shop: Shop = {
      ...defaultShop,
      model: { ...defaultShop.model, stretch: 0.5 },
      overridden: ['stretch'],
    };
    expect(await screen(sized(cases.full, shop))).toContain(
      "The shop's own numbers are in force: stretch 0.5 in (usual 1 in).",
    );
  });

  test('a simulation is one line a spec', async () => {
    const result = sized(cases.full);
    const simulated = result.advice.specs
      .slice(0, 2)
      .map(({ candidate }) => simulateClearance(candidate, result.advice.facts, { draws: 50, seed: 3 }));
    const text = await screen({ ...result, simulated });
    expect(text.match(/Drawn 50 times \(seed 3\)/g)).toHaveLength(2);
  });

  test('colors only repeat what words say', async () => {
    await loadColors();
    const plain = await screen(sized(cases.draft), { why: true });
    const colored = await screen(sized(cases.draft), { why: true, color: true });
    expect(colored).toContain('\u001b[');
    expect(colored.replace(/\u001b\[\d+m/g, '')).toBe(plain);
    expect(plain).not.toContain('\u001b');
  });

  test('an order that failed leaves one line among the others, and cautions are said once', async () => {
    const text = await sizeScreen([sized(cases.full), failed, sized(cases.pony)], plainOptions);
    expect(text).toContain('Order 99 in bad.yaml could not be read: see the messages.');
    expect(text.match(/Keep in mind/g)).toHaveLength(1);
    expect(await sizeScreen([], plainOptions)).toBe('\n');
  });

  test('all lists every candidate', async () => {
    const result = sized(cases.full);
    const text = await screen(result, { all: true });
    const rows = text.split('\n').filter((line) => /^(straight|high|low) +\d/.test(line));
    expect(rows).toHaveLength(result.advice.every.length);
    expect(text).toContain('x elbow clearance');
  });
});

/** An order whose every free text is hostile. */
const hostile = (text: string): Order =>
  orderWith({
    order: text,
    customer: { name: text },
    horse: { name: text },
    colors: { body: [text] },
    wants: { style: 'straight', strands: 17, buckle: text },
    saddle: { rigging: { kind: 'named', name: text, fraction: 1 } },
  });

test.each([...escapes, ...formulas])('%j in an order does nothing', async (text) => {
  const shop = {
    ...defaultShop,
    buckles: defaultShop.buckles.map((buckle) => ({ ...buckle, id: buckle.id + text })),
  };
  const result = { ...sized(hostile(text), shop), file: `${text}.yaml` };
  const shown = [
    await screen(result),
    await screen(result, { why: true, all: text === escapes[0] }),
    sizeMarkdown([result], plainOptions),
    sizeCsv([result]).replaceAll('\r\n', ''),
    sizeJson([result]),
  ]
    .join('')
    .replaceAll('\n', '');
  expect(/[\p{Cc}\p{Cs}\p{Zl}\p{Zp}\u202a-\u202e\u2066-\u2069]/u.exec(shown)?.index).toBeUndefined();
  expect(JSON.parse(sizeJson([result]))).toMatchObject({ results: [{ order: text }] });
});

describe('json', () => {
  const read = (results: readonly SizeResult[]): { schema: string; results: Record<string, never>[] } =>
    JSON.parse(sizeJson(results)) as never;

  test('has the keys of the contract, in this order', () => {
    const document = read([sized(cases.gall)]);
    const [result] = document.results;
    expect(document.schema).toBe(sizeSchema);
    expect(Object.keys(result!)).toEqual([
      'order',
      'file',
      'assumptions',
      'room',
      'welfare',
      'specs',
      'otherStyles',
      'refused',
      'ask',
      'cautions',
      'wants',
    ]);
    const keys = (list: string): string[] => Object.keys((result![list] as unknown as object[])[0]!);
    expect(keys('assumptions')).toEqual(['input', 'value', 'unit', 'basis', 'sd', 'kind']);
    expect(Object.keys(result!['room']!)).toEqual(['inches', 'sd', 'basis']);
    expect(keys('otherStyles')).toEqual(['style', 'rank', 'strands', 'chance', 'text']);
    const [{ clearance }] = result!['specs']! as [{ clearance: object }];
    expect(Object.keys(clearance)).toEqual(['inches', 'sd', 'floor', 'chance', 'station', 'where']);
    expect(keys('specs')).toEqual(
      expect.arrayContaining([
        'rank',
        'style',
        'strands',
        'layers',
        'width',
        'buckleWidth',
        'flareStart',
        'length',
        'buckle',
        'clearance',
        'becauseOf',
        'findings',
      ]),
    );
  });

  test('without a wish there is no key for it; a straight has no flare; results stay in order', () => {
    const { results } = read([failed, sized(cases.measured)]);
    expect(results[0]).toMatchObject({ order: '99', file: 'bad.yaml', error: { problems: [{ line: 4 }] } });
    expect(results[1]).not.toHaveProperty('wants');
    expect(results[1]!['specs']![0]).toMatchObject({ rank: 1, style: 'straight', flareStart: null });
  });

  test.each(names)('%s: of each other style its best, null where none passes, and why', (name) => {
    const [result] = read([sized(cases[name])]).results;
    const specs = result!['specs']! as { style: string; clearance: { chance: number } }[];
    const styles = ['straight', 'high-flare', 'low-flare'].filter((style) => style !== specs[0]?.style);
    const none = { rank: null, strands: null, clearance: { chance: null } };
    expect(result!['otherStyles']).toEqual(
      styles.map((style) => {
        const { rank, strands, clearance } = { ...none, ...specs.find((spec) => spec.style === style) };
        return {
          style,
          rank,
          strands,
          chance: clearance.chance,
          text: expect.stringMatching(/./) as unknown,
        };
      }),
    );
  });

  test('what comes before any cinch is there only where something must', () => {
    const told = (name: keyof typeof cases): unknown => read([sized(cases[name])]).results[0]!['welfare'];
    expect(told('gall')).toEqual([expect.stringMatching(/^Sore: galled at the elbow\. /)]);
    // 1.75 in of room, under 3.
    expect(told('nothing')).toEqual([expect.stringContaining('1.75 in'), expect.any(String)]);
    expect(told('measured')).toBeUndefined();
  });

  test('an order that is not known is null', () => {
    expect(read([{ ...failed, order: undefined }]).results[0]).toMatchObject({ order: null });
  });
});

describe('csv', () => {
  test.each(names)('%s: read back it equals the JSON', (name) => {
    const result = sized(cases[name]);
    const rows = parse(sizeCsv([result]), { columns: true }) as unknown as Record<string, string>[];
    const { results } = JSON.parse(sizeJson([result])) as { results: { specs: Record<string, unknown>[] }[] };
    const { specs } = results[0]!;
    if (specs.length === 0) {
      expect(rows).toHaveLength(1);
      expect(rows[0]).toMatchObject({ outcome: 'nothing passes', rank: '' });
      return;
    }
    const number = (text = ''): number | null => (text === '' ? null : Number(text));
    expect(specs).toMatchObject(
      rows.map((row) => ({
        rank: number(row['rank']),
        style: row['style'],
        strands: number(row['strands']),
        layers: number(row['layers']),
        width: number(row['width_in']),
        buckleWidth: number(row['buckle_width_in']),
        flareStart: number(row['flare_start_in']),
        length: number(row['length_in']),
        buckle: unguard(row['buckle'] ?? ''),
        clearance: {
          inches: number(row['clearance_in']),
          sd: number(row['clearance_sd_in']),
          chance: number(row['chance']),
        },
      })),
    );
  });

  test('every column is named once and explained; failed orders have a row', () => {
    expect(new Set(sizeColumns.map(({ name }) => name)).size).toBe(sizeColumns.length);
    expect(sizeColumns.every(({ about }) => about !== '')).toBe(true);
    const rows = parse(sizeCsv([failed]), { columns: true }) as unknown as Record<string, string>[];
    expect(rows).toEqual([expect.objectContaining({ order: '99', outcome: 'not read' })]);
  });
});

describe('markdown', () => {
  test.each(names)('%s: a heading, a table, lists, cautions', (name) => {
    const text = sizeMarkdown([sized(cases[name])], plainOptions);
    expect(text).toMatch(/^# Order /);
    expect(text).toContain('## Keep in mind');
    expect(text).not.toMatch(/NaN|undefined|\n\n\n/);
    if (name !== 'nothing')
      expect(text).toMatch(/^\| No\. \| Style .* \| Sure of \d\.\d\d in, standing square \|$/m);
  });

  test('an order that failed leaves a line', () => {
    expect(sizeMarkdown([failed], plainOptions)).toBe('Order 99 in bad.yaml could not be read.\n');
  });
});
