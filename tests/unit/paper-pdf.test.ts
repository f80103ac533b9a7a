/** PDF papers read back by PDF.js: texts in order, rows whole. */
import { describe, expect, test } from 'vitest';
import { papers, type Paper } from '../../src/pages/pdf/document.ts';
import { look, voices } from '../../src/pages/look.ts';
import { careSheet } from '../../src/views/care-sheet.ts';
import { invoiceSheet } from '../../src/views/invoice-sheet.ts';
import { quoteSheet } from '../../src/views/quote-sheet.ts';
import type { Block, Sheet } from '../../src/pages/sheet.ts';
import { ticketSheet } from '../../src/views/ticket-sheet.ts';
import { cases } from '../support/cases.ts';
import { orderOf, rigging } from '../support/orders.ts';
import { invoiceFor, pictureFor, quoteFor, ticketFor } from '../support/papers.ts';
import { pdfOf, printedOf, sheetOfBlocks } from '../support/print.ts';
import { linesOf, readPdf, type ReadPdf } from '../support/read-pdf.ts';
import { escapes } from './report-payloads.ts';

/** ISO 216: A4 is 210 x 297 mm; ANSI Y14.1: size A is 8.5 x 11 in. A point is 1/72 in. */
const sizes: Record<Paper, [number, number]> = {
  letter: [8.5 * 72, 11 * 72],
  a4: [(210 / 25.4) * 72, (297 / 25.4) * 72],
};
const both = Object.keys(papers) as Paper[];

/** Printed and read once for all tests. */
const prints = new Map<string, Promise<ReadPdf>>();
function printOf(sheet: Sheet, paper: Paper): Promise<ReadPdf> {
  const key = `${sheets.findIndex(([, each]) => each === sheet)} ${paper}`;
  const print = prints.get(key) ?? printedOf([sheet], paper);
  prints.set(key, print);
  return print;
}

const guessed = orderOf({ order: '2401', saddle: { rigging: rigging('7/8') } });
const full = orderOf({
  order: '2417',
  quantity: 2,
  due: '2026-12-01',
  options: ['center dees', 'initials'],
  saddle: { rigging: rigging('3/4'), ringToRing: 44 },
  colors: { body: ['natural', 'charcoal'], accent: ['rust'] },
});
const quoted = quoteFor(full);
const sheets: [string, Sheet][] = [
  ['a quote', quoteSheet(quoteFor(full), { units: 'in', itemized: true })],
  ['a provisional quote', quoteSheet(quoteFor(guessed), { units: 'cm', itemized: true })],
  ['a ticket', ticketSheet(ticketFor(full), 'in')],
  ['a provisional ticket', ticketSheet(ticketFor(guessed), 'cm')],
  [
    'a quote with its picture',
    quoteSheet(quoted, { units: 'in', itemized: false, picture: pictureFor(quoted) }),
  ],
  ['an invoice', invoiceSheet(invoiceFor({ ...full, taken: '2026-11-02' }), { units: 'in', itemized: true })],
  ['a care card', careSheet(ticketFor(full), 'in')],
];

function textsOf({ title, shop, about, notice = '', blocks, rules, cautions }: Sheet): string[] {
  const { loud, rest } = voices(notice);
  return [title, shop, ...about, loud, rest, ...blocks.flatMap(blockTexts), ...rules, ...cautions];
}

function blockTexts(block: Block): string[] {
  switch (block.kind) {
    case 'heading':
    case 'text':
      return [block.text];
    case 'list':
    case 'boxes':
      return [...block.items];
    case 'blanks':
      return [...block.labels];
    case 'pairs':
      return block.rows.flat();
    case 'table':
      return [...block.columns.map(({ head }) => head), ...block.rows.flat(), ...(block.foot ?? []).flat()];
    case 'beside':
      return block.blocks.flatMap(blockTexts);
  }
}

const bare = (text: string): string => text.replace(/\s/g, '');
const textOf = ({ pages }: ReadPdf): string =>
  bare(pages.flatMap(({ items }) => items.map(({ text }) => text)).join(''));

function firstMissing(texts: readonly string[], printed: string): string | undefined {
  let from = 0;
  return texts.map(bare).find((text) => {
    const at = printed.indexOf(text, from);
    from = at + text.length;
    return at === -1;
  });
}

function outside({ pages }: ReadPdf): string[] {
  const { top, side, bottom } = look.margin;
  return pages.flatMap(({ width, height, items }) =>
    items
      .filter(
        ({ x, y, width: wide, size }) =>
          x < side - 0.1 ||
          x + wide > width - side + 0.1 ||
          y - 0.7 * size < top ||
          y + 0.25 * size > height - bottom + 0.1,
      )
      .map(({ text, x, y }) => `${text} at ${x.toFixed(1)}, ${y.toFixed(1)}`),
  );
}

describe.each(both)('on %s', (paper) => {
  test.each(sheets)('%s has every text in order, within the margins', async (_, sheet) => {
    const pdf = await printOf(sheet, paper);
    expect(firstMissing(textsOf(sheet), textOf(pdf))).toBe(undefined);
    expect(outside(pdf)).toEqual([]);
    for (const { width, height } of pdf.pages) {
      expect(width).toBeCloseTo(sizes[paper][0], 1);
      expect(height).toBeCloseTo(sizes[paper][1], 1);
    }
  });
  test.each(sheets)('%s stands on two pages at most, each with its number and name', async (_, sheet) => {
    const { pages } = await printOf(sheet, paper);
    expect(pages.length).toBeLessThanOrEqual(2);
    pages.forEach(({ items }, i) => {
      const texts = items.map(({ text }) => text);
      expect(texts).toContain(`${i + 1} of ${pages.length}`);
      expect(texts.filter((text) => text === sheet.title).length).toBeGreaterThanOrEqual(1);
    });
  });
  test.each(sheets.filter(([name]) => !name.includes('ticket')))(
    '%s stands on one page',
    async (_, sheet) => {
      expect((await printOf(sheet, paper)).pages).toHaveLength(1);
    },
  );
});

test('the warning stands on every page, largest of all but the title', async () => {
  const { pages } = await printOf(sheets[3]![1], 'letter');
  expect(pages.length).toBe(2);
  for (const { items } of pages) {
    expect(items.map(({ text }) => text)).toContain('DO NOT CUT');
  }
  const larger = (size: number) => pages[0]!.items.filter((item) => item.size > size).map(({ text }) => text);
  const warning = pages[0]!.items.find(({ text }) => text === 'DO NOT CUT')!;
  expect(larger(warning.size)).toEqual(['Bench ticket 2401']);
});

test('several papers are numbered each by itself', async () => {
  const { pages } = await printedOf([sheets[0]![1], sheets[1]![1]]);
  expect(pages).toHaveLength(2);
  for (const { items } of pages) expect(items.map(({ text }) => text)).toContain('1 of 1');
});

describe('page breaks', () => {
  const table: Block = {
    kind: 'table',
    columns: [{ head: 'What' }, { head: 'Sum', align: 'right' }],
    rows: Array.from({ length: 150 }, (_, i) => [
      `row${i} ${'long words '.repeat(i % 4 === 0 ? 20 : 1)}end${i}`,
      `${i}.00`,
    ]),
    foot: [
      ['Before', '1'],
      ['Total', '2'],
    ],
    total: 1,
  };
  test('cut no row, repeat the head, keep the sums with the last row', async () => {
    const { pages } = await printedOf([sheetOfBlocks([{ kind: 'heading', text: 'Prices' }, table])]);
    expect(pages.length).toBeGreaterThan(3);
    const texts = pages.map(({ items }) => items.map(({ text }) => text));
    for (const page of texts) expect(page.filter((text) => text === 'Sum')).toHaveLength(1);
    for (let i = 0; i < 150; i += 1) {
      const on = (part: RegExp) =>
        texts.flatMap((page, n) => (page.some((text) => part.test(text)) ? [n] : []));
      expect(on(new RegExp(`\\bend${i}$`))).toEqual(on(new RegExp(`^row${i}\\b`)));
    }
    expect(texts.at(-1)).toEqual(expect.arrayContaining(['149.00', 'Before', 'Total']));
  });
  test.each(both)('leave no heading alone at the foot of a page of %s', async (paper) => {
    let broken = 0;
    // Too long for one page in any type.
    const rows = Array.from({ length: 24 }, (_, i) => [`row${i} of the table`, '1']);
    const long: Block = { ...table, rows, foot: [] };
    const filled = Array.from({ length: 24 }, (_, more) => {
      const items = Array.from({ length: 36 + more }, (_, i) => `item ${i}`);
      return sheetOfBlocks([{ kind: 'list', items }, { kind: 'heading', text: 'Heading' }, long]);
    });
    // One file: its letters take most of the time.
    const { pages } = await printedOf(filled, paper);
    const headed = pages.filter(({ items }) => items.some(({ text }) => text === 'Heading'));
    expect(headed).toHaveLength(filled.length);
    for (const { items } of headed) {
      const lines = linesOf(items).map((line) => line.map(({ text }) => text).join(' '));
      const at = lines.indexOf('Heading');
      expect(lines[at + 1]).toBe('What Sum');
      expect(lines[at + 2]).toMatch(/^row0 /);
      if (items.some(({ text }) => text === '2 of 2')) broken += 1;
    }
    expect(broken).toBeGreaterThan(0);
  });
});

describe('hostile texts', () => {
  const payloads = [
    '\u202ereversed\u202c',
    'a\u2028b\u2029c\u0000d\n\te',
    'W'.repeat(cases(300, 3000)),
    `${'W'.repeat(400)} `.repeat(cases(2, 20)),
    '\u{1f469}\u200d\u{1f33e} farmer',
    'e\u0301'.repeat(cases(100, 300)),
    '\u{1d400}\ud800',
    ') Tj /F1 99 Tf (',
    '',
    ' ',
  ];
  const everywhere = (text: string): Sheet =>
    sheetOfBlocks(
      [
        { kind: 'heading', text },
        { kind: 'text', text, tone: 'strong' },
        { kind: 'list', items: [text] },
        { kind: 'boxes', items: [text, text] },
        { kind: 'blanks', labels: [text, text, text, text, text] },
        { kind: 'pairs', rows: [[text, text]] },
        { kind: 'table', half: true, columns: [{ head: text }], rows: [[text]] },
        { kind: 'table', half: true, columns: [{ head: text }], rows: [[text]] },
        {
          kind: 'table',
          columns: [{ head: text }, { head: text, align: 'right' }, { head: text }],
          rows: [[text, text, text]],
          foot: [[text, text]],
          total: 0,
        },
        { kind: 'beside', picture: pictureFor(quoted), blocks: [{ kind: 'list', items: [text] }] },
        { kind: 'text', text: 'the end' },
      ],
      { title: text, shop: text, about: [text], notice: `${text}: ${text}`, rules: [text], cautions: [text] },
    );
  test.each([
    ['that steer a terminal', escapes],
    ['that are long, odd or nothing', payloads],
  ])('%s', async (_, texts) => {
    const { bytes } = await pdfOf(texts.map(everywhere));
    const pdf = await readPdf(bytes);
    const printed = textOf(pdf);
    expect(outside(pdf)).toEqual([]);
    expect(printed.match(/theend/g)).toHaveLength(texts.length);
    expect(printed).not.toMatch(/[\p{Cc}\p{Cf}\p{Cs}\p{Zl}\p{Zp}]/u);
    expect(pdf.pages.every(({ annotations }) => annotations === 0)).toBe(true);
    expect(pdf.scripts).toBe(null);
    expect(Buffer.from(bytes).toString('latin1')).not.toMatch(/\/(JavaScript|JS|OpenAction|URI|Launch|AA) /);
  });
});

describe('letters', () => {
  test('of other languages are printed, as they were written', async () => {
    const names = [
      'Zo\u00eb Wi\u015bniewska',
      'Nguy\u1ec5n Th\u1ecb',
      '\u042e\u043b\u0438\u044f',
      '\u0393\u03b5\u03ce\u03c1\u03b3\u03b9\u03bf\u03c2',
      'Bjo\u0308rn',
    ];
    const sheet = sheetOfBlocks([{ kind: 'list', items: names }], { title: names.join(' '), about: names });
    const { bytes, lacking } = await pdfOf([sheet]);
    expect(lacking).toEqual([]);
    const pdf = await readPdf(bytes);
    expect(
      firstMissing(
        [...names, ...names].map((name) => name.normalize('NFC')),
        textOf(pdf),
      ),
    ).toBe(undefined);
    expect(pdf.fonts.length).toBeGreaterThan(0);
    // A subset's name starts with a tag of six letters (ISO 32000-1, 9.6.4).
    for (const font of pdf.fonts) expect(font).toMatch(/^[A-Z]{6}\+Source/);
  });
  test('that the fonts lack are told, and a square stands for each', async () => {
    const { bytes, lacking } = await pdfOf([
      sheetOfBlocks([{ kind: 'text', text: 'Li \u674e\u5a1c \u{1f434}!' }]),
    ]);
    expect(lacking).toEqual(['\u674e', '\u5a1c', '\u{1f434}']);
    expect(textOf(await readPdf(bytes))).toContain('Li\u25a1\u25a1\u25a1!');
  });
});

test('the same papers of the same day are the same bytes, whenever they are made', async () => {
  const all = sheets.slice(3, 5).map(([, sheet]) => sheet);
  const first = await pdfOf(all);
  await new Promise((resolve) => setTimeout(resolve, 1100)); // PDF dates count seconds
  const second = await pdfOf(all);
  expect(Buffer.compare(first.bytes, second.bytes)).toBe(0);
  const other = await pdfOf(all, 'letter', '2026-11-21');
  expect(Buffer.compare(first.bytes, other.bytes)).not.toBe(0);
  const { info } = await readPdf(first.bytes);
  expect(info['CreationDate']).toBe('D:20261120000000Z');
});
