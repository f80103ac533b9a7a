/** The columns of every table for spreadsheets, from the lists that print them. */
import { columns, pageColumns, screenColumns } from '../../../src/backlog/columns.ts';
import { list } from '../../../src/report/markdown.ts';
import { askColumns } from '../../../src/report/ask-csv.ts';
import { errorColumns } from '../../../src/report/backlog-words.ts';
import { checkColumns } from '../../../src/report/check-csv.ts';
import { materialsColumns } from '../../../src/report/materials-csv.ts';
import { photoColumns } from '../../../src/report/photo-csv.ts';
import { scheduleColumns } from '../../../src/report/schedule-csv.ts';
import { sizeColumns } from '../../../src/report/size-csv.ts';

type Pair = readonly [name: string, about: string];

const pairs = (entries: readonly { readonly name: string; readonly about: string }[]): Pair[] =>
  entries.map(({ name, about }) => [name, about]);

const tables: Readonly<Record<string, readonly Pair[]>> = {
  size: pairs(sizeColumns),
  check: pairs(checkColumns),
  photo: photoColumns,
  ask: Object.entries(askColumns),
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
