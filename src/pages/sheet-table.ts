/** Tables on the screen: one column wraps, totals below a line. */
import Table from 'cli-table3';
import { visible } from '../units/clean.ts';
import { GAP, INDENT, LEAST, type Page } from './page.ts';
import { rowItems } from './row-items.ts';
import type { TableBlock } from './sheet.ts';
import { columns } from '../units/width.ts';

const none = Object.fromEntries(
  'top top-mid top-left top-right bottom bottom-mid bottom-left bottom-right left left-mid mid mid-mid right right-mid middle'
    .split(' ')
    .map((name) => [name, '']),
);

/** Undefined when too narrow for columns. */
function gridLines(table: TableBlock, width: number): { head: string[]; body: string[] } | undefined {
  const { columns: heads, rows, foot = [] } = table;
  const wide = widthsFor(table, width - INDENT);
  if (wide === undefined) return undefined;
  const lines = (some: readonly (readonly string[])[]): string[] => {
    if (some.length === 0) return [];
    const grid = new Table({
      chars: none,
      style: { 'padding-left': 0, 'padding-right': GAP, head: [], border: [] },
      colWidths: wide.map((each) => each + GAP),
      colAligns: heads.map(({ align }) => align ?? 'left'),
      wordWrap: true,
    });
    grid.push(...some.map((row) => heads.map((_, i) => visible(row[i] ?? ''))));
    return String(grid)
      .split('\n')
      .map((line) => `${' '.repeat(INDENT)}${line}`.trimEnd());
  };
  const named = heads.some(({ head }) => head !== '');
  const rule = `${' '.repeat(INDENT)}${'-'.repeat(wide.reduce((sum, each) => sum + each + GAP, -GAP))}`;
  return {
    head: named ? lines([heads.map(({ head }) => head)]) : [],
    body: [...lines(rows), ...(foot.length === 0 ? [] : [rule, ...lines(foot)])],
  };
}

/** The first column shrinks. */
function widthsFor(
  { columns: heads, rows, foot = [], even }: TableBlock,
  room: number,
): number[] | undefined {
  const cells = [heads.map(({ head }) => head), ...rows, ...foot];
  const widths = heads.map(({ least = 0 }, i) =>
    Math.max(least, ...cells.map((row) => columns(visible(row[i] ?? '')))),
  );
  const [own = 0, ...others] = widths;
  const share = Math.floor((room - own) / others.length) - GAP;
  if (even === true) return share < LEAST ? undefined : [own, ...others.map((each) => Math.min(each, share))];
  const left = room - others.reduce((sum, each) => sum + each + GAP, 0);
  return left < Math.min(LEAST, own) ? undefined : [Math.min(own, left), ...others];
}

/** In columns, else several tables, else items. */
export function tableLines(table: TableBlock, page: Page): string[] {
  const grid = gridLines(table, page.width);
  if (grid !== undefined) return [...grid.head.map(page.pen.quiet), ...grid.body];
  const parts = table.even === true ? partsOf(table, page.width - INDENT) : [];
  if (parts.length < 2) return rowItems(table, page);
  return parts.flatMap((part, i) => [...(i === 0 ? [] : ['']), ...tableLines(part, page)]);
}

/** As many even columns as fit beside the labels, the rest below. */
function partsOf(table: TableBlock, room: number): TableBlock[] {
  const [head, ...heads] = table.columns;
  const own = Math.max(...table.rows.map(([label = '']) => columns(visible(label))));
  const most = Math.floor((room - own) / (LEAST + GAP));
  if (head === undefined || most < 1) return [];
  const size = Math.ceil(heads.length / Math.ceil(heads.length / most));
  return Array.from({ length: Math.ceil(heads.length / size) }, (_, i) => {
    const [from, to] = [i * size, (i + 1) * size];
    return {
      ...table,
      columns: [head, ...heads.slice(from, to)],
      rows: table.rows.map(([label = '', ...cells]) => [label, ...cells.slice(from, to)]),
    };
  });
}
