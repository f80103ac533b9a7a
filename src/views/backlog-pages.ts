/** A backlog for people: a screen table, or a Markdown page. */
import type { ColumnName } from '../work/columns.ts';
import { inWords, names } from '../words/names.ts';
import type { Cells } from '../work/row.ts';
import { cautions } from '../numbers/cautions.ts';
import { phraseOf, type BacklogPrinter } from './backlog-data.ts';
import { visible } from '../units/clean.ts';
import { escaped } from '../pages/markdown.ts';
import { penFor, type Pen } from '../pages/pen.ts';
import { decimals, formatLength } from '../units/print.ts';
import { chanceText, wrap, type Units } from '../units/text.ts';
import type { ReportOptions } from '../pages/page.ts';
import { columns, fit, padRight } from '../units/width.ts';

type Look = Pick<ReportOptions, 'units' | 'width' | 'color'>;

interface Drawn {
  readonly name: ColumnName;
  readonly wide: number;
  readonly right: boolean;
}

/** Columns wider than their heads. */
const wide: Readonly<Partial<Record<ColumnName, number>>> = {
  order: 12,
  customer: 10,
  horse: 10,
  file: 24,
  line: 5,
  due: 10,
  verdict: 9,
  rigging: 12,
  room: 7,
  style: 10,
  width: 8,
  buckle: 11,
  length: 8,
  becauseOf: 30,
  ask: 24,
  reason: 30,
  sameNumberAs: 20,
  problem: 30,
};

/** Default on screen: fits 80 columns. */
export const screenColumns: readonly ColumnName[] = [
  'order',
  'customer',
  'verdict',
  'style',
  'strands',
  'length',
  'buckle',
  'chance',
];

/** Default in Markdown. */
export const pageColumns: readonly ColumnName[] = [
  'order',
  'customer',
  'horse',
  'verdict',
  'style',
  'strands',
  'width',
  'length',
  'lengthBasis',
  'buckle',
  'clearance',
  'chance',
  'reason',
  'problem',
];

/** Less is unreadable. */
const NARROWEST = 6;

const GUESSED = 'A length with "?": ring to ring is not taped, do not cut. ';

/** `told` adds a line on why a row has no spec. */
export function backlogTable(chosen: readonly ColumnName[], told: boolean, look: Look): BacklogPrinter {
  const drawn = widthsFor(chosen, look.width);
  const pen = penFor(look.color);
  const marks = chosen.includes('length') && !chosen.includes('lengthBasis');
  const cellOf = (name: ColumnName, cells: Cells): string => {
    const text = textOf(name, cells, look.units);
    return marks && name === 'length' && cells.lengthBasis === 'provisional' ? `${text}?` : text;
  };
  const line = (cell: (column: Drawn) => string): string =>
    drawn
      .map((column, i) => placed(cell(column), column, i === drawn.length - 1))
      .join(' ')
      .trimEnd();
  return {
    head: `${pen.strong(line(({ name }) => inWords(name)))}\n`,
    row: (cells) => {
      const text = line(({ name }) => visible(cellOf(name, cells)) || '-');
      const why = told ? whyLines(cells, look) : [];
      return [painted(text, cells, pen), ...why, ''].join('\n');
    },
    before: '',
    between: '',
    foot: (sized) =>
      sized
        ? `\n${wrap(`${marks ? GUESSED : ''}Keep in mind: ${cautions.join(' ')}`, look.width).join('\n')}\n`
        : '',
  };
}

function placed(text: string, { wide, right }: Drawn, last: boolean): string {
  const cut = fit(text, wide);
  if (right) return ' '.repeat(Math.max(0, wide - columns(cut))) + cut;
  return last ? cut : padRight(cut, wide);
}

function painted(text: string, { verdict }: Cells, pen: Pen): string {
  if (verdict === 'sized') return text;
  return pen.signed(verdict === 'tight' ? '~' : 'x', text);
}

/** Errors, why nothing fits, repeated numbers. */
function whyLines(cells: Cells, { width, units }: Look): string[] {
  const place = `${textOf('file', cells, units)}:${textOf('line', cells, units)}`;
  const problem = textOf('problem', cells, units);
  const same = textOf('sameNumberAs', cells, units);
  const texts = [
    problem === '' ? '' : `${textOf('file', cells, units)}: ${problem}`,
    textOf('reason', cells, units),
    same === '' ? '' : `${place}: the same number as ${same}`,
  ];
  return texts.filter((text) => text !== '').flatMap((text) => wrap(text, width, { first: 4, rest: 6 }));
}

/** Narrows the widest column until the line fits. */
function widthsFor(chosen: readonly ColumnName[], width: number): Drawn[] {
  const all = chosen.map((name) => {
    const { unit } = names[name];
    return {
      name,
      wide: Math.max(wide[name] ?? 0, inWords(name).length),
      right: unit === 'n' || unit === 'chance',
    };
  });
  const over = (): number => all.reduce((sum, { wide }) => sum + wide + 1, -1) - width;
  while (over() > 0) {
    const widest = all.reduce((a, b) => (b.wide > a.wide ? b : a));
    if (widest.wide <= NARROWEST) break;
    widest.wide -= 1;
  }
  return all;
}

/** A table, then the cautions. */
export const backlogMarkdown = (chosen: readonly ColumnName[], units: Units): BacklogPrinter => ({
  head: `# Backlog\n\n${row(chosen.map(inWords))}${row(chosen.map(() => '---'))}`,
  row: (cells) => row(chosen.map((name) => escaped(textOf(name, cells, units)))),
  before: '',
  between: '',
  foot: (sized) =>
    sized ? `\n## Keep in mind\n\n${cautions.map((text) => `- ${escaped(text)}\n`).join('')}` : '',
});

const row = (cells: readonly string[]): string => `| ${cells.join(' | ')} |\n`;

/** With units; "" when empty. */
function textOf(name: ColumnName, cells: Cells, units: Units): string {
  const cell = cells[name] ?? null;
  if (cell === null || typeof cell === 'string') return cell ?? '';
  return typeof cell === 'number' ? numberText(name, cell, units) : phraseOf(name, cell, units);
}

/** Lengths we cut to, in quarters; the others have decimals. */
const tied: ReadonlySet<ColumnName> = new Set(['width', 'buckleWidth', 'flareStart', 'length']);

function numberText(name: ColumnName, value: number, units: Units): string {
  switch (names[name].unit) {
    case 'in':
      return formatLength(value, units, tied.has(name) ? 'finished' : 'computed');
    case 'chance':
      return chanceText(value);
    default:
      return decimals(value, 0);
  }
}
