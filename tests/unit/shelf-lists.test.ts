/** Lists of a backlog by hand: cord, spools, hardware, and what each order lacks. */
import { describe, expect, test } from 'vitest';
import type { Cord } from '../../src/order/types.ts';
import { EIGHTHS_A_FOOT } from '../../src/units/feet.ts';
import { cutsOf, cuttingTask } from '../../src/work/cuts.ts';
import { materialsOf } from '../../src/work/materials.ts';
import type { Keyed } from '../../src/work/planned.ts';
import { sharedShelf } from '../../src/work/shelf.ts';
import { keyed, natural, rare, shopOf } from '../support/cords.ts';

describe('the list of cord', () => {
  const rust: Cord = {
    ...natural,
    color: 'rust',
    ply: 2,
    orderable: true,
    leadDays: undefined,
    putUps: [],
    feetOnHand: 0,
  };
  const black: Cord = {
    ...natural,
    color: 'black',
    feetOnHand: 0,
    putUps: [{ lot: 'K', feet: 50, count: 0, opened: [] }],
  };
  const shop = shopOf(natural, rust, black, { ...rare, color: 'plum', putUps: [], feetOnHand: 0 });
  const orders = [
    keyed(
      '1',
      [
        [undefined, 20],
        ['natural', 40],
      ],
      ['rust', 9],
    ),
    keyed(
      '2',
      [
        ['Natural', 70],
        ['nature', 5],
      ],
      ['nature', 3],
    ),
    keyed(
      '3',
      [
        ['black', 51],
        ['plum', 10],
      ],
      ['rust', 8],
    ),
  ];
  const listed = () => materialsOf(orders, shop, '2026-11-30');
  const feet = (eighths: number | undefined) =>
    eighths === undefined ? undefined : eighths / EIGHTHS_A_FOOT;

  test('has body cord by color first, then accents, and what nobody chose last of its ply', () => {
    const { cords } = listed();
    expect(
      cords.map((need) => [
        need.ply,
        need.color,
        need.pieces,
        feet(need.needed),
        feet(need.onHand),
        need.near,
      ]),
    ).toEqual([
      [8, 'black', 1, 51, 0, undefined],
      [8, 'natural', 2, 110, 100, undefined],
      [8, 'nature', 1, 5, undefined, 'natural'],
      [8, 'plum', 1, 10, 0, undefined],
      [8, undefined, 1, 20, undefined, undefined],
      [2, 'nature', 1, 3, undefined, undefined],
      [2, 'rust', 2, 17, 0, undefined],
    ]);
    expect(cords.map((need) => need.orders.join(' '))).toEqual(['3', '1 2', '2', '3', '1', '2', '1 3']);
  });

  test('pulls from lots on hand before bought ones, and says why some is short', () => {
    const { cords } = listed();
    const of = (color: string, ply: number) =>
      cords.find((need) => need.color === color && need.ply === ply)!;
    const lots = of('natural', 8).lots.map(({ bought, pieces, length }) => [bought, pieces, feet(length)]);
    expect(lots).toEqual([
      [false, 1, 40],
      [true, 1, 70],
    ]);
    const why = (color: string, ply: number) => of(color, ply).short.map((each) => each.why);
    expect([why('natural', 8), why('black', 8), why('plum', 8), why('rust', 2)]).toEqual([
      ...[[], ['too-long'], ['none-to-order'], ['no-length', 'no-length']],
    ]);
  });

  test('buys spools of the lengths there are, else cord by its longest piece, with the day it comes', () => {
    const cord = listed().buy.filter(({ kind }) => kind === 'put-up' || kind === 'cord');
    expect(cord).toEqual([
      {
        kind: 'put-up',
        color: 'natural',
        ply: 8,
        count: 1,
        length: 300 * EIGHTHS_A_FOOT,
        comes: '2026-12-07',
      },
      {
        kind: 'cord',
        color: 'rust',
        ply: 2,
        length: 17 * EIGHTHS_A_FOOT,
        longest: 9 * EIGHTHS_A_FOOT,
        comes: undefined,
      },
    ]);
  });

  test('and each order its lacks: on order, too long for any spool, none to be had, not in the shop file', () => {
    const { shares } = sharedShelf(orders, shop, '2026-11-30');
    expect(listed().shares).toEqual(shares);
    const lacks = (key: string) =>
      shares
        .get(key)!
        .lacks.map(({ name, ply, amount, supply, comes }) => [name, ply, feet(amount), supply, comes]);
    expect(lacks('1')).toEqual([['rust', 2, 9, 'ordered', undefined]]);
    expect(lacks('2')).toEqual([
      ['natural', 8, 70, 'ordered', '2026-12-07'],
      ['nature', 8, 5, 'unknown', undefined],
      ['nature', 2, 3, 'unknown', undefined],
    ]);
    expect(lacks('3')).toEqual([
      ['black', 8, 51, 'too-long', undefined],
      ['plum', 8, 10, 'none', undefined],
      ['rust', 2, 8, 'ordered', undefined],
    ]);
    expect(['1', '2', '3'].map((key) => shares.get(key)!.shelf)).toEqual([
      'acceptable',
      'cannot-tell',
      'refuse',
    ]);
    expect(['1', '2', '3'].map((key) => shares.get(key)!.from)).toEqual([undefined, '2026-12-07', undefined]);
    expect(['1', '2', '3'].map((key) => shares.get(key)!.certain)).toEqual([false, false, false]);
  });
});

describe('the cord of a backlog as a cutting task', () => {
  const shelf = shopOf(
    {
      ...natural,
      putUps: [
        { feet: 300, count: 2, opened: [120, 120, 0] },
        { lot: 'A', feet: 300, count: 0, opened: [300] },
        { lot: 'A', feet: 300, count: 1, opened: [] },
        { feet: 0, count: 3, opened: [] },
      ],
    },
    { ...rare, color: 'black' },
  );
  const feet = (eighths: number) => eighths / EIGHTHS_A_FOOT;
  test('has equal spools once, whole apart from opened ones, and buys each length once', () => {
    const { onHand, buyable, usable } = cuttingTask([], shelf);
    expect(
      onHand.map(({ color, lot, length, count, opened }) => [color, lot, feet(length), count, opened]),
    ).toEqual([
      ['natural', '', 300, 2, false],
      ['natural', '', 120, 2, true],
      ['natural', 'A', 300, 1, true],
      ['natural', 'A', 300, 1, false],
      ['black', 'A', 100, 1, true],
    ]);
    expect(new Set(onHand.map(({ id }) => id)).size).toBe(5);
    expect(buyable.map(({ color, length, count }) => [color, feet(length), count])).toEqual([
      ['natural', 300, undefined],
    ]);
    expect(usable).toBeGreaterThan(0);
  });
  test('cuts what has a color of the shop and a length, one entry a piece', () => {
    const order = keyed(
      '1',
      [
        ['Natural', 40],
        ['gold', 9],
        [undefined, 8],
        ['black', 0],
      ],
      ['natural', 7],
    );
    const all = cutsOf(order, shelf);
    expect(all.map(({ id, color, ply, known, use }) => [id, color, ply, known, use])).toEqual([
      ['1/1', 'natural', 8, true, 'strands 1 to 13'],
      ['1/2', 'gold', 8, false, 'strands 1 to 13'],
      ['1/3', undefined, 8, false, 'strands 1 to 13'],
      ['1/4', 'black', 8, true, 'strands 1 to 13'],
      ['1/5', 'natural', 2, false, 'accent'],
    ]);
    expect(cuttingTask(all, shelf).cuts).toEqual([
      { id: '1/1', order: '1', color: 'natural', ply: 8, length: 40 * EIGHTHS_A_FOOT, quantity: 1 },
    ]);
  });
});

describe('lots and lengths', () => {
  const lots = (list: Keyed[], ...cords: Cord[]) =>
    materialsOf(list, shopOf(...cords), '2026-11-30').cords.map((need) =>
      need.lots.map(({ lot, bought }) => [lot, bought]),
    );
  test('are pulled by name, bought ones last', () => {
    const putUps = [
      { lot: 'C', feet: 300, count: 1, opened: [] },
      { lot: 'B', feet: 200, count: 1, opened: [] },
    ];
    const list = ['1', '2', '3'].map((key) => keyed(key, [['natural', 190]]));
    expect(lots(list, { ...natural, feetOnHand: 500, putUps })).toEqual([
      [
        ['B', false],
        ['C', false],
        ['new', true],
      ],
    ]);
  });
  test('of one color are bought by ply', () => {
    const thin: Cord = { ...natural, ply: 2, feetOnHand: 0, putUps: [{ feet: 100, count: 0, opened: [] }] };
    const list = [keyed('1', [['natural', 250]], ['natural', 30])];
    const { buy } = materialsOf(list, shopOf(natural, thin), '2026-11-30');
    const spools = buy.flatMap((each) =>
      each.kind === 'put-up' ? [[each.ply, each.count, each.length / EIGHTHS_A_FOOT]] : [],
    );
    expect(spools).toEqual([
      [8, 1, 300],
      [2, 1, 100],
    ]);
  });
  test('of a cut longer than any spool are too long; as long as the longest is not', () => {
    const putUps = [
      { lot: 'A', feet: 100, count: 0, opened: [] },
      { lot: 'B', feet: 300, count: 0, opened: [] },
    ];
    const cord = { ...natural, feetOnHand: 0, putUps };
    const share = (...pieces: number[]) =>
      sharedShelf(
        [
          keyed(
            '1',
            pieces.map((each) => ['natural', each] as const),
          ),
        ],
        shopOf(cord),
        '2026-11-30',
      ).shares.get('1')!;
    expect([share(300).shelf, share(301).shelf, share(20, 301).shelf]).toEqual([
      'acceptable',
      'refuse',
      'refuse',
    ]);
    expect(share(0)).toMatchObject({ lacks: [], shelf: 'good', certain: true });
  });
});
