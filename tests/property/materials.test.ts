/** Laws of a backlog's papers: cuts and sums meet the tickets in any file order. */
import fs from 'node:fs';
import path from 'node:path';
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { readOrders } from '../../src/order/read-orders.ts';
import type { Order, Shop } from '../../src/order/types.ts';
import type { Ticket } from '../../src/work/ticket.ts';
import { materialsCsv, materialsJson } from '../../src/views/materials-data.ts';
import { scheduleJson } from '../../src/views/schedule-data.ts';
import { defaultShop } from '../../src/cinch/default-shop.ts';
import { cases, long } from '../support/cases.ts';
import { backlogFiles } from '../support/backlog/backlog.ts';
import { backlogFrom } from '../support/backlog-papers.ts';
import { repo, run } from '../support/run-cli.ts';

const known: readonly Order[] = [...backlogFiles({ count: 60, seed: 11, faultyPercent: 0 })].flatMap(
  ({ name, text }) => readOrders(text, name).flatMap((read) => (read.ok ? [read.order] : [])),
);

/** Two colors of each ply, so that something must be bought. */
const shops: fc.Arbitrary<Shop> = fc
  .array(
    fc.record({
      counts: fc.tuple(fc.nat(2), fc.nat(2)),
      opened: fc.array(fc.integer({ min: 0, max: 200 }), { maxLength: 4 }),
      orderable: fc.boolean(),
      none: fc.boolean(),
    }),
    { minLength: 4, maxLength: 4 },
  )
  .map((stocks) => ({
    ...defaultShop,
    cords: stocks.map(({ counts, opened, orderable, none }, i) => {
      const putUps = none
        ? []
        : [
            { lot: 'A', feet: 300, count: counts[0], opened },
            { feet: 150.5, count: counts[1], opened: [] },
          ];
      const sum = (list: readonly number[]): number => list.reduce((a, b) => a + b, 0);
      const feetOnHand = sum(putUps.map(({ feet, count, opened: left }) => feet * count + sum(left)));
      return { color: i % 2 === 0 ? 'Natural' : 'black', ply: i < 2 ? 8 : 2, putUps, feetOnHand, orderable };
    }),
  }));

const colors = fc.constantFrom(undefined, ['natural'], ['NATURAL', 'Black'], ['plum'], ['black']);
const backlogs = fc
  .array(
    fc.record({
      order: fc.constantFrom(...known),
      body: colors,
      accent: colors,
      quantity: fc.integer({ min: 1, max: 3 }),
    }),
    { minLength: 1, maxLength: 7 },
  )
  .map((list) =>
    list.map(({ order, body, accent, quantity }): Order => ({
      ...order,
      quantity,
      colors: { body, accent },
    })),
  );

/** Feet by color and ply, of all cinches. */
function feetOf({ pieces, accents, quantity }: Ticket): [string, number][] {
  const all = [...pieces, ...accents.map(({ color, feet }) => ({ color, feet, ply: 2 }))];
  return all.map(({ color, ply, feet }) => [`${ply} ${color?.toLowerCase() ?? 'not said'}`, feet * quantity]);
}

const sums = (entries: readonly (readonly [string, number])[]): Record<string, number> => {
  const found: Record<string, number> = {};
  for (const [key, feet] of entries) found[key] = (found[key] ?? 0) + feet;
  return found;
};

describe('materials', () => {
  test('need the cord the tickets say, from lots or as a shortage', () => {
    fc.assert(
      fc.property(backlogs, shops, (orders, shop) => {
        const { orders: taken, materials } = backlogFrom(orders, shop);
        const needed = materials.cords.map(
          ({ color, ply, needed: all }) =>
            [`${ply} ${color?.toLowerCase() ?? 'not said'}`, all / 96] as const,
        );
        expect(sums(needed)).toEqual(sums(taken.flatMap(({ ticket }) => feetOf(ticket))));
        for (const { onHand, lots, short, needed: all } of materials.cords) {
          const pulled = lots.reduce((sum, { length }) => sum + length, 0);
          const missing = short.reduce((sum, { total }) => sum + total, 0);
          expect(pulled + missing).toBe(onHand === undefined ? 0 : all);
        }
      }),
      { seed: 71, numRuns: cases(15, 60) },
    );
  });

  test('cut every piece once, one dye lot per order and color, and no more than there is', () => {
    fc.assert(
      fc.property(backlogs, shops, (orders, shop) => {
        const { materials } = backlogFrom(orders, shop);
        const { plan, cuts } = materials;
        const asked = [...cuts.values()]
          .filter(({ known: has }) => has)
          .flatMap(({ id, quantity }) => Array.from({ length: quantity }, (_, i) => `${id} ${i + 1}`));
        const done = plan.materials.flatMap(({ putUps, short }) => [
          ...putUps.flatMap(({ pieces }) => pieces),
          ...short.flatMap(({ pieces }) => pieces),
        ]);
        expect(done.map(({ cut, number }) => `${cut} ${number}`).sort()).toEqual(asked.sort());
        for (const { putUps } of plan.materials) {
          const lots = new Map<string, Set<string>>();
          for (const { origin, lot, length, pieces, leftover } of putUps) {
            expect(pieces.reduce((sum, piece) => sum + piece.length, leftover)).toBe(length);
            for (const { order } of pieces) {
              lots.set(order, (lots.get(order) ?? new Set()).add(`${origin === 'bought'} ${lot}`));
            }
          }
          for (const own of lots.values()) expect(own.size).toBe(1);
        }
      }),
      { seed: 72, numRuns: cases(15, 60) },
    );
  });

  test('buy the buckles and dees that are short, if they can be ordered', () => {
    fc.assert(
      fc.property(backlogs, (orders) => {
        const { materials, orders: taken } = backlogFrom(orders);
        const buckles = sums(taken.map(({ ticket: t }) => [t.buckle.id, 2 * t.quantity]));
        const needs = materials.hardware.filter(({ kind }) => kind === 'buckle');
        expect(Object.fromEntries(needs.map(({ id, needed }) => [id, needed]))).toEqual(buckles);
        for (const { id, short, orderable } of materials.hardware) {
          const bought = materials.buy.flatMap((buy) => ('id' in buy && buy.id === id ? [buy.count] : []));
          expect(bought).toEqual(short > 0 && orderable ? [short] : []);
        }
      }),
      { seed: 73, numRuns: cases(10, 30) },
    );
  });
});

test('the order of the orders changes no paper, even if two share a number', () => {
  const twins = known.map((order, i) => ({ ...order, order: `T-${i % 40}` }));
  const list = fc.shuffledSubarray(twins, { minLength: 3, maxLength: 12 });
  const file = (order: Order): string => `${known.findIndex(({ horse }) => horse === order.horse)}.yaml`;
  fc.assert(
    fc.property(list, (orders) => {
      const byFile = new Map(orders.map((order) => [file(order), order]));
      const turned = [...byFile.values()].reverse();
      const [a, b] = [[...byFile.values()], turned].map((each) => backlogFrom(each, defaultShop, file));
      expect(materialsJson(a!.materials, a!.results)).toBe(materialsJson(b!.materials, b!.results));
      expect(materialsCsv(a!.materials, a!.results)).toBe(materialsCsv(b!.materials, b!.results));
      expect(scheduleJson(a!.agenda, a!.asked, a!.results)).toBe(
        scheduleJson(b!.agenda, b!.asked, b!.results),
      );
    }),
    { seed: 74, numRuns: cases(6, 20) },
  );
});

describe('on the command line', () => {
  const folder = path.join('examples', 'orders');
  const names = fs.readdirSync(path.join(repo, folder)).filter((name) => name.endsWith('.yaml'));
  const files = names.map((name) => path.join(folder, name));
  const formats = [...(long ? ['table', 'markdown', 'html'] : []), 'csv', 'json'];

  test.each(['materials', 'schedule'])(
    '%s says the same whatever the order of the files, and of a folder',
    async (command) => {
      const rest = command === 'materials' ? ['--date', '2026-11-20'] : ['--from', '2026-11-20'];
      for (const format of formats) {
        const said = async (names: readonly string[]): Promise<string> =>
          (await run([command, ...names, ...rest, '--format', format])).stdout;
        const first = await said(files);
        expect(first.length).toBeGreaterThan(1000);
        expect(await said([...files].reverse())).toBe(first);
        expect(await said([files[4]!, folder])).toBe(first);
      }
    },
  );
});
