/** The columns of a backlog's table: their names, which stay, what they hold and how wide a screen draws them. */

/** How a cell is printed: `length` to the quarter inch, `distance` with decimals, `chance` as percent, all else as it is. */
export type Kind = 'text' | 'count' | 'length' | 'distance' | 'chance';

export interface Column {
  readonly name: string;
  readonly about: string;
  readonly kind: Kind;
  /** Columns of a screen it would like to have. */
  readonly wide: number;
}

/** All of them, in the order in which they stand. Names are for scripts: none is ever changed or used again for something else. */
export const columns = [
  { name: 'order', about: 'number or name of the order', kind: 'text', wide: 12 },
  { name: 'customer', about: 'name of the customer', kind: 'text', wide: 10 },
  { name: 'horse', about: 'name of the horse', kind: 'text', wide: 10 },
  { name: 'file', about: 'the file it came from', kind: 'text', wide: 24 },
  { name: 'document', about: 'which order of that file, from 1', kind: 'count', wide: 8 },
  { name: 'line', about: 'line of that file on which the order starts', kind: 'count', wide: 5 },
  { name: 'due', about: 'day on which it is due', kind: 'text', wide: 10 },
  { name: 'quantity', about: 'how many', kind: 'count', wide: 8 },
  {
    name: 'verdict',
    about:
      'sized: the best spec is good at the elbow; tight: it passes, but is not good there; none fits: every spec is ruled out; faulty: the order could not be read',
    kind: 'text',
    wide: 9,
  },
  { name: 'rigging', about: 'where the ring hangs, as the order says it', kind: 'text', wide: 12 },
  { name: 'room', about: 'room behind the elbow', kind: 'distance', wide: 7 },
  { name: 'room-sd', about: 'its spread', kind: 'distance', wide: 7 },
  {
    name: 'style',
    about:
      'straight, high-flare or low-flare; this and what follows are of the first in the ranking (quote, ticket, materials and schedule take what the customer asked for, if it passes)',
    kind: 'text',
    wide: 10,
  },
  { name: 'strands', about: 'body cords side by side', kind: 'count', wide: 7 },
  { name: 'layers', about: '1 single, 2 double', kind: 'count', wide: 6 },
  { name: 'width', about: 'width of the body at full spread', kind: 'length', wide: 8 },
  { name: 'buckle-width', about: 'width of the body at the buckle', kind: 'length', wide: 12 },
  {
    name: 'flare-start',
    about: 'how far below the buckle a roper begins to widen; empty for a straight',
    kind: 'length',
    wide: 11,
  },
  { name: 'buckle', about: 'the buckle by its name in the shop file', kind: 'text', wide: 11 },
  {
    name: 'length',
    about: 'finished length, outside to outside of the hardware',
    kind: 'length',
    wide: 7,
  },
  {
    name: 'length-basis',
    about: 'taped: ring to ring was measured; provisional: do not cut until it is',
    kind: 'text',
    wide: 12,
  },
  { name: 'clearance', about: 'elbow clearance', kind: 'distance', wide: 9 },
  { name: 'clearance-sd', about: 'its spread', kind: 'distance', wide: 12 },
  {
    name: 'chance',
    about: 'chance that the clearance is at least the floor, 0 to 1',
    kind: 'chance',
    wide: 6,
  },
  { name: 'latigo-run', about: 'latigo left on each side', kind: 'distance', wide: 10 },
  { name: 'because', about: 'why this spec comes before the next one', kind: 'text', wide: 30 },
  { name: 'measure-first', about: 'what to measure next, and how', kind: 'text', wide: 24 },
  { name: 'reason', about: 'when none fits: why the first spec is ruled out', kind: 'text', wide: 30 },
  {
    name: 'same-number-as',
    about: 'file and line of the first order with the same number, if this is a later one',
    kind: 'text',
    wide: 20,
  },
  {
    name: 'problem',
    about: 'when faulty: line, column and key of the first fault, what stands there, what should',
    kind: 'text',
    wide: 30,
  },
  { name: 'doubts', about: 'where its tapes disagree: what to measure again', kind: 'text', wide: 30 },
] as const satisfies readonly Column[];

export type ColumnName = (typeof columns)[number]['name'];

/** What the screen shows when nobody chooses: 80 columns. */
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

/** What a page of Markdown shows when nobody chooses. */
export const pageColumns: readonly ColumnName[] = [
  'order',
  'customer',
  'horse',
  'verdict',
  'style',
  'strands',
  'width',
  'length',
  'length-basis',
  'buckle',
  'clearance',
  'chance',
  'reason',
  'problem',
];

/** All names. */
export const columnNames: readonly ColumnName[] = columns.map(({ name }) => name);

const byName: ReadonlyMap<string, Column> = new Map(columns.map((column) => [column.name, column]));

/** The column of a name. */
export const columnOf = (name: ColumnName): Column => byName.get(name) as Column;
