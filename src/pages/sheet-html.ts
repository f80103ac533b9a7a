/** Papers as one self-contained HTML file. */
import { element, html, htmlPage } from './html.ts';
import { voices } from './look.ts';
import { asPaper, type Block, type Sheet } from './sheet.ts';
import { glue } from '../units/text.ts';
import { sheetCss } from './sheet-css.ts';

/** Each paper starts a printed page. */
export function sheetsHtml(sheets: readonly Sheet[]): string {
  const [first] = sheets;
  const title = sheets.length === 1 && first !== undefined ? first.title : `${String(sheets.length)} papers`;
  return htmlPage({ title, css: sheetCss, body: sheets.map(asPaper).map(sheetText).join('\n') });
}

/** Keeps a number with its unit and fraction. */
const told = (text: string): string => glue(html(text));

function sheetText({ title, shop, about, notice, blocks, rules, cautions }: Sheet): string {
  const head = element('h1', told(title)) + element('div', told(shop), 'shop');
  return element(
    'article',
    [
      element('div', '', 'strands'),
      element('header', head, 'head'),
      ...about.map((line) => element('p', told(line), 'about')),
      notice === undefined ? '' : noticeText(notice),
      ...blocks.map(blockText),
      rules.length === 0 ? '' : element('div', paragraphs(rules), 'rules'),
      cautions.length === 0 ? '' : element('p', told(cautions.join(' ')), 'cautions'),
    ].map((part) => (part === '' ? '' : `\n${part}`)),
    'sheet',
  );
}

function noticeText(notice: string): string {
  const { loud, rest } = voices(notice);
  return element('p', `${element('b', told(loud))} ${element('span', told(rest))}`, 'notice');
}

const paragraphs = (texts: readonly string[]): string[] => texts.map((text) => element('p', told(text)));
const items = (texts: readonly string[]): string[] => texts.map((text) => element('li', told(text)));

function blockText(block: Block): string {
  switch (block.kind) {
    case 'heading':
      return element('h2', told(block.text));
    case 'text':
      return element('p', told(block.text), block.tone ?? '');
    case 'list':
      return element('ul', items(block.items), 'plain');
    case 'boxes':
      return element('ul', items(block.items), 'boxes');
    case 'blanks':
      return element(
        'div',
        block.labels.map((label) => element('div', told(label))),
        'blanks',
      );
    case 'pairs':
      return element(
        'table',
        element(
          'tbody',
          block.rows.map((row) => rowText(row.map((cell) => ({ cell })))),
        ),
        'pairs',
      );
    case 'table':
      return tableText(block);
    case 'beside':
      return element('div', [element('figure', block.picture.svg), ...block.blocks.map(blockText)], 'beside');
  }
}

interface Cell {
  readonly cell: string;
  readonly align?: 'right' | undefined;
}

const rowText = (cells: readonly Cell[], { name = 'td', kind = '' } = {}): string =>
  element(
    'tr',
    cells.map(({ cell, align }) => element(name, told(cell), align ?? '')),
    kind,
  );

function tableText({ columns, rows, foot = [], total, half }: Extract<Block, { kind: 'table' }>): string {
  const cells = (row: readonly string[]): Cell[] =>
    columns.map(({ align }, i) => ({ cell: row[i] ?? '', align }));
  const sums = foot.map((row, i) => rowText(cells(row), { kind: i === total ? 'total' : '' }));
  return element(
    'table',
    [
      columns.every(({ head }) => head === '')
        ? ''
        : element('thead', rowText(cells(columns.map(({ head }) => head)), { name: 'th' })),
      element(
        'tbody',
        rows.map((row) => rowText(cells(row))),
      ),
      sums.length === 0 ? '' : element('tfoot', sums),
    ],
    half === true ? 'half' : '',
  );
}
