/** Keys of each command's JSON that may be null: not told, not measured, or without meaning there. Whatever else is null was no number. */
import { columnNames } from '../../src/work/columns.ts';

const spec = ['flareStart', 'margin', 'cannot'];
/** Of a style of which nothing passes, or that cannot be tied at all. */
const otherStyle = ['rank', 'strands', 'chance'];
const money = [
  'percent',
  'count',
  'each',
  'dearerBy',
  'per',
  'amount',
  'subtotal',
  'total',
  'deposit',
  'balance',
];
/** Every cell of a backlog but where the order stands and what came of it. */
const filled = ['file', 'document', 'line', 'verdict'];
const row = columnNames.filter((name) => !filled.includes(name));

/** The order is null where a file has none that could be read. */
export const nullable: Readonly<Record<string, ReadonlySet<string>>> = {
  size: new Set([
    'order',
    ...spec,
    ...otherStyle,
    'rule',
    'becauseOf',
    'couldEarn',
    'nearestRank',
    'wayOut',
    'spec',
  ]),
  check: new Set(['order', ...spec, 'style', 'length', 'buckle', 'strands', 'nearest', 'spec', 'explained']),
  ask: new Set(['order', 'name', 'phone', 'email', 'horse', 'then', 'first', 'now']),
  photo: new Set(['order', 'flareStart', 'first', 'sameCinch']),
  quote: new Set([
    'order',
    'currency',
    ...spec,
    ...money,
    'horse',
    'customer',
    'wants',
    'latest',
    'window',
    'validUntil',
    'nearestRank',
    'rank',
    'spec',
  ]),
  ticket: new Set(['order', 'horse', 'due', 'flare', 'accent', 'color', 'metal']),
  materials: new Set(['order', 'flareStart', 'color', 'onHand', 'near', 'lot', 'metal', 'comes']),
  schedule: new Set([
    ...['order', 'flareStart', 'due', 'comes', 'promise', 'after', 'day', 'meetsDue', 'minutes', 'lateBy'],
    ...['bench', 'startDay', 'startMinute', 'endDay', 'endMinute', 'shelf'],
  ]),
  backlog: new Set(row),
  learn: new Set(['error', 'value']),
};
