/** Result names and columns of every table. */
import { columnNames } from '../../../src/work/columns.ts';
import { list } from '../../../src/pages/markdown.ts';
import { askColumns } from '../../../src/views/ask-data.ts';
import { checkColumns } from '../../../src/views/check-data.ts';
import { materialsColumns } from '../../../src/views/materials-data.ts';
import { photoColumns } from '../../../src/views/photo-data.ts';
import { rulesColumns } from '../../../src/views/rules-data.ts';
import { quoteColumns } from '../../../src/views/quote-data.ts';
import { scheduleColumns } from '../../../src/views/schedule-data.ts';
import { sizeColumns } from '../../../src/views/size-data.ts';
import { errorColumns } from '../../../src/words/backlog-words.ts';
import { headOf, names, type Name, type Named } from '../../../src/words/names.ts';

/** By the command that prints it. */
export const tables: Readonly<Record<string, readonly Name[]>> = {
  size: sizeColumns,
  check: checkColumns,
  ask: askColumns,
  photo: photoColumns,
  rules: rulesColumns,
  quote: quoteColumns,
  materials: materialsColumns,
  schedule: scheduleColumns,
  backlog: columnNames,
  'backlog --errors': errorColumns,
};

const code = (texts: readonly string[]): string => texts.map((text) => `\`${text}\``).join(' ');

export const csvColumns = (): string =>
  list(Object.entries(tables).map(([command, columns]) => `**${command}**: ${code(columns.map(headOf))}`));

const units = {
  '': '',
  n: '',
  yes: '',
  in: 'in',
  minutes: '',
  money: '',
  day: '',
  chance: '0 to 1',
  share: '0 to 1',
};

/** Explained once for all. */
const flat: ReadonlySet<string> = new Set(['inches', 'sd', 'text', 'mean', 'standardError']);

/** What `backlog --columns help` does not explain: unit, meaning, place in JSON. */
export const nameList = (): string =>
  list(
    (Object.entries(names) as [Name, Named][]).flatMap(([name, { unit, about, path }]) => {
      if (about === '' || (columnNames as readonly Name[]).includes(name)) return [];
      const within = path.length > 1 && !flat.has(path[1] ?? '') ? `, in JSON \`${path.join('.')}\`` : '';
      return [`\`${name}\`${within}${units[unit] === '' ? '' : ` (${units[unit]})`}: ${about}`];
    }),
  );
