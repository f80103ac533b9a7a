/** Payloads print inert, pages are well-formed, printers agree on sums. */
import { parse, type DefaultTreeAdapterTypes } from 'parse5';
import { describe, expect, test } from 'vitest';
import { sizeOrder } from '../../src/index.ts';
import type { Order } from '../../src/order/types.ts';
import { materialsSheet } from '../../src/views/materials-sheet.ts';
import { careSheet } from '../../src/views/care-sheet.ts';
import { invoiceSheet } from '../../src/views/invoice-sheet.ts';
import { quotesJson } from '../../src/views/quote-data.ts';
import { quoteSheet } from '../../src/views/quote-sheet.ts';
import { scheduleSheet } from '../../src/views/schedule-sheet.ts';
import { sheetsHtml } from '../../src/pages/sheet-html.ts';
import { sheetsMarkdown } from '../../src/pages/sheet-markdown.ts';
import { sheetText as sheetsScreen } from '../support/screens.ts';
import type { Block, Sheet } from '../../src/pages/sheet.ts';
import { ticketSheet } from '../../src/views/ticket-sheet.ts';
import { columns } from '../../src/units/width.ts';
import { defaultShop } from '../../src/cinch/default-shop.ts';
import { backlogFrom } from '../support/backlog-papers.ts';
import { problemWith } from '../support/hostile-texts.ts';
import { orderOf, rigging } from '../support/orders.ts';
import { randomOrders } from '../support/random-cases.ts';
import { invoiceFor, pictureFor, quoteFor, ticketFor } from '../support/papers.ts';
import { escapes } from './report-payloads.ts';

/** OWASP cross-site scripting cheat sheets. */
const payloads: readonly string[] = [
  '<script>alert(1)</script>',
  '"><img src=x onerror=alert(1)>',
  "' onmouseover='alert(1)",
  '</title><script>alert(1)</script>',
  '</style><script>alert(1)</script>',
  '<svg/onload=alert(1)>',
  '<a href="javascript:alert(1)">x</a>',
  '<!--<script>alert(1)//-->',
  '&lt;script&gt;',
  '<iframe srcdoc="<script>alert(1)</script>">',
  ']]><b>',
  ...escapes,
];

function sheetOf(text: string): Sheet {
  const blocks: Block[] = [
    { kind: 'heading', text },
    { kind: 'text', text },
    { kind: 'list', items: [text] },
    { kind: 'boxes', items: [text] },
    { kind: 'blanks', labels: [text] },
    { kind: 'pairs', rows: [[text, text]] },
    {
      kind: 'table',
      columns: [{ head: text }, { head: text, align: 'right' }],
      rows: [[text, text]],
      foot: [[text, text]],
      total: 0,
    },
    {
      kind: 'beside',
      picture: pictureFor(quoteFor(orderOf({ horse: { name: text } }))),
      blocks: [{ kind: 'text', text }],
    },
  ];
  return { title: text, shop: text, about: [text], notice: text, blocks, rules: [text], cautions: [text] };
}

type Node = DefaultTreeAdapterTypes.Node;

/** Elements as "name attribute=value". */
function elements(node: Node): string[] {
  const own =
    'tagName' in node
      ? [[node.tagName, ...node.attrs.map(({ name, value }) => `${name}=${value}`)].join(' ')]
      : [];
  return [...own, ...('childNodes' in node ? node.childNodes.flatMap(elements) : [])];
}

const comments = (node: Node): string[] => [
  ...(node.nodeName === '#comment' ? ['comment'] : []),
  ...('childNodes' in node ? node.childNodes.flatMap(comments) : []),
];

describe('HTML', () => {
  const plain = elements(parse(sheetsHtml([sheetOf('x')])));
  test.each(payloads.map((payload) => [JSON.stringify(payload), payload]))(
    '%s changes no element',
    (_, payload) => {
      const page = parse(sheetsHtml([sheetOf(payload)]));
      expect(elements(page)).toEqual(plain);
      expect(comments(page)).toEqual([]);
    },
  );
  test.each(payloads.map((payload) => [JSON.stringify(payload), payload]))(
    '%s in the names of a backlog changes no element',
    (_, payload) => {
      const page = (text: string): Node => {
        const named = orderOf({ order: text, due: '2026-11-20', options: [text], colors: { body: [text] } });
        const { materials, agenda, asked, results } = backlogFrom([named], { ...defaultShop, name: text });
        const left = [
          ...results,
          { ok: false, file: text, order: text, problems: [problemWith(text)] } as const,
        ];
        return parse(sheetsHtml([materialsSheet(materials, left), scheduleSheet(agenda, asked, left)]));
      };
      expect(elements(page(payload))).toEqual(elements(page('x')));
      expect(comments(page(payload))).toEqual([]);
    },
  );
  test('is well-formed and asks for nothing from elsewhere', () => {
    const errors: string[] = [];
    const text = sheetsHtml([sheetOf('x'), sheetOf('y')]);
    parse(text, { onParseError: ({ code }) => errors.push(code) });
    expect(errors).toEqual([]);
    // The SVG namespace, which nobody fetches.
    expect(text.replaceAll('xmlns="http://www.w3.org/2000/svg"', '')).not.toMatch(
      /https?:|url\(|@import|<script|<link/,
    );
  });
});

test.each(payloads.map((payload) => [JSON.stringify(payload), payload]))(
  '%s steers no screen',
  (_, payload) => {
    const text = sheetsScreen([sheetOf(payload)], { color: false, units: 'in', width: 80 });
    expect(text).not.toMatch(
      /[\u0000-\u0009\u000b-\u001f\u007f-\u009f\u202a-\u202e\u2066-\u2069\u2028\u2029]/,
    );
  },
);

const passes = (each: Order): boolean => sizeOrder(each, defaultShop).specs.length > 0;
const order = orderOf({
  order: '2417',
  quantity: 2,
  due: '2026-12-01',
  options: ['center dees', 'initials'],
  saddle: { rigging: rigging('3/4'), ringToRing: 44 },
  colors: { body: ['natural', 'charcoal'], accent: ['rust'] },
});

test('every printer says the same total, deposit and rest', () => {
  const quote = quoteFor(order);
  const sheet = quoteSheet(quote, { units: 'in', itemized: true });
  const json = JSON.parse(
    quotesJson([{ ok: true, file: 'f', order: 'o', paper: quote, none: undefined }]),
  ) as {
    results: { total: string; deposit: string; balance: string }[];
  };
  const { total, deposit, balance } = json.results[0]!;
  for (const text of [
    sheetsHtml([sheet]),
    sheetsMarkdown([sheet]),
    sheetsScreen([sheet], { color: false, units: 'in', width: 80 }),
  ]) {
    for (const amount of [total, deposit, balance]) expect(text).toContain(amount);
  }
  expect(total).toMatch(/^\d+\.\d\d$/);
});

test('the number on the small picture is that of the words beside it', () => {
  for (const quoted of randomOrders(31, 40).flatMap((each) => (passes(each) ? [quoteFor(each)] : []))) {
    const picture = pictureFor(quoted);
    const words = sheetsHtml([quoteSheet(quoted, { units: 'in', itemized: false, picture })]);
    const [, told] = /elbow by about ([\d/\u00a0 ]+in)\. We want/.exec(words)!;
    expect(picture.svg).toContain(`>${told!.replaceAll('\u00a0', ' ')}</text>`);
  }
});

test.each([60, 80])('no line of the screen is wider than %i columns', (width) => {
  const sheets = [
    quoteSheet(quoteFor(order), { units: 'in', itemized: true }),
    ticketSheet(ticketFor(order), 'in'),
  ];
  const lines = sheetsScreen(sheets, { color: false, units: 'in', width }).split('\n');
  expect(Math.max(...lines.map(columns))).toBeLessThanOrEqual(width);
});

test('every paper carries every caution', () => {
  const quote = quoteFor(order);
  const text = sheetsHtml([
    quoteSheet(quote, { units: 'in', itemized: true }),
    ticketSheet(ticketFor(order), 'in'),
    invoiceSheet(invoiceFor(order), { units: 'in', itemized: false }),
    careSheet(ticketFor(order), 'in'),
  ]);
  for (const caution of quote.cautions) expect(text.split(caution)).toHaveLength(5);
});
