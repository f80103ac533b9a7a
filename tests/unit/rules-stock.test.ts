/** The shelf rule: enough, to be ordered, or not. */
import { describe, expect, it, test } from 'vitest';
import type { Order, Shop } from '../../src/order/types.ts';
import { defaultShop } from '../../src/cinch/default-shop.ts';
import { shelfOf, type CordShelf, type Shelf } from '../../src/cinch/shelf.ts';
import { judgedBy } from '../support/judged.ts';
import { orderOf, plainBuckle } from '../support/orders.ts';
import { within } from '../support/within.ts';

describe('the shelf', () => {
  const cords = [
    { color: 'Natural', ply: 8, feetOnHand: 100, orderable: true, putUps: [] },
    { color: 'black', ply: 8, feetOnHand: 40, orderable: false, putUps: [] },
    { color: 'black', ply: 2, feetOnHand: 7, orderable: true, putUps: [] },
  ];
  const asked = (colors: Order['colors']) => shelfOf({ ...orderOf(), colors }, { ...defaultShop, cords });

  test('counts all colors of one ply together, whatever their capitals', () => {
    expect(asked({ body: ['natural', 'BLACK'], accent: ['black'] })).toEqual({
      body: { ply: 8, colors: ['natural', 'BLACK'], unknown: undefined, feetOnHand: 140, orderable: false },
      accent: { ply: 2, colors: ['black'], unknown: undefined, feetOnHand: 7, orderable: true },
    });
  });

  test('names the first color that the shop does not have, and asks nothing where none was said', () => {
    const { body } = asked({ body: ['natural', 'plum', 'mauve'] });
    expect(body).toMatchObject({ unknown: 'plum', feetOnHand: 100, orderable: false });
    for (const colors of [undefined, {}])
      expect([asked(colors).body.colors, asked(colors).accent.colors]).toEqual([[], []]);
  });
});

describe('stock', () => {
  const body: CordShelf = {
    ply: 8,
    colors: ['natural'],
    unknown: undefined,
    feetOnHand: 120,
    orderable: false,
  };
  const accent: CordShelf = {
    ply: 2,
    colors: ['rust', 'sage'],
    unknown: undefined,
    feetOnHand: 30,
    orderable: false,
  };
  const none: CordShelf = { ...accent, colors: [], feetOnHand: 0 };
  const cords = [
    { color: 'plum', ply: 8 },
    { color: 'russet', ply: 2 },
  ] as unknown as Shop['cords'];

  interface Ask {
    readonly shelf?: Partial<Shelf>;
    readonly quantity?: number;
    readonly feet?: number;
    readonly accentFeet?: number;
    readonly buckle?: Partial<typeof plainBuckle>;
  }
  const judged = ({ shelf, quantity = 1, feet = 60, accentFeet = 20, buckle }: Ask) =>
    judgedBy(
      'stock',
      { order: { quantity }, shop: { cords }, shelf: { body, accent: none, ...shelf } },
      { cordFeet: feet, accentFeet, buckle: { ...plainBuckle, ...buckle } },
    );

  it.each([
    [120, 1, 'good', 0],
    [121, 1, 'refuse', -1],
    [60, 2, 'good', 0],
    [61, 2, 'refuse', -2],
  ] as const)('body cord, %f ft for each of %i: %s', (feet, quantity, ...[judgement, margin]) => {
    const found = judged({ feet, quantity });
    expect(found.judgement).toBe(judgement);
    expect(found.margin).toBe(margin);
  });

  test('what is short may be ordered', () => {
    const short = judged({ feet: 121, shelf: { body: { ...body, orderable: true } } });
    expect(short).toMatchObject({ judgement: 'acceptable', margin: -1 });
    expect(short.told).toBe('needs 121 ft of natural cord; 120 ft on hand, the rest must be ordered');
    expect(judged({ feet: 120.2 }).told).toBe(
      "needs 121 ft of natural cord; 120 ft on hand, and we can't get more",
    );
  });

  test('no color asked for: only the buckle counts', () => {
    expect(judged({ shelf: { body: { ...none, ply: 8 } } })).toMatchObject({ judgement: 'good', margin: 7 });
    expect(judged({ shelf: { body: { ...none, ply: 8 } } }).told).toBe('the b buckles are on the shelf');
  });

  it.each([
    [{ onHand: 2 }, 1, 'good', 'natural cord are on the shelf'],
    [{ onHand: 1 }, 1, 'acceptable', 'b buckles must be ordered'],
    [{ onHand: 4 }, 2, 'good', 'natural cord are on the shelf'],
    [{ onHand: 3 }, 2, 'acceptable', 'b buckles must be ordered'],
    [{ onHand: 3, orderable: false }, 2, 'refuse', 'needs 4 b buckles; 3 on hand'],
  ] as const)('buckles %j for %i cinches: %s', (buckle, quantity, ...[judgement, told]) => {
    const found = judged({ buckle, quantity, feet: 20 });
    expect(found.judgement).toBe(judgement);
    expect(found.told).toContain(told);
    if (judgement !== 'good') expect(found.margin).toBe(buckle.onHand - 2 * quantity);
  });

  it.each([
    ['natual', 8, 'the shop file has no natual body cord'],
    ['plun', 8, 'the shop file has no plun body cord; did you mean plum?'],
    ['rusett', 2, 'the shop file has no rusett accent cord; did you mean russet?'],
    ['russet', 8, 'the shop file has no russet body cord'],
  ] as const)('a color %s of %i ply that is not there', (unknown, ply, told) => {
    const odd = { ...(ply === 8 ? body : accent), ply, colors: [unknown], unknown };
    const found = judged({ shelf: ply === 8 ? { body: odd } : { accent: odd } });
    expect(found).toEqual({ judgement: 'cannot-tell', margin: undefined, told });
  });

  describe('accent cord', () => {
    const short = (change: Partial<CordShelf>, ask: Ask = {}) =>
      judged({ ...ask, shelf: { accent: { ...accent, ...change } } });

    it.each([
      [{ accentFeet: 30 }, 'good'],
      [{ accentFeet: 31 }, 'refuse'],
      [{ accentFeet: 15, quantity: 2 }, 'good'],
      [{ accentFeet: 15.5, quantity: 2 }, 'refuse'],
    ] as const)('%j: %s', (ask, judgement) => {
      expect(short({}, { feet: 20, ...ask }).judgement).toBe(judgement);
    });

    test('names both colors and both plies', () => {
      expect(short({}, { accentFeet: 31 }).told).toBe(
        "needs 31 ft of rust and sage accent cord; 30 ft on hand, and we can't get more",
      );
      const more = short({ orderable: true }, { accentFeet: 15.2, quantity: 2, feet: 20 });
      expect(more.judgement).toBe('acceptable');
      within(more.margin!, -0.4, 1e-9);
      expect(more.told).toContain('needs 31 ft');
    });

    test('alone it is told alone, with its own margin', () => {
      const alone = judged({ shelf: { body: { ...none, ply: 8 }, accent }, accentFeet: 29 });
      expect(alone).toEqual({
        judgement: 'good',
        margin: 1,
        told: 'buckles and rust and sage cord are on the shelf',
      });
    });
  });

  test('of several troubles the worst is told, and of equal ones the cord before the buckle', () => {
    const worst = judged({ feet: 500, buckle: { onHand: 0 } });
    expect(worst).toMatchObject({ judgement: 'refuse', margin: -380 });
    expect(judged({ feet: 500, buckle: { onHand: 0, orderable: false } }).told).toContain('ft of natural');
    const unknown = { ...body, unknown: 'x', colors: ['x'] };
    expect(judged({ shelf: { body: unknown }, buckle: { onHand: 0 } }).judgement).toBe('cannot-tell');
    expect(judged({ shelf: { body: unknown }, buckle: { onHand: 0, orderable: false } }).judgement).toBe(
      'refuse',
    );
    expect(judged({ shelf: { accent }, accentFeet: 99, feet: 500 }).told).toContain('natural');
  });
});
