/** docs/columns.md: the columns of a backlog, from the list itself. */
import { columns, pageColumns, screenColumns, type Kind } from '../../../src/backlog/columns.ts';
import { document, table } from '../../../src/report/markdown.ts';
import { errorColumns } from '../../../src/report/backlog-words.ts';

const kinds: Readonly<Record<Kind, string>> = {
  text: 'text',
  count: 'whole number',
  length: 'inches',
  distance: 'inches',
  chance: '0 to 1',
};

const listed = (names: readonly string[]): string => names.map((name) => `\`${name}\``).join(', ');

/** Text of docs/columns.md. */
export const columnsDoc = (): string =>
  document([
    '# Columns of a backlog',
    '`cinchwright backlog` prints one row an order, in the order of the input. Names are the same in every format and stay; none is used again for something else. `--columns a,b,c` chooses and orders them.',
    'In JSON and NDJSON a cell without a value is `null`, in CSV it is empty. Numbers have at most four decimals; lengths are inches, whatever `--units` says: that is for the table and for Markdown.',
    table(
      ['Column', 'Holds', 'What it is'],
      columns.map(({ name, kind, about }) => [`\`${name}\``, kinds[kind], about]),
    ),
    `When nobody chooses, the table shows ${listed(screenColumns)}, and under a row why there is no spec or which order has the same number; Markdown shows ${listed(pageColumns)}; the others show all.`,
    '## JSON',
    '`{ "schema": "cinchwright/backlog/1", "results": [...], "cautions": [...] }`, one result an order; NDJSON has the results alone, one a line.',
    '## The table of faults',
    `\`--errors FILE\` writes one row a fault, to send back: ${listed(errorColumns)}.`,
  ]);
