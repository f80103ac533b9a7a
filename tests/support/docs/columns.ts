/** The columns of every table for spreadsheets, from the lists that print them. */
import { columns, pageColumns, screenColumns } from '../../../src/work/columns.ts';
import { list } from '../../../src/pages/markdown.ts';
import { askColumns } from '../../../src/views/ask-csv.ts';
import { errorColumns } from '../../../src/words/backlog-words.ts';
import { checkColumns } from '../../../src/views/check-csv.ts';
import { materialsColumns } from '../../../src/views/materials-csv.ts';
import { photoColumns } from '../../../src/views/photo-csv.ts';
import { quoteColumns } from '../../../src/views/quote-csv.ts';
import { scheduleColumns } from '../../../src/views/schedule-csv.ts';
import { sizeColumns } from '../../../src/views/size-csv.ts';

type Pair = readonly [name: string, about: string];

const pairs = (entries: readonly { readonly name: string; readonly about: string }[]): Pair[] =>
  entries.map(({ name, about }) => [name, about]);

const tables: Readonly<Record<string, readonly Pair[]>> = {
  size: pairs(sizeColumns),
  check: pairs(checkColumns),
  photo: photoColumns,
  ask: Object.entries(askColumns),
  quote: Object.entries(quoteColumns),
  materials: materialsColumns,
  schedule: scheduleColumns,
};

const code = (names: readonly string[]): string => names.map((name) => `\`${name}\``).join(' ');
const told = ([name, about]: Pair): string => `\`${name}\` ${about}`;

/** Columns of `backlog`, each with what it holds. */
export const backlogColumns = (): string =>
  [
    list(pairs(columns).map(told)),
    `On a screen: ${code(screenColumns)}. In Markdown: ${code(pageColumns)}. \`--errors FILE\`: ${code(errorColumns)}.`,
  ].join('\n\n');

/** Columns of the other commands in order; what a column holds is told once. */
export function csvColumns(): string {
  const known = new Set(pairs(columns).map(([name, about]) => `${name} ${about}`));
  const once = ([name, about]: Pair): string => {
    const key = `${name.replace(/_in$/, '').replaceAll('_', '-')} ${about}`;
    if (known.has(key)) return `\`${name}\``;
    known.add(key);
    return told([name, about]);
  };
  return list(
    Object.entries(tables).map(([command, table]) => `**${command}**: ${table.map(once).join('; ')}.`),
  );
}
