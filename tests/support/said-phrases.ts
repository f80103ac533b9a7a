/** Orders as people say them, with the order file's values. */
import fc from 'fast-check';
import type { Block } from '../../src/yaml/tree.ts';
import { defaultShop } from '../../src/cinch/default-shop.ts';

export const buckles = defaultShop.buckles.map(({ id }) => id);

/** With `ends`, a comma must follow: more could belong to it. */
interface Phrase {
  readonly words: string;
  readonly path: string;
  readonly value: unknown;
  readonly ends?: boolean;
}

type Said = Readonly<Record<string, unknown>>;

const one = (path: string, said: Said, ends = false): fc.Arbitrary<Phrase> =>
  fc.constantFrom(...Object.entries(said).map(([words, value]) => ({ words, path, value, ends })));

const names = [
  'Leda Castellane',
  'Søren',
  '李雷',
  "O'Hara",
  'Ann-Marie',
  'Ko: #7',
  'null',
  'ro"und',
  'Ł Full',
];
const named = (path: string, word: string): fc.Arbitrary<Phrase> =>
  one(path, Object.fromEntries(names.map((name) => [`${word} ${name}`, name])), true);

const parts: Readonly<Record<string, Said>> = {
  style: { straight: 'straight', 'low flare': 'low-flare', 'high-flare roper': 'high-flare' },
  strands: { 17: '17', '25 strands': '25', 31: '31' },
  length: { '32 in': '32 in', '30 1/2 in': '30 1/2 in', '81 cm long': '81 cm' },
  buckle: Object.fromEntries(buckles.map((id) => [`${id} buckle`, id])),
};

/** In any order, after the word for whose it is. */
const cinch = (path: string, word: string): fc.Arbitrary<Phrase> =>
  fc
    .shuffledSubarray(Object.keys(parts), { minLength: 1 })
    .chain((keys) => fc.tuple(...keys.map((key) => one(key, parts[key]!))))
    .map((said) => ({
      words: `${word} ${said.map(({ words }) => words).join(' ')}`,
      path,
      value: Object.fromEntries(said.map((part) => [part.path, part.value])),
      ends: true,
    }));

export const phrases: Readonly<Record<string, fc.Arbitrary<Phrase>>> = {
  height: one('horse.height', {
    '15.2 hh': '15.2 hh',
    '15-2': '15.2 hh',
    '15 hands 2': '15.2 hh',
    '14.3hh': '14.3 hh',
    'height 155 cm': '155 cm',
    '62 in tall': '62 in',
  }),
  girth: one('horse.heart-girth', { 'girth 73 in': '73 in', 'heart girth of 6 ft 1 in': '6 ft 1 in' }),
  room: one('horse.elbow-room', { 'room 4 in': '4 in', '10.5 cm elbow room': '10.5 cm' }),
  barrel: one('horse.barrel', { round: 'round', slab: 'slab-sided', '27 in deep': { depth: '27 in' } }),
  withers: one('horse.withers', { 'mutton withers': 'low', high: 'high', 'withers average': 'average' }),
  condition: one('horse.condition', { 'condition 7': 7, chubby: 'fleshy', 'very thin': 'very thin' }, true),
  kind: one('horse.kind', { stock: 'stock', 'quarter horse': 'stock', mule: 'mule', 'draft cross': 'draft' }),
  trouble: one('horse.trouble', {
    rolls: ['saddle-rolls'],
    'galled, cinchy': ['elbow-gall', 'girthy'],
    'buckle rub and creeps': ['buckle-rub', 'creeps-forward'],
  }),
  horse: named('horse.name', 'named'),
  rigging: one('saddle.rigging', {
    full: 'full',
    '7/8': '7/8',
    'three-quarter': '3/4',
    'center fire': 'center-fire',
    'set back 2 in': { 'set-back': '2 in' },
  }),
  style: one('saddle.style', { 'in-skirt': 'in-skirt', 'flat plate': 'flat-plate', 'ring rigging': 'ring' }),
  double: one('saddle.double', { double: true, 'single rig': false }),
  rings: one('saddle.ring-to-ring', { 'ring to ring 44 in': '44 in', '112 cm ring-to-ring': '112 cm' }),
  drop: one('saddle.ring-drop', { 'drop 14': '14 in' }, true),
  use: one('use', { trail: 'trail', 'for roping': 'roping', 'ranch work': 'ranch' }),
  wants: cinch('wants', 'wants'),
  now: cinch('current', 'rides in'),
  customer: named('customer.name', 'for'),
  order: one('order', { 'order 2417': '2417', 'order A-7': 'A-7' }),
};

interface Drawn {
  readonly line: string;
  readonly written: Block;
}

export const sayable: fc.Arbitrary<Drawn> = fc
  .record(phrases, { requiredKeys: ['height', 'rigging'] })
  .chain((drawn) => {
    const all = Object.values(drawn as Record<string, Phrase>);
    return fc.tuple(
      fc.shuffledSubarray(all, { minLength: all.length }),
      fc.array(fc.constantFrom(' ', ' ', ', ', ' ,', ';'), { minLength: all.length, maxLength: all.length }),
    );
  })
  .map(([said, blanks]) => ({
    line: said.map(({ words, ends }, i) => words + (ends === true ? ', ' : blanks[i]!)).join(''),
    written: treeOf(said),
  }));

function treeOf(said: readonly Phrase[]): Block {
  const tree: Record<string, unknown> = { order: 'said' };
  for (const { path, value } of said) {
    const [key = '', inner] = path.split('.');
    tree[key] = inner === undefined ? value : { ...(tree[key] as object | undefined), [inner]: value };
  }
  return tree as Block;
}
