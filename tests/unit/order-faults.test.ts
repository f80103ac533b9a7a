/** Faults of orders: place, found, expected, likely slip. */
import { describe, expect, test } from 'vitest';
import { readOrders } from '../../src/order/read-orders.ts';
import { leastOrder as least, orderProblems as problems, problemLine } from '../support/door.ts';

const told = (text: string): string[] => problems(text).map(problemLine);

describe('how a fault is told', () => {
  const horse = 'order: 1\nsaddle: { rigging: full }\nhorse:\n  height: 15 hh\n  ';
  const saddle = 'order: 1\nhorse: { height: 15 hh, heart-girth: 72 in }\nsaddle:\n  rigging: full\n  ';
  test.each([
    // Keys.
    [
      `${horse}heartGirth: 73 in`,
      '5:3 horse.heartGirth | heartGirth | a key of horse: height',
      'did you mean "heart-girth"?',
    ],
    [`${horse}heart_girth: 73 in`, '5:3 horse.heart_girth', 'did you mean "heart-girth"?'],
    [`${horse}wither: low`, '5:3 horse.wither | wither', 'did you mean "withers"?'],
    [`${horse}rigging: full`, '5:3 horse.rigging | rigging', 'it belongs under saddle'],
    [`${horse}quantity: 1`, '5:3 horse.quantity', 'it belongs at the top'],
    [`${horse}riggin: full`, '5:3 horse.riggin', 'did you mean "saddle.rigging"?'],
    [`${horse}zebra: 1`, '5:3 horse.zebra | zebra', '-'],
    [`${horse}name: a\n  name: b`, '6:3 horse.name | name | each key once', 'it is already on line 5'],
    [`${horse}__proto__: { a: 1 }`, '5:3 horse | __proto__', '-'],
    [`${horse}constructor: 1`, '5:3 horse.constructor | constructor', '-'],
    [`${horse}<<: { name: x }`, '5:3 horse | << | keys written out', '-'],
    [`${horse}? [a, b]\n  : 1`, '5:5 horse | a list or block | a plain word as the key', '-'],
    // Kinds and words.
    [`${horse}name: [a]`, '5:9 horse.name | a list | name of the horse, as text', '-'],
    [`${horse}withers: { a: b }`, '5:12 horse.withers | a block of keys | withers, one of low', '-'],
    [
      `${horse}withers: hgh`,
      '5:12 horse.withers | hgh | withers, one of low, average, high',
      'did you mean "high"?',
    ],
    [`${horse}withers: High`, '5:12 horse.withers | High', 'did you mean "high"?'],
    [`${horse}barrel: slab`, '5:11 horse.barrel | slab', 'did you mean "slab-sided"?'],
    [`${horse}barrel: [round]`, '5:11 horse.barrel | a list | shape of the barrel', '-'],
    [`${horse}barrel: {}`, '5:3 horse.barrel.depth | - | depth of the barrel', '-'],
    [
      `${horse}trouble: [girthy, elbow-gal]`,
      '5:21 horse.trouble[1] | elbow-gal',
      'did you mean "elbow-gall"?',
    ],
    [`${horse}trouble: [girthy, ~]`, '5:21 horse.trouble[1] | ~', 'quotes'],
    [`${horse}name:`, '5:3 horse.name | nothing | a value: it is empty', '-'],
    [`${horse}name: ''`, '5:3 horse.name | nothing | a value: it is empty', '-'],
    [`${horse}name: null`, '5:9 horse.name | null', 'quotes'],
    [
      `${horse}kind: !!js/function x`,
      '5:23 horse.kind | !!js/function | a plain value without a "!" tag',
      '-',
    ],
    [
      `${horse}name: *who`,
      '5:9 horse.name | *who',
      'no value above is marked with & and this name; if it is text, put it in quotes',
    ],
    [`${horse}name: ${'x'.repeat(201)}`, '5:9 horse.name', 'it has 201 characters'],
    [`${horse}name: "a\\nb"`, '5:9 horse.name | a\\u{a}b', '-'],
    [`${horse}name: "\\e[31m"`, '5:9 horse.name | \\u{1b}[31m | text without control', '-'],
    // Numbers.
    [
      `${horse}condition: 6.3`,
      '5:14 horse.condition | 6.3 | condition score (Henneke) from 1 to 9, in steps of 0.5',
      '-',
    ],
    [`${horse}condition: 9.5`, '5:14 horse.condition', '-'],
    [`${least}quantity: 0`, '4:11 quantity | 0 | how many, a whole number from 1 to 99', '-'],
    [`${least}quantity: 1_0`, '4:11 quantity | 1_0', '-'],
    [
      `${least}wants: { strands: 20 }`,
      '4:19 wants.strands | 20 | strands, an odd whole number from 5 to 45',
      'even: with one continuous cord, only an odd count leaves a tail at each buckle',
    ],
    [`${least}wants: { strands: 47 }`, '4:19 wants.strands | 47', '-'],
    [`${least}current: { age: 3 }`, '4:17 current.age | 3', 'add a unit'],
    [
      `${saddle}double: yes`,
      '5:11 saddle.double | yes | whether the saddle is double rigged, true or false',
      'did you mean "true"?',
    ],
    // Lengths.
    [`${horse}heart-girth: 73`, '5:16 horse.heart-girth | 73', 'did you mean "73 in"?'],
    [`${horse}heart-girth: 185`, '5:16 horse.heart-girth | 185', 'did you mean "185 cm"?'],
    [
      `${horse}heart-girth: 185 in`,
      '5:16 horse.heart-girth | 185 in | heart girth from 36 in to 100 in',
      'did you mean "185 cm"?',
    ],
    [`${horse}heart-girth: 73 cm`, '5:16 horse.heart-girth', 'did you mean "73 in"?'],
    [`${horse}elbow-room: 100 in`, '5:15 horse.elbow-room', 'did you mean "100 mm"?'],
    [`${horse}elbow-room: 4,5 in`, '5:15 horse.elbow-room | 4,5 in', 'did you mean "4.5 in"?'],
    [`${horse}elbow-room: 1e999 in`, '5:15 horse.elbow-room', 'plain digits'],
    [`${horse}elbow-room: .inf`, '5:15 horse.elbow-room | .inf', 'a number and a unit'],
    [
      least.replace('15 hh', '15.4 hh'),
      '2:18 horse.height | 15.4 hh | height at the withers, with its unit',
      '0 to 3',
    ],
    [least.replace('15 hh', '15.2 in'), '2:18 horse.height | 15.2 in', 'did you mean "15.2 hh"?'],
    [least.replace('15 hh', '155 in'), '2:18 horse.height', 'did you mean "155 cm"?'],
    [
      `${saddle}ring-to-ring: 70 in`.replace('72 in', '60 in'),
      '5:17 saddle.ring-to-ring | 70 in | ring-to-ring less than the heart girth',
      'heart-girth is 60 in',
    ],
    [
      `${saddle}ring-drop: 20 in`.replace('72 in', '40 in'),
      '5:14 saddle.ring-drop | 20 in | ring-drop less than half the heart girth',
      'heart-girth is 40 in; ring-drop runs from the spine down one side',
    ],
    [
      `${horse}heart-girth: 58 in\n  barrel: { depth: 29 in }`,
      '6:20 horse.barrel.depth | 29 in | depth less than half the heart girth',
      'heart-girth is 58 in; depth runs straight down',
    ],
    [
      `${horse}heart-girth: 185”`,
      '5:16 horse.heart-girth | 185” | heart girth from',
      'did you mean "185 cm"?',
    ],
    [`${horse}elbow-room: 16½″`, '5:15 horse.elbow-room | 16½″', 'did you mean "16 1/2 cm"?'],
    // Trade words for ours; keys with another meaning elsewhere.
    [`${horse}kind: Quarter Horse`, '5:9 horse.kind | Quarter Horse', 'did you mean "stock"?'],
    [`${horse}withers: mutton`, '5:12 horse.withers | mutton', 'did you mean "low"?'],
    [`${horse}withers: medium`, '5:12 horse.withers | medium', 'did you mean "average"?'],
    [`${horse}barrel: normal`, '5:11 horse.barrel | normal', 'did you mean "average"?'],
    [`${horse}trouble: girth gall`, '5:12 horse.trouble | girth gall', 'did you mean "elbow-gall"?'],
    [`${horse}trouble: [rolls]`, '5:13 horse.trouble[0] | rolls', 'did you mean "saddle-rolls"?'],
    [`${least}use: team roping`, '4:6 use | team roping', 'did you mean "roping"?'],
    [`${least}use: heeling`, '4:6 use | heeling', 'did you mean "roping"?'],
    [`${least}use: trail_riding`, '4:6 use | trail_riding', 'did you mean "trail"?'],
    [
      `${least}wants: { style: roper }`,
      '4:17 wants.style | roper',
      'did you mean "high-flare" or "low-flare"?',
    ],
    [
      `${least}wants: { style: flare }`,
      '4:17 wants.style | flare',
      'did you mean "high-flare" or "low-flare"?',
    ],
    [`${least}use: constructor`, '4:6 use | constructor', '-'],
    [
      `${horse}age: 5`,
      '5:3 horse.age | age | a key of horse',
      'leave out the age of the horse; age under current is the age of the cinch',
    ],
    [
      `${horse}barrel: { depth: 27 in, width: 20 in }`,
      '5:27 horse.barrel.width | width | a key of horse.barrel',
      'give the depth of the barrel, or its shape in a word, not its width',
    ],
    [
      'order: 1\nhorse: { height: 15 hh }\nsaddle: { rigging: { set-back: 2 in, name: full } }',
      '3:38 saddle.rigging.name | name | a key of saddle.rigging',
      'write a named position alone, as in rigging: 7/8',
    ],
    [`${horse}strands: 5`, '5:3 horse.strands | strands | a key of horse', 'it belongs under current'],
    // Blocks show what to write.
    [
      `${least}wants: straight 19`,
      '4:8 wants | straight 19 | the cinch the customer asks for, as a block of keys, such as { style: straight, strands: 17, length: 32 in }',
      '-',
    ],
    // Rigging.
    [
      least.replace('full', 'full double'),
      '3:20 saddle.rigging | full double',
      'did you mean "full", with double: true',
    ],
    [least.replace('full', '"7/8 double-rigged"'), '3:20 saddle.rigging', 'did you mean "7/8", with double'],
    [least.replace('full', 'ful double'), '3:20 saddle.rigging', 'did you mean "full", with double: true'],
    [least.replace('full', 'a double'), '3:20 saddle.rigging | a double', '-'],
    [
      least.replace('{ rigging: full }', '\n  rigging: 7/8,'),
      '4:12 saddle.rigging | 7/8,',
      'did you mean "7/8"?',
    ],
    [least.replace('full', '0.875'), '3:20 saddle.rigging | 0.875', 'did you mean "7/8"?'],
    [least.replace('full', '0.8'), '3:20 saddle.rigging | 0.8', '-'],
    [least.replace('full', 'three quarter'), '3:20 saddle.rigging', 'did you mean "3/4"?'],
    [least.replace('full', 'ful'), '3:20 saddle.rigging', 'did you mean "full"?'],
    [least.replace('full', '3/8'), '3:20 saddle.rigging | 3/8', 'from 1/2'],
    [
      least.replace('full', '{ set-back: 14 in }'),
      '3:32 saddle.rigging.set-back | 14 in',
      'did you mean "14 cm"?',
    ],
    [least.replace('full', '{ set-bak: 2 in }'), '3:11 saddle.rigging.set-back | -', '-'],
    [least.replace('full', '[full]'), '3:20 saddle.rigging | a list', '-'],
    // Days.
    [`${least}taken: 2024-02-30`, '4:8 taken | 2024-02-30', 'no day 30'],
    [`${least}due: 12/18/2026`, '4:6 due', 'did you mean "2026-12-18"?'],
    [
      `${least}taken: 2026-02-02\ndue: 2026-01-01`,
      '5:6 due | 2026-01-01 | a day on or after the day the order was taken (2026-02-02)',
      '-',
    ],
    // Missing.
    ['horse: { height: 15 hh }\nsaddle: { rigging: full }', '1:1 order | - | number or name', '-'],
    ['order: 1\nsaddle: { rigging: full }', '1:1 horse | - | the horse, as a block of keys', '-'],
    ['order: 1\nhorse: { height: 15 hh }', '1:1 saddle | - | the saddle', '-'],
    ['order: 1\nhorse: { name: x }\nsaddle: { rigging: full }', '2:1 horse | - | height or heart-girth', '-'],
    [
      'order: 1\nhorse: { height: 15 hh }\nsaddle: { style: ring }',
      '3:1 saddle.rigging | - | rigging position',
      '-',
    ],
    ['order: 1\nhorse: bay\nsaddle: { rigging: full }', '2:8 horse | bay | the horse', '-'],
    ['- a', '1:1  | a list | an order', '-'],
    ['hello', '1:1  | hello | an order', '-'],
  ])('%s', (text, start, hint) => {
    const line = told(text)[0] ?? 'nothing';
    expect(line.slice(0, start.length)).toBe(start);
    const said = line.slice(line.lastIndexOf(' | ') + 3);
    if (hint === '-') expect(said).toBe('-');
    else expect(said).toContain(hint);
  });

  test('a swapped pair is hinted at, not put right', () => {
    for (const height of ['90 in', '90”', '90 inches']) {
      const text = `order: 1\nhorse: { height: ${height}, heart-girth: 62 in }\nsaddle: { rigging: full }`;
      expect(problems(text)).toMatchObject([
        { path: 'horse.height', hint: 'are height and heart-girth swapped?' },
      ]);
    }
  });
  test('all faults of a document at once, in the order of the text, each once', () => {
    const text =
      'order:\nhorse: { height: 15.4 hh, kind: cow }\nsaddle: { rigging: full, dbl: 1 }\ntaken: soon\nx: 1\n';
    expect(problems(text).map((p) => p.path)).toEqual([
      'order',
      'horse.height',
      'horse.kind',
      'saddle.dbl',
      'taken',
      'x',
    ]);
  });
  test('a block left empty is told once', () => {
    expect(told('order: 1\nhorse:\nsaddle: { rigging: full }')).toEqual([
      '2:1 horse | nothing | a value: it is empty | -',
    ]);
  });
  test('the number of the document is said when there are several', () => {
    expect(problems('order: 1\n')[0]).not.toHaveProperty('document');
    expect(problems(`${least}---\norder: 2\n`)[0]).toMatchObject({ document: 2, line: 5, file: 'o.yaml' });
  });
  test('an order that failed still says which one it was', () => {
    expect(readOrders('order: 77\nhorse: {', 'o.yaml')).toMatchObject([{ ok: false, order: '77', line: 1 }]);
    expect(readOrders('order: 78\nhors: 1', 'o.yaml')).toMatchObject([{ ok: false, order: '78' }]);
    expect(readOrders('horse: 1', 'o.yaml')[0]).not.toHaveProperty('order');
  });
  test('columns count characters, also after an emoji and on Windows', () => {
    expect(told(`${least}customer: { name: 🐴, nam: x }`)[0]).toMatch(/^4:22 customer.nam /);
    expect(told(`${least}usee: roping\n`.replaceAll('\n', '\r\n'))[0]).toMatch(/^4:1 usee /);
  });
});

describe('how lines stand', () => {
  const rest = '\nsaddle:\n  rigging: full\n';
  const tab = 'there is a tab: replace it with spaces';
  test.each<[string, string[]]>([
    ['horse:\n  height: 15 hh\n   kind: pony', ['4:4 one space too far right']],
    ['horse:\n  height: 15 hh\n  kind: pony\n    withers: low', ['5:5 two spaces too far right']],
    [' horse:\n  height: 15 hh', ['2:2 one space too far right']],
    ['horse:\n  height: 15 hh\n kind: pony', ['4:2 one space too far left']],
    ['horse:\n   height: 15 hh\n  kind: pony\n  withers: low', ['4:3 one space too far left']],
    ['horse:\n\theight: 15 hh\n\tkind: pony', [`3:1 ${tab}`, `4:1 ${tab}`]],
    ['horse:\n  height: 15 hh\n  \tkind: pony\n  withers: low', [`4:1 ${tab}`]],
    ['horse:\n  height:15 hh\n  kind: pony', ['3:3 put a space after "height:"']],
    ['horse:\n  kind: pony\n  height:15 hh', ['4:3 put a space after "height:"']],
    ['horse: { height:15 hh }', ['2:10 put a space after "height:"']],
    ['horse:\n  height:15 hh', ['3:3 put a space after "height:"']],
    ['horse: { heart-girth: 73,5 in }', ['2:23 use a point for decimals: write heart-girth: 73.5 in']],
    ['horse: { height: 15 hh }\nnotes: so: it is', ['3:8 put text with a colon and a space in quotes']],
  ])('%s', (text, hints) => {
    const said = problems(`order: 1\n${text}${rest}`).map(
      (p) => `${p.line}:${p.column} ${p.hint?.replace('this line is ', '').replace(/;.*/, '') ?? '-'}`,
    );
    expect(said).toEqual(hints);
  });
});
