/** Summary, error table and column list of a backlog. */
import { columnNames } from '../work/columns.ts';
import { total, type Summary } from '../work/summary.ts';
import type { Row } from '../work/row.ts';
import { plural } from '../units/phrase.ts';
import { csvText } from '../pages/csv.ts';
import { wrap } from '../units/text.ts';
import { names, type Name } from './names.ts';

/** "12 orders: 8 sized, 1 tight, 1 no fit, 2 with errors.", and hints. */
export function summaryText(summary: Summary, errors: string | undefined): string {
  const { orders, sameNumber, doubtful, provisional, welfare } = summary;
  const { sized, tight, faulty } = orders;
  const none = orders['none fits'];
  const all = total(summary);
  const counts = `${String(sized)} sized, ${String(tight)} tight, ${String(none)} no fit, ${String(faulty)} with errors`;
  const lines = [`${plural(all, 'order')}: ${counts}.`];
  if (sameNumber > 0) {
    lines.push(
      `${plural(sameNumber, 'order repeats', 'orders repeat')} an earlier number: see column sameNumberAs.`,
    );
  }
  if (welfare > 0) {
    lines.push(
      `Sore, or ask somebody first: ${plural(welfare, 'order')}. See the column welfare before you tie.`,
    );
  }
  if (provisional > 0) {
    lines.push(
      `Do not cut until ring to ring is taped: ${plural(provisional, 'order')}. See the column lengthBasis.`,
    );
  }
  if (doubtful > 0) {
    lines.push(`Measure again for ${plural(doubtful, 'order')}, whose tapes disagree: see column remarks.`);
  }
  if (faulty > 0 && errors === undefined) lines.push('All errors in one table: --errors FILE.');
  return `${lines.join('\n')}\n`;
}

export const errorColumns = [
  'order',
  'file',
  'document',
  'line',
  'column',
  'key',
  'found',
  'expected',
  'hint',
] as const satisfies readonly Name[];

/** Head of the error table. */
export const errorsHead = (): string => csvText([errorColumns]);

/** One row per error. */
export const errorRows = ({ cells, problems }: Row): string =>
  csvText(
    problems.map(({ file, line, column, path, found, expected, hint }) => [
      text(cells.order),
      file,
      typeof cells.document === 'number' ? cells.document : undefined,
      line,
      column,
      path === '' ? undefined : path,
      found,
      expected,
      hint,
    ]),
  );

const text = (cell: unknown): string | undefined => (typeof cell === 'string' ? cell : undefined);

/** The list of columns. */
export function columnsText(width: number): string {
  const pad = Math.max(...columnNames.map((name) => name.length)) + 2;
  const lines = columnNames.flatMap((name) => {
    const [first = '', ...rest] = wrap(names[name].about, width, pad);
    return [name.padEnd(pad) + first.trimStart(), ...rest];
  });
  return `${lines.join('\n')}\n`;
}
