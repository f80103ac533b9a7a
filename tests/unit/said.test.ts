/** How clerks' phrases are read or refused. */
import { describe, expect, test } from 'vitest';
import { readLoaded } from '../../src/order/read-orders.ts';
import { loadSaid, readChanged } from '../../src/order/said/order.ts';
import type { Loaded } from '../../src/yaml/load.ts';
import { load } from '../../src/yaml/load.ts';
import { defaultShop } from '../../src/cinch/default-shop.ts';

const buckles = defaultShop.buckles.map(({ id }) => id);
const loaded = (line: string): Loaded => loadSaid({ line, file: 'said', buckles });
const said = (line: string): unknown => {
  expect(told(line)).toEqual([]);
  return loaded(line).tree;
};
const told = (line: string): string[] => {
  const read = readLoaded(loaded(line));
  return read.ok
    ? []
    : read.problems.map(
        ({ column, path, found = '-', expected, hint = '-' }) =>
          `${column} ${path || '-'} | ${found} | ${expected} | ${hint}`,
      );
};

describe('a line with everything in it', () => {
  test('with commas', () => {
    expect(said('15.2 hh stock, 7/8 in-skirt, round, rolls, trail, wants straight 25')).toEqual({
      order: 'said',
      horse: { height: '15.2 hh', kind: 'stock', barrel: 'round', trouble: ['saddle-rolls'] },
      saddle: { rigging: '7/8', style: 'in-skirt' },
      use: 'trail',
      wants: { style: 'straight', strands: '25' },
    });
  });

  test('with blanks only, tapes, both cinches and names', () => {
    const line =
      '15-2 quarter horse 3/4 flat plate 73 girth room 4 in ring to ring 44 in drop 14 now straight 27 32 in 3 y ' +
      'wants low flare 23 plain 3 1/2 buckle order 2417 for Leda Castellane named Marble';
    expect(said(line)).toEqual({
      order: '2417',
      customer: { name: 'Leda Castellane' },
      horse: {
        name: 'Marble',
        height: '15.2 hh',
        kind: 'stock',
        'heart-girth': '73 in',
        'elbow-room': '4 in',
      },
      saddle: { rigging: '3/4', style: 'flat-plate', 'ring-to-ring': '44 in', 'ring-drop': '14 in' },
      current: { style: 'straight', strands: '27', length: '32 in', age: '3 y' },
      wants: { style: 'low-flare', strands: '23', buckle: 'plain 3 1/2' },
    });
  });
});

const horse = (line: string): unknown => (said(`15 hh 7/8 ${line}`) as { horse: object }).horse;
const saddle = (line: string): unknown => (said(`15 hh ${line}`) as { saddle: object }).saddle;

describe('words of the horse', () => {
  test.each([
    ['chubby', { condition: 'fleshy' }],
    ['fat', { condition: 'fat' }],
    ['condition 7', { condition: '7' }],
    ['6.5 condition', { condition: '6.5' }],
    ['moderately fleshy', { condition: 'moderately fleshy' }],
    ['keg', { barrel: 'round' }],
    ['slab', { barrel: 'slab-sided' }],
    ['Slab Sided', { barrel: 'slab-sided' }],
    ['average barrel', { barrel: 'average' }],
    ['27 in deep', { barrel: { depth: '27 in' } }],
    ['mutton withers', { withers: 'low' }],
    ['low withers', { withers: 'low' }],
    ['withers high', { withers: 'high' }],
    ['flat withers', { withers: 'low' }],
    ['quarter horse', { kind: 'stock' }],
    ['draft cross', { kind: 'draft' }],
    ['mule', { kind: 'mule' }],
    ['for a pony', { kind: 'pony' }],
    ['galled elbow', { trouble: ['elbow-gall'] }],
    ['galled, buckle rub', { trouble: ['elbow-gall', 'buckle-rub'] }],
    ['cinchy', { trouble: ['girthy'] }],
    ['girthy and creeps forward', { trouble: ['girthy', 'creeps-forward'] }],
    ['slides back', { trouble: ['slips-back'] }],
    ['body length 67 in', { 'body-length': '67 in' }],
    ['girth of 185', { 'heart-girth': '185 cm' }],
    ['called Jo', { name: 'Jo' }],
  ])('%s', (line, more) => {
    expect(horse(line)).toEqual({ height: '15 hh', ...more });
  });

  test.each([
    ['15 hands 2', '15.2 hh'],
    ['15 hands 2 in', '15.2 hh'],
    ['15-2', '15.2 hh'],
    ['15.2hh', '15.2hh'],
    ['15.2 hands', '15.2 hands'],
    ['height 15.2', '15.2 hh'],
    ['62 in tall', '62 in'],
    ['height 5 ft 2 in', '5 ft 2 in'],
    ['15 hands 2 3/4', '15.2 hh'],
  ])('height: %s', (line, height) => {
    const rigging = line.endsWith('3/4') ? '' : '7/8';
    expect(said(`${line} ${rigging}`)).toMatchObject({ horse: { height } });
  });
});

describe('words of the saddle', () => {
  test.each([
    ['full double', { rigging: 'full', double: 'true' }],
    ['7/8 rigging single', { rigging: '7/8', double: 'false' }],
    ['three quarter', { rigging: '3/4' }],
    ['center fire', { rigging: 'center-fire' }],
    ['set back 2 in', { rigging: { 'set-back': '2 in' } }],
    ['5/8 dropped', { rigging: '5/8', style: 'dropped' }],
    ['full ring rigging', { rigging: 'full', style: 'ring' }],
    ['full, bar span 13 in', { rigging: 'full', 'bar-span': '13 in' }],
  ])('%s', (line, more) => {
    expect(saddle(line)).toEqual(more);
  });
});

describe('cinches, uses and names', () => {
  test.each([
    ['wants a straight 25 room 4 in', { wants: { style: 'straight', strands: '25' } }],
    ['asks for 21 strands', { wants: { strands: '21' } }],
    ['wants high-flare roper 23', { wants: { style: 'high-flare', strands: '23' } }],
    [
      'rides in straight 17 30 1/2 in 18 months old',
      { current: { style: 'straight', strands: '17', length: '30 1/2 in', age: '18 months' } },
    ],
    ['plain 2 1/2 buckle', { wants: { buckle: 'plain 2 1/2' } }],
    ['now Old Square 4 Buckle', { current: { buckle: 'old square 4' } }],
    ['for roping', { use: 'roping' }],
    ['trail riding', { use: 'trail' }],
    ['team roping', { use: 'roping' }],
    ['for leda castellane named wren trail', { customer: { name: 'leda castellane' }, use: 'trail' }],
    ['for Ann Round, round', { customer: { name: 'Ann Round' } }],
    ['order A-7/b', { order: 'A-7/b' }],
  ])('%s', (line, more) => {
    expect(said(`15 hh 7/8 ${line}`)).toMatchObject(more);
  });
});

describe('what cannot be read is told with its column', () => {
  test.each([
    [
      '15 hh 7/8 slips',
      '11 horse.trouble | slips | words that mean one thing | rolls to a side, or slides back? say "rolls" or "slides back"',
    ],
    [
      '15 hh 7/8 average',
      '11 - | average | words that mean one thing | did you mean "average barrel" or "average withers"?',
    ],
    [
      '15 hh 7/8 straight 25',
      '11 - | straight 25 | whether the customer wants it or rides in it now | did you mean "wants straight 25" or "now straight 25"?',
    ],
    [
      '15 hh 7/8 wants roper 25',
      '17 wants.style | roper | one style of cinch | did you mean "high-flare" or "low-flare"?',
    ],
    [
      '15 hh 7/8 rond',
      '11 - | rond | a word of an order, such as 15.2 hh, 7/8, round, trail | did you mean "round"?',
    ],
    [
      '15.2 7/8 sore',
      '10 horse.trouble | sore | words that mean one thing | at the elbow, or under the buckle? say "galled" or "buckle rub"',
    ],
    ['15 hh 7-8', '7 - | 7-8 | what the number measures | did you mean "7/8"?'],
    [
      '15 hh 7/8 73 in',
      '11 - | 73 in | what the number measures | did you mean "height 73 in" or "girth 73 in" or "body length 73 in"?',
    ],
    ['15 hh 7/8, round, slab', '19 horse.barrel | slab | each thing once | "round" already says it'],
    [
      '15 hh 7/8 set back 2 in',
      '11 saddle.rigging | set back 2 in | each thing once | "7/8" already says it',
    ],
    [
      '15 hh 7/8 plain 5 buckle',
      '11 - | plain 5 buckle | a buckle of the shop file: plain 2 1/2, plain 3, plain 3 1/2, plain 4, old square 4, wide 5, special 6 | did you mean "plain 3 buckle"?',
    ],
    [
      '15 hh, girth 73 7/8',
      '8 horse.heart-girth | girth 73 7/8 | a unit after the fraction, or a comma before it | -',
    ],
    ['15 hh 7/8 light riding', '17 - | riding | riding with its answer | -'],
    ['15 hh 7/8 withers', '11 - | withers | withers with its answer | -'],
    ['15 hh 7/8 girth', '11 - | girth | girth with its length, such as girth 73 in | -'],
    [
      '15.4 hh 7/8',
      '1 horse.height | 15.4 hh | height at the withers, with its unit, such as 15.1 hh | the digit after the point counts inches, 0 to 3: after 15.3 comes 16.0',
    ],
    [
      '15 hh 7/8 room 4',
      '11 horse.elbow-room | room 4 | back of elbow to girth groove, a length with its unit, such as 4 in | add a unit: in, cm, mm, ft or hh',
    ],
    [
      '15 hh 7/8 room 4,5 in',
      '11 horse.elbow-room | room 4,5 in | back of elbow to girth groove, a length with its unit, such as 4 in | use a point for decimals, not a comma; did you mean "4.5 in"?',
    ],
    [
      '15 hh 7/8 wants straight 24',
      '26 wants.strands | 24 | strands, an odd whole number from 5 to 45 | even: with one continuous cord, only an odd count leaves a tail at each buckle',
    ],
    [
      'girth 70 in 7/8 ring to ring 70 in',
      '17 saddle.ring-to-ring | ring to ring 70 in | ring-to-ring less than the heart girth | heart-girth is 70 in; ring-to-ring runs only under the horse, from ring to ring',
    ],
    ['Ωμέγα 15 hh', '1 - | Ωμέγα | a word of an order, such as 15.2 hh, 7/8, round, trail | -'],
    ['7/8', '4 horse | - | height or heart-girth: we need one to size the horse | -'],
    [
      '15 hh',
      '6 saddle.rigging | - | rigging position: full, 7/8, 3/4, 5/8, center-fire, another fraction from 1/2 to 1, or { set-back: 2 in } | -',
    ],
    ['', '1 - | - | a word of an order, such as 15.2 hh, 7/8, round, trail | -'],
    ['15 hh 7/8 \u001b[31m', '11 - | \\u{1b} | text without control characters or hidden marks | -'],
    [
      `15 hh 7/8 ${'round '.repeat(400)}`,
      `2001 - | d | at most 2000 characters: put a longer order in a file | -`,
    ],
  ])('%j', (line, problem) => {
    expect(told(line)[0]).toBe(problem);
  });

  test('all of it at once, each at its own place', () => {
    expect(told('15 hh, 7/8, rond, slips, wants purple').map((text) => text.split(' ')[0])).toEqual([
      '13',
      '19',
      '26',
      '32',
    ]);
  });
});

describe('an order changed in words', () => {
  const [base] = load(
    `order: 7
horse: { height: 15 hh, trouble: slips-back, barrel: { depth: 27 in } }
saddle: { rigging: { set-back: 2 in } }
wants: { style: straight, strands: 19, buckle: plain 3 }`,
    'o.yaml',
  );
  const changed = (line: string) => readChanged(base!, { line, file: 'what-if', buckles });

  test('a key that is said takes the place of what the file says', () => {
    const read = changed('3/4, round, rolls, room 4.5 in, wants straight 25');
    expect(read).toMatchObject({
      ok: true,
      buckles: [],
      order: {
        order: '7',
        horse: { height: 60, barrel: 'round', trouble: ['slips-back', 'saddle-rolls'], elbowRoom: 4.5 },
        saddle: { rigging: { kind: 'named', name: '3/4' } },
        wants: { style: 'straight', strands: 25 },
      },
    });
    expect(read.ok && read.order.wants?.buckle).toBeUndefined();
  });

  test('a buckle narrows the shop, and changes nothing else', () => {
    expect(changed('plain 3 buckle, plain 2 1/2 buckle')).toMatchObject({
      buckles: ['plain 3', 'plain 2 1/2'],
      order: { wants: { style: 'straight', strands: 19, buckle: 'plain 3' } },
    });
  });

  test('an impossible change is told at its word, or at the first word if the file conflicts', () => {
    const problems = (line: string, read = changed(line)) =>
      read.ok ? [] : read.problems.map(({ file, column, path }) => `${file} ${column} ${path}`);
    expect(problems('3/4, slips')).toEqual(['what-if 6 horse.trouble']);
    expect(problems('girth 60 in, ring to ring 65 in')).toEqual(['what-if 14 saddle.ring-to-ring']);
    expect(problems('')).toEqual(['what-if 1 ']);
    expect(problems('another horse, low withers')).toEqual(['what-if 27 horse']);
    expect(problems('other saddle, in-skirt')).toEqual(['what-if 23 saddle.rigging']);
  });

  test('another horse keeps the saddle, another saddle the horse', () => {
    expect(changed('different horse 14 hh pony')).not.toHaveProperty('order.horse.barrel');
    expect(changed('different horse 14 hh pony')).toMatchObject({
      order: {
        horse: { height: 56, kind: 'pony', trouble: [] },
        saddle: { rigging: { kind: 'measured', setBack: 2 } },
        wants: { strands: 19 },
      },
    });
    expect(changed('another saddle full')).toMatchObject({
      order: { horse: { height: 60, trouble: ['slips-back'] }, saddle: { rigging: { name: 'full' } } },
    });
  });

  test('the file itself stays as it was read', () => {
    const before = structuredClone(base!.tree);
    changed('3/4, rolls, wants straight 25, set back 3 in');
    changed('another horse 15 hh, another saddle full');
    expect(base!.tree).toEqual(before);
  });
});
