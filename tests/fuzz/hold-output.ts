/** Checks output: nothing that a screen, a page or a spreadsheet would obey, and no slip of ours. */
import { parse as parseCsv } from 'csv-parse/sync';
import { parse as parseHtml } from 'parse5';
import { readSvg } from '../support/read-svg.ts';
import { hold } from './target.ts';

/** Only a fault of the program prints these. */
export const slips = ['NaN', 'Infinity', 'undefined', '[object Object]'];

/** Steers a screen, or turns or hides letters; line feeds may stand. */
export const steers =
  /[\0-\x09\x0b-\x1f\x7f-\x9f\xad\u061c\u180e\u200b\u200e\u200f\u2028\u2029\u202a-\u202e\u2060-\u206f\ufeff\ufff9-\ufffb\ufffe\uffff\u{e0000}-\u{e007f}]|\p{Cs}/u;

const around = (text: string, at: number): string =>
  JSON.stringify(text.slice(Math.max(0, at - 60), at + 60));

/** `said` is all outside input: a slip found there is not ours. */
export function holdText(text: string, said: string): void {
  const found = steers.exec(text);
  hold(found === null, () => `a sign that steers is printed: ${around(text, found?.index ?? 0)}`);
  for (const slip of slips) {
    const at = text.indexOf(slip);
    hold(at === -1 || said.includes(slip), () => `"${slip}" is printed: ${around(text, at)}`);
  }
}

/** Names that may be null: not told, not measured, not applicable. Any other null was NaN or Infinity. */
export type Nullable = ReadonlySet<string>;

/** JSON, or one result a line. */
export function holdJson(text: string, byLine: boolean, nullable: Nullable): void {
  for (const part of byLine ? text.split('\n').filter((line) => line !== '') : [text]) {
    holdNumbers(JSON.parse(part), '', nullable);
  }
}

function holdNumbers(value: unknown, name: string, nullable: Nullable): void {
  hold(
    value !== null || nullable.has(name),
    () => `JSON: ${name} is null; if it may be, tests/fuzz/nullable.ts says so`,
  );
  if (typeof value !== 'object' || value === null) return;
  for (const [key, each] of Object.entries(value)) {
    holdNumbers(each, Array.isArray(value) ? name : key, nullable);
  }
}

/** RFC 4180, rows of one length, no cell that a spreadsheet would calculate. */
export function holdCsv(text: string): void {
  const rows = parseCsv(text);
  for (const cell of rows.flat()) {
    const starts =
      /^\s*[=+@\uff1d\uff0b\uff0d\uff20]/.test(cell) || (/^\s*-/.test(cell) && !/^-[\d.]+$/.test(cell));
    hold(!starts, () => `CSV: a cell is a formula: ${JSON.stringify(cell.slice(0, 80))}`);
  }
}

/** No tag that Markdown would pass to a page. */
export function holdMarkdown(text: string): void {
  const bare = text.replace(/\\[!-/:-@[-`{-~]/g, '').replace(/<br>/g, '');
  const at = bare.search(/<[A-Za-z/!?]|\]\(/);
  hold(at === -1, () => `Markdown: markup is not escaped: ${around(bare, at)}`);
}

const shapes = [
  'svg',
  'title',
  'desc',
  'g',
  'path',
  'circle',
  'text',
  'defs',
  'pattern',
  'rect',
  'line',
  'image',
];
const tags = new Set([
  ...[
    'html',
    'head',
    'meta',
    'title',
    'style',
    'body',
    'article',
    'header',
    'h1',
    'h2',
    'h3',
    'div',
    'p',
    'b',
  ],
  ...[
    'span',
    'ul',
    'li',
    'table',
    'thead',
    'tbody',
    'tfoot',
    'tr',
    'td',
    'th',
    'figure',
    'figcaption',
    ...shapes,
  ],
]);

/** Only our own elements, well-formed, nothing that runs or fetches. */
export function holdSvg(text: string): void {
  for (const { name, attributes } of readSvg(text).elements) {
    hold(shapes.includes(name), () => `SVG: an element ${name}`);
    for (const [key, value] of Object.entries(attributes)) holdAttribute(key, value);
  }
}

function holdAttribute(name: string, value: string): void {
  hold(!/^on/i.test(name), () => `an attribute that runs: ${name}`);
  hold(
    !/href|^src$|^action$|^style$/i.test(name) || /^(?:#|data:image\/(?:jpeg|png);)/.test(value),
    () => `an attribute that fetches: ${name}=${value.slice(0, 80)}`,
  );
}

interface Node {
  readonly nodeName: string;
  readonly attrs?: readonly { readonly name: string; readonly value: string }[];
  readonly childNodes?: readonly Node[];
}

/** As a browser parses it. `more`: further elements. */
export function holdHtml(text: string, more: readonly string[] = []): void {
  const errors: string[] = [];
  const page = parseHtml(text, { onParseError: ({ code }) => errors.push(code) });
  hold(errors.length === 0, () => `HTML: ${errors.join(', ')}`);
  const allowed = new Set([...tags, ...more]);
  const open: Node[] = [page];
  for (let node = open.pop(); node !== undefined; node = open.pop()) {
    const { nodeName, attrs = [], childNodes = [] } = node;
    hold(nodeName.startsWith('#') || allowed.has(nodeName), () => `HTML: an element ${nodeName}`);
    for (const { name, value } of attrs) holdAttribute(name, value);
    open.push(...childNodes);
  }
}
