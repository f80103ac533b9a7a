/** JSON keys by command that may be null: not told, not measured, not applicable. */
import { columnNames } from '../../src/work/columns.ts';
import { names } from '../../src/words/names.ts';

/** Of cinches asked for or filled in. */
const spec = ['flareStart', 'margin', 'reason', 'style', 'strands', 'length', 'buckle', 'nearest', 'spec'];
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
/** Every backlog cell but place and verdict, and keys one level down. */
const filled: readonly string[] = ['file', 'document', 'line', 'verdict'];
const row = columnNames.flatMap((name) => names[name].path).filter((name) => !filled.includes(name));

/** The order is null where none could be read. */
export const nullable: Readonly<Record<string, ReadonlySet<string>>> = {
  size: new Set(['order', ...spec, 'rank', 'chance', 'rule', 'becauseOf', 'couldEarn', 'wayOut', 'whatIf']),
  check: new Set(['order', ...spec, 'explained']),
  ask: new Set(['order', 'customer', 'phone', 'email', 'horse', 'then', 'first', 'now']),
  photo: new Set(['order', 'flareStart', 'first', 'clearance']),
  quote: new Set([
    'order',
    'currency',
    ...spec,
    ...money,
    'invoice',
    'paid',
    'amountDue',
    'horse',
    'customer',
    'wants',
    'latest',
    'window',
    'validUntil',
    'rank',
  ]),
  ticket: new Set(['order', 'horse', 'due', 'orderNotes', 'hours', 'flare', 'accent', 'color', 'metal']),
  materials: new Set([
    'order',
    'flareStart',
    'color',
    'lengthOnHand',
    'nearestColor',
    'lot',
    'metal',
    'comes',
  ]),
  schedule: new Set([
    ...['order', 'flareStart', 'due', 'comes', 'promise', 'meetsDue', 'minutes', 'lateDays'],
    ...['bench', 'startDay', 'startMinute', 'endDay', 'endMinute', 'shelf'],
  ]),
  backlog: new Set(row),
  learn: new Set(['standardError', 'value']),
};
