/** Papers on the screen. */
import {
  GAP,
  heading,
  INDENT,
  item,
  LEAST,
  markOf,
  pageFor,
  pageText,
  sentence,
  title,
  type Mark,
  type Page,
  type ReportOptions,
} from './page.ts';
import { rowItems } from './row-items.ts';
import { visible } from '../units/clean.ts';
import type { Block, ItemMark, Sheet, TableBlock } from './sheet.ts';
import { wrap } from '../units/text.ts';
import { columns, padRight } from '../units/width.ts';

type Look = Pick<ReportOptions, 'color' | 'units' | 'width'>;

/** Cautions they share come once. Loads the table library only when needed. */
export async function sheetsScreen(sheets: readonly Sheet[], options: Look): Promise<string> {
  const isWide = (block: Block): boolean => block.kind === 'table' && block.noted !== true;
  if (!sheets.some(({ blocks }) => blocks.some(isWide))) return screenOf(sheets, options);
  return screenOf(sheets, options, (await import('./sheet-table.ts')).tableLines);
}

type TableLines = (table: TableBlock, page: Page) => string[];

interface Screen extends Page {
  readonly tables: TableLines | undefined;
}

/** `tables` lays out a paper's tables. */
export function screenOf(sheets: readonly Sheet[], options: Look, tables?: TableLines): string {
  const page = { ...pageFor(options), tables };
  const bodies = sheets.map((sheet) =>
    sheet.lead === undefined ? paperLines(sheet, page) : counterLines(sheet, sheet.lead, page),
  );
  return pageText([
    ...bodies.flatMap((lines, i) => (i === 0 ? lines : ['', '', ...lines])),
    ...footLines(sheets, page),
  ]);
}

/** Hints for counter screens, all cautions for papers. */
function footLines(sheets: readonly Sheet[], page: Screen): string[] {
  const feet = sheets.flatMap(({ foot = [] }) => (foot.length === 0 ? [] : [foot]));
  const foot = (feet[0] ?? []).filter((line) => feet.every((other) => other.includes(line)));
  const cautions = new Set(sheets.flatMap((sheet) => (sheet.foot === undefined ? sheet.cautions : [])));
  return [
    ...foot.flatMap((line) => sentence(page, line)),
    ...(cautions.size === 0 ? [] : ['', ...sentence(page, `Keep in mind: ${[...cautions].join(' ')}`)]),
  ];
}

/** Lines of a counter screen. */
const SCREEN = 24;

/** Answer on line 1; drops spare blocks, last first, to fit. */
function counterLines({ title: name, foot = [], blocks }: Sheet, lead: string, page: Screen): string[] {
  const room = SCREEN - foot.flatMap((line) => sentence(page, line)).length;
  const first = sentence(page, `${name}: ${lead}`).map((line, i) =>
    i === 0 ? line.replace(visible(name), page.pen.strong(visible(name))) : line,
  );
  const linesOf = (kept: readonly Block[]): string[] => [
    ...first,
    ...kept.flatMap((block) => [...(block.apart === true ? [''] : []), ...blockLines(block, page, 0)]),
  ];
  let kept = blocks;
  while (linesOf(kept).length > room) {
    const last = kept.findLastIndex(({ spare }) => spare === true);
    if (last < 0) break;
    kept = kept.filter((_, i) => i !== last);
  }
  return linesOf(kept);
}

function paperLines({ title: name, shop, about, notice, blocks, rules }: Sheet, page: Screen): string[] {
  const warned = { lead: '! ', paint: (text: string) => page.pen.signed('x', text) };
  return [
    ...title(page, name),
    ...[shop, ...about].flatMap((line) => sentence(page, line)),
    ...(notice === undefined ? [] : ['', ...item(page, notice, warned)]),
    ...blocks.flatMap((block) => blockLines(block, page, INDENT)),
    ...(rules.length === 0 ? [] : ['', ...rules.flatMap((rule) => sentence(page, rule))]),
  ];
}

function blockLines(block: Block, page: Screen, indent: number): string[] {
  switch (block.kind) {
    case 'heading':
      return heading(page, block.text);
    case 'text':
      return sentence(page, block.text, indent);
    case 'list':
      return block.items.flatMap((text, i) => item(page, text, itemMark(block.mark, i, page)));
    case 'boxes':
      return block.items.flatMap((text) => item(page, text, { lead: '  [ ] ', paint: (lead) => lead }));
    case 'blanks':
      return block.labels.flatMap((label) => sentence(page, `${label} ${'_'.repeat(24)}`, 2));
    case 'pairs':
      return pairLines(block.rows, page);
    case 'beside':
      return block.blocks.flatMap((each) => blockLines(each, page, indent));
    case 'table':
      return block.noted === true || page.tables === undefined
        ? notedLines(block, page)
        : page.tables(block, page);
  }
}

function itemMark(mark: ItemMark | undefined, place: number, page: Page): Mark | undefined {
  if (mark === undefined) return undefined;
  if (mark !== 'number') return markOf(mark, page, INDENT);
  return { lead: `  ${String(place + 1)} `, paint: (lead) => lead };
}

/** Rows indented, notes wrapped; items when too narrow. */
function notedLines(table: TableBlock, page: Page): string[] {
  const { columns: heads, rows } = table;
  const texts = rows.map((row) => row.map(visible));
  const widths = heads
    .slice(0, -1)
    .map(({ head, least = 0 }, i) =>
      Math.max(least, columns(head) - (i === 0 ? INDENT : 0), ...texts.map((row) => columns(row[i] ?? ''))),
    );
  const at = widths.reduce((sum, width) => sum + width + GAP, INDENT);
  if (page.width - at < LEAST) return rowItems(table, page);
  const head = heads.map(({ head: text }, i) =>
    padRight(text, (widths[i] ?? 0) + GAP + (i === 0 ? INDENT : 0)),
  );
  const named = heads.some(({ head: text }) => text !== '');
  return [
    ...(named ? [page.pen.strong(head.join('').trimEnd())] : []),
    ...texts.flatMap((row) => {
      const start = widths.map((width, i) => {
        const text = row[i] ?? '';
        return (
          (heads[i]?.align === 'right' ? ' '.repeat(width - columns(text)) + text : padRight(text, width)) +
          ' '.repeat(GAP)
        );
      });
      const [first = '', ...more] = wrap(row.at(-1) ?? '', page.width, at);
      return [(' '.repeat(INDENT) + start.join('') + first.slice(at)).trimEnd(), ...more];
    }),
  ];
}

/** Labels in one column, values wrapped beside. */
function pairLines(rows: readonly (readonly [string, string])[], { width, pen }: Page): string[] {
  const labels = Math.max(...rows.map(([label]) => columns(visible(label)))) + 4;
  return rows.flatMap(([label, value]) => {
    const [first = '', ...rest] = wrap(value, width, labels);
    return [`  ${pen.quiet(padRight(visible(label), labels - 2))}${first.slice(labels)}`, ...rest];
  });
}
