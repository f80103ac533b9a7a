/** The shop file at the door, shipped and compiled in. */
import { describe, expect, test } from 'vitest';
import { defaultModel } from '../../src/numbers/numbers.ts';
import { defaultShop } from '../../src/cinch/default-shop.ts';
import { problemLine, shopIn as shop, shopProblems } from '../support/door.ts';
import { defaultShopSource } from '../support/generate-shop.ts';
import { repoText } from '../support/run-cli.ts';

const example = repoText('examples/shop.yaml');
const told = (text: string): string[] => shopProblems(text).map(problemLine);

const small = `shop: Test
strands: { min: 11, max: 31 }
lengths: { min: 20 in, max: 38 in, step: 1 in }
buckles:
  - { id: a, bar: 3 in, frame-width: 4 in, frame-height: 2 in, single: { min: 11, max: 17 }, on-hand: 3, orderable: true }
  - { id: b, bar: 4 in, frame-width: 5 in, frame-height: 2 in, double: { min: 21, max: 27 }, on-hand: 0, orderable: false }
cord:
  - { color: natural, ply: 8, put-ups: [{ feet: 100, count: 1 }], orderable: true }
  - { color: natural, ply: 2, put-ups: [{ lot: a, feet: 100, count: 0, opened: [62.5] }], orderable: true }
`;

describe('the shop that ships', () => {
  test('is compiled in, fresh: run `npm run generate` when this fails', async () => {
    const source = repoText('src/cinch/default-shop.ts');
    expect(source).toBe(await defaultShopSource(example));
    expect(defaultShop).toEqual(shop(example));
  });
  test('says that it is invented', () => {
    expect(example.split('\n')[0]).toMatch(/invented/);
    expect(defaultShop.name).toMatch(/invented/);
  });
  test('has a buckle for every odd count from 11 to 31, single up to 17, double from 27, 19 to 25 either way', () => {
    const takes = (layer: 'single' | 'double', strands: number) =>
      defaultShop.buckles.some(
        ({ [layer]: range }) => range !== undefined && strands >= range.min && strands <= range.max,
      );
    for (let strands = 11; strands <= 31; strands += 2) {
      expect([strands, takes('single', strands)]).toEqual([strands, strands <= 25]);
      expect([strands, takes('double', strands)]).toEqual([strands, strands >= 19]);
    }
  });
  test('shows a buckle to be ordered, one that cannot be, a special one, and cord of both plies', () => {
    expect(defaultShop.buckles.some((buckle) => buckle.onHand === 0 && buckle.orderable)).toBe(true);
    expect(defaultShop.buckles.some((buckle) => !buckle.orderable)).toBe(true);
    expect(defaultShop.buckles.some((buckle) => buckle.special)).toBe(true);
    expect(new Set(defaultShop.cords.map((cord) => cord.ply))).toEqual(new Set([8, 2]));
  });
});

describe('what gets through', () => {
  test('a small shop, with the default model', () => {
    expect(shop(small)).toMatchObject({
      name: 'Test',
      overridden: [],
      model: defaultModel,
      lengths: { min: 20, max: 38, step: 1 },
    });
    expect(shop(small).buckles[0]).toEqual({
      id: 'a',
      barWidth: 3,
      frameWidth: 4,
      frameHeight: 2,
      single: { min: 11, max: 17 },
      special: false,
      onHand: 3,
      orderable: true,
    });
  });
  test('overrides of every unit are laid over the defaults', () => {
    const read = shop(
      `${small}model:\n  tension: 30.5 lbf\n  required-clearance: 4 cm\n  opening-above: 0.75\n  ratio-round: 0.8\n  chance-good: 0.9\n`,
    );
    const own = {
      'required-clearance': 200 / 127,
      'opening-above': 0.75,
      'ratio-round': 0.8,
      tension: 30.5,
      'chance-good': 0.9,
    };
    expect(read.model).toEqual({ ...defaultModel, ...own });
    expect(new Set(read.overridden)).toEqual(new Set(Object.keys(own)));
  });
});

describe('how a fault is told', () => {
  test.each([
    ['', '1:1  | - | a shop: the file is empty', '-'],
    [`${small}---\nshop: b\n`, '11:1  | a second document | one shop in a file', '-'],
    [`${small}prices: {}\n`, '10:1 prices | prices | a key at the top: shop, strands', 'buckles.price'],
    [small.replace('shop: Test', 'name: Test'), '1:1 shop | - | name of the shop', '-'],
    [`${small}name: Test\n`, '10:1 name | name | a key at the top: shop', 'did you mean "shop"?'],
    [
      small.replace('id: a', 'id: a, name: b'),
      '5:14 buckles[0].name | name | a key of',
      'did you mean "id"?',
    ],
    [small.replace('id: a', 'id: a, width: 3 in'), '5:14 buckles[0].width | width', 'did you mean "bar"?'],
    [
      small.replace('{ min: 11, max: 31 }', '11 to 31'),
      '2:10 strands | 11 to 31 | strands the shop ties, as a block of keys, such as { min: 11, max: 31 }',
      '-',
    ],
    [
      small.replace('{ min: 20 in, max: 38 in, step: 1 in }', '20 to 38'),
      '3:10 lengths | 20 to 38 | lengths the shop ties, as a block of keys, such as { min: 20 in, max: 38 in, step: 1 in }',
      '-',
    ],
    [
      small.replace('min: 11, max: 31', 'min: 12, max: 31'),
      '2:17 strands.min | 12 | fewest strands, an odd',
      'even: with one continuous cord, only an odd count leaves a tail at each buckle',
    ],
    [
      small.replace('min: 11, max: 31', 'min: 31, max: 11'),
      '2:26 strands.max | 11 | max at least min (31)',
      '-',
    ],
    [small.replace('max: 38 in', 'max: 18 in'), '3:29 lengths.max | 18 in | max at least min (20 in)', '-'],
    [
      small.replace('step: 1 in', 'step: 0 in'),
      '3:42 lengths.step | 0 in | step of lengths from 0.25 in to 4 in',
      '-',
    ],
    [small.replace('max: 17', 'max: 9'), '5:88 buckles[0].single.max | 9 | max at least min (11)', '-'],
    [
      small.replace('id: b', 'id: a'),
      '6:11 buckles[1].id | a | each id once; this one is on line 5 already',
      '-',
    ],
    [
      small.replace('bar: 4 in', 'bar: 6 in'),
      '6:38 buckles[1].frame-width | 5 in | a frame at least as wide',
      '-',
    ],
    [small.replace(' double: { min: 21, max: 27 },', ''), '6:5 buckles[1] | - | single or double', '-'],
    [small.replace('on-hand: 3', 'onhand: 3'), '5:5 buckles[0].on-hand | - | how many buckles', '-'],
    [small.replace('ply: 2', 'ply: 8'), '9:14 cord[1].color | natural | each color once', '-'],
    [
      small.replace('lot: a, feet: 100', 'lot: a, feet: 62,5'),
      '9:57 cord[1].put-ups[0].feet | 62,5 | one value',
      'use a point for decimals',
    ],
    [small.replace('62.5', '-1'), '9:81 cord[1].put-ups[0].opened[0] | -1', '-'],
    [
      `${small}model:\n  required-clearence: 1 in`,
      '11:3 model.required-clearence',
      'did you mean "required-clearance"?',
    ],
    [`${small}model:\n  required-clearance: 1.25`, '11:23 model.required-clearance | 1.25', 'add a unit'],
    [
      `${small}model:\n  required-clearance: 9 in`,
      '11:23 model.required-clearance | 9 in | elbow clearance wanted from 0.50 in to 4 in',
      'did you mean "9 cm"?',
    ],
    [
      `${small}model:\n  required-clearance: 0.9 in`,
      '11:23 model.required-clearance | 0.9 in | required-clearance at least floor-clearance (1 in)',
      '-',
    ],
    [`${small}model:\n  chance-good: 80 %`, '11:16 model.chance-good | 80 %', 'did you mean "0.8"?'],
    [
      `${small}model:\n  chance-good: 0.55`,
      '11:16 model.chance-good | 0.55 | chance-good at least chance-acceptable (0.6)',
      '-',
    ],
    [
      `${small}model:\n  run-low: 2 in`,
      '11:12 model.run-low | 2 in | run-low at least run-least (3 in)',
      '-',
    ],
    [
      `${small}model:\n  run-high: 12 in`,
      '11:13 model.run-high | 12 in | run-high at most run-most (10 in)',
      '-',
    ],
    [`${small}model:\n  tension: 13 kgf`, '11:12 model.tension | 13 kgf | usual girth tension', 'lbf'],
    [
      small.replace(/buckles:[^]*cord:/, 'buckles: []\ncord:'),
      '4:10 buckles | an empty list | at least one entry',
      '-',
    ],
    [small.replace('cord:', 'cords:'), '1:1 cord | - | cord, as a list', '-'],
  ])('%#: %s', (text, start, hint) => {
    const line = told(text)[0] ?? 'nothing';
    expect(line.slice(0, start.length)).toBe(start);
    const said = line.slice(line.lastIndexOf(' | ') + 3);
    if (hint === '-') expect(said).toBe('-');
    else expect(said).toContain(hint);
  });
  test('all at once', () => {
    const text = small
      .replace('min: 11, max: 31', 'min: 31, max: 11')
      .replace('id: b', 'id: a')
      .replace('ply: 2', 'ply: two');
    expect(told(`${text}model: { chance-good: 2 }`)).toHaveLength(4);
  });
});
