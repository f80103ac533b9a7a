/** Keys of each command's JSON that may be null: not told, not measured, or without meaning there. Whatever else is null was no number. */

const spec = ['flareStart', 'margin', 'cannot'];
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
const row = [
  ...[
    'horse',
    'customer',
    'style',
    'length',
    'buckle',
    'due',
    'flare-start',
    'reason',
    'same-number-as',
    'problem',
  ],
  ...[
    'measure-first',
    'strands',
    'layers',
    'width',
    'buckle-width',
    'length-basis',
    'clearance',
    'clearance-sd',
    'chance',
  ],
  ...['latigo-run', 'because', 'quantity', 'rigging', 'room', 'room-sd'],
];

/** The order is null where a file has none that could be read. */
export const nullable: Readonly<Record<string, ReadonlySet<string>>> = {
  size: new Set([
    'order',
    ...spec,
    'strands',
    'rule',
    'becauseOf',
    'couldEarn',
    'nearestRank',
    'wayOut',
    'spec',
  ]),
  check: new Set(['order', ...spec, 'style', 'length', 'buckle', 'strands', 'nearest', 'spec']),
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
  materials: new Set(['order', 'flareStart', 'color', 'onHand', 'near', 'lot', 'metal']),
  schedule: new Set(['order', 'flareStart', 'due']),
  backlog: new Set(['order', ...row]),
  learn: new Set(['error', 'value']),
};
