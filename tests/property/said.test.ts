/** Whatever can be said is read as the same order in a file is; whatever else is typed is told, and nothing breaks. */
import fc from 'fast-check';
import { expect, test } from 'vitest';
import { filledOrder } from '../../src/order/filled.ts';
import { load } from '../../src/order/load.ts';
import { readLoaded, readOrders, type OrderRead } from '../../src/order/read-orders.ts';
import { loadSaid, readChanged } from '../../src/order/said/order.ts';
import type { Order } from '../../src/order/types.ts';
import type { Block } from '../../src/order/tree.ts';
import { defaultShop } from '../../src/stock/default-shop.ts';

const buckles = defaultShop.buckles.map(({ id }) => id);
const say = (line: string) => loadSaid({ line, file: 'said', buckles });

/** What is said, and what an order file would have instead. After `ends` a comma is needed: more of it might follow. */
interface Phrase {
  readonly words: string;
  readonly written: object;
  readonly ends?: true;
}

const one = (key: string, pairs: readonly (readonly [string, unknown])[], ends?: true) =>
  fc.constantFrom(
    ...pairs.map(([words, value]): Phrase => ({ words, written: { [key]: value }, ...(ends && { ends }) })),
  );
const within = (block: string, inner: fc.Arbitrary<Phrase>) =>
  inner.map(({ written, ...rest }): Phrase => ({ ...rest, written: { [block]: written } }));

const names = [
  'Leda Castellane',
  'Søren',
  '李雷',
  "O'Hara",
  'Ann-Marie',
  'Ko: #7',
  'null',
  'ro"und',
  'Łucja Full',
];
const name = one(
  'name',
  names.map((each) => [each, each]),
  true,
);
const prefixed = (word: string, inner: fc.Arbitrary<Phrase>) =>
  inner.map((each) => ({ ...each, words: `${word} ${each.words}` }));

const heights = [
  ['15.2 hh', '15.2 hh'],
  ['15-2', '15.2 hh'],
  ['15 hands 2', '15.2 hh'],
  ['14.3hh', '14.3 hh'],
  ['height 155 cm', '155 cm'],
  ['62 in tall', '62 in'],
] as const;
const girths = [
  ['girth 73 in', '73 in'],
  ['185 cm girth', '185 cm'],
  ['heart girth of 6 ft 1 in', '6 ft 1 in'],
] as const;

/** One cinch: its parts in any order behind the word for whose it is. */
const cinch = (word: string, block: string) =>
  fc
    .tuple(
      fc.constantFrom(
        ['straight', 'straight'],
        ['low flare', 'low-flare'],
        ['high-flare roper', 'high-flare'],
      ),
      fc.constantFrom('17', '25', '31'),
      fc.option(fc.constantFrom('32 in', '30 1/2 in', '81 cm'), { nil: undefined }),
      fc.option(fc.constantFrom(...buckles), { nil: undefined }),
    )
    .chain(([[style = '', value], strands, length, buckle]) =>
      fc
        .shuffledSubarray(
          [
            style,
            strands,
            ...(length === undefined ? [] : [length]),
            ...(buckle === undefined ? [] : [`${buckle} buckle`]),
          ],
          { minLength: 2 + Number(length !== undefined) + Number(buckle !== undefined) },
        )
        .map((words): Phrase => ({
          words: `${word} ${words.join(' ')}`,
          written: {
            [block]: { style: value, strands, ...(length && { length }), ...(buckle && { buckle }) },
          },
          ends: true,
        })),
    );

const phrases: Readonly<Record<string, fc.Arbitrary<Phrase>>> = {
  height: within('horse', one('height', heights)),
  girth: within('horse', one('heart-girth', girths)),
  room: within(
    'horse',
    one('elbow-room', [
      ['room 4 in', '4 in'],
      ['10.5 cm elbow room', '10.5 cm'],
    ]),
  ),
  barrel: within(
    'horse',
    one('barrel', [
      ['round', 'round'],
      ['slab', 'slab-sided'],
      ['average barrel', 'average'],
      ['27 in deep', { depth: '27 in' }],
    ]),
  ),
  withers: within(
    'horse',
    one('withers', [
      ['mutton withers', 'low'],
      ['high', 'high'],
      ['withers average', 'average'],
    ]),
  ),
  condition: within(
    'horse',
    one(
      'condition',
      [
        ['condition 7', 7],
        ['chubby', 'fleshy'],
        ['very thin', 'very thin'],
      ],
      true,
    ),
  ),
  kind: within(
    'horse',
    one('kind', [
      ['stock', 'stock'],
      ['quarter horse', 'stock'],
      ['mule', 'mule'],
      ['draft cross', 'draft'],
    ]),
  ),
  trouble: within(
    'horse',
    one('trouble', [
      ['rolls', ['saddle-rolls']],
      ['sore, cinchy', ['elbow-gall', 'girthy']],
      ['buckle rub and creeps', ['buckle-rub', 'creeps-forward']],
    ]),
  ),
  horse: within('horse', prefixed('named', name)),
  rigging: within(
    'saddle',
    one('rigging', [
      ['full', 'full'],
      ['7/8', '7/8'],
      ['three-quarter', '3/4'],
      ['center fire', 'center-fire'],
      ['set back 2 in', { 'set-back': '2 in' }],
    ]),
  ),
  style: within(
    'saddle',
    one('style', [
      ['in-skirt', 'in-skirt'],
      ['flat plate', 'flat-plate'],
      ['ring rigging', 'ring'],
      ['dropped', 'dropped'],
    ]),
  ),
  double: within(
    'saddle',
    one('double', [
      ['double', true],
      ['single rig', false],
    ]),
  ),
  rings: within(
    'saddle',
    one('ring-to-ring', [
      ['ring to ring 44 in', '44 in'],
      ['112 cm ring-to-ring', '112 cm'],
    ]),
  ),
  drop: within('saddle', one('ring-drop', [['drop 14', '14 in']], true)),
  use: one('use', [
    ['trail', 'trail'],
    ['for roping', 'roping'],
    ['ranch work', 'ranch'],
  ]),
  wants: cinch('wants', 'wants'),
  now: cinch('rides in', 'current'),
  customer: within('customer', prefixed('for', name)),
  order: one('order', [
    ['order 2417', '2417'],
    ['order A-7', 'A-7'],
  ]),
};

interface Drawn {
  readonly line: string;
  readonly written: Block;
}

const sayable: fc.Arbitrary<Drawn> = fc
  .tuple(fc.record(phrases, { requiredKeys: ['height', 'rigging'] }), fc.infiniteStream(fc.nat()))
  .map(([record, stream]) => {
    const draw = (): number => Number(stream.next().value);
    const drawn = Object.values(record as Record<string, Phrase>)
      .map((phrase) => ({ phrase, at: draw() }))
      .sort((a, b) => a.at - b.at)
      .map(({ phrase }) => phrase);
    const words = drawn.map(
      ({ words, ends }) => words + (ends === true || draw() % 2 === 0 ? [', ', ' ,', ';'][draw() % 3]! : ' '),
    );
    return { line: words.join(''), written: merged(drawn.map(({ written }) => written as Block)) };
  });

function merged(parts: readonly Block[]): Block {
  const whole: Record<string, unknown> = { order: 'said' };
  for (const part of parts)
    for (const [key, value] of Object.entries(part)) {
      const isBlock = typeof value === 'object' && !Array.isArray(value);
      whole[key] = isBlock ? { ...(whole[key] as object | undefined), ...value } : value;
    }
  return whole as Block;
}

const orderOf = (read: OrderRead | undefined): Order | string =>
  read?.ok === true ? read.order : JSON.stringify(read?.problems);

const seed = 20261130;

test('every order that can be said is the order that a file says, and is kept as one', () => {
  fc.assert(
    fc.property(sayable, ({ line, written }) => {
      const [file] = readOrders(JSON.stringify(written), 'o.yaml');
      expect(file?.ok).toBe(true);
      const said = say(line);
      expect(orderOf(readLoaded(said)), line).toEqual(orderOf(file));
      const [kept] = readOrders(filledOrder(said.tree as Block), 'kept.yaml');
      expect(orderOf(kept), line).toEqual(orderOf(file));
    }),
    { seed, numRuns: 600 },
  );
});

const odd = [
  '__proto__',
  'constructor',
  'toString',
  '',
  '½',
  '4½',
  '-',
  '--',
  '.',
  '..',
  '/',
  '7/0',
  '0/0',
  '1e9',
  'NaN',
  'Infinity',
  '99999999999',
  '-4',
  "''",
  '"',
  'ſ',
  'İ',
  '\u202e',
  '\u0000',
  '\ud800',
  '💥',
  'hh',
  'in',
  'buckle',
  'for',
  'named',
  'order',
  'wants',
  'now',
  'of',
  'is',
  '15.',
  '.5',
  '5 ft',
  '4,5',
  '7,8',
  ';',
];
const said = Object.values(phrases).map((each) => each.map(({ words }) => words));
const salad = fc
  .array(
    fc.oneof(
      fc.constantFrom(...odd),
      ...said,
      fc.string({ unit: 'binary', maxLength: 8 }),
      fc.nat(99).map(String),
    ),
    { maxLength: 30 },
  )
  .chain((words) => fc.constantFrom(' ', ', ', ',', '\n', '\t').map((blank) => words.join(blank)));

function expectSound(read: OrderRead, line: string): void {
  if (read.ok) {
    const numbers = JSON.stringify(read.order, (_, value: unknown) =>
      typeof value === 'number' && !Number.isFinite(value) ? 'no number' : value,
    );
    expect(numbers).not.toContain('no number');
    return;
  }
  expect(read.problems.length).toBeGreaterThan(0);
  const rows = line.split('\n');
  for (const { line: row, column, expected, found = '' } of read.problems) {
    expect(Array.from(rows[row - 1] ?? '').length + 1).toBeGreaterThanOrEqual(column);
    expect(column).toBeGreaterThanOrEqual(1);
    expect(expected).not.toMatch(/undefined|NaN/);
    expect(found).not.toMatch(/[\p{Cc}\p{Cf}\p{Cs}\p{Zl}\p{Zp}]/u);
  }
}

test('any words at all are an order, or are told with their place', () => {
  const [base] = load(
    '{ order: 1, horse: { height: 15 hh, trouble: girthy }, saddle: { rigging: 7/8 }, wants: { strands: 19 } }',
    'o.yaml',
  );
  let good = 0;
  fc.assert(
    fc.property(salad, (line) => {
      const read = readLoaded(say(line));
      expectSound(read, line);
      const changed = readChanged(base!, { line, file: 'what-if', buckles });
      expectSound(changed, line);
      if (changed.ok) good += 1;
    }),
    { seed, numRuns: 500 },
  );
  expect(good).toBeGreaterThan(20);
});

test('a long line is read in no time', () => {
  const start = process.cpuUsage();
  for (const words of ['round ', 'ring to ', '1 ', 'wants ', 'for A ', 'a-'.repeat(3), '7/8 of '])
    readLoaded(say(words.repeat(2000 / words.length)));
  expect(process.cpuUsage(start).user / 1e6).toBeLessThan(3);
});
