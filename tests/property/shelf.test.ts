/** One shelf for a backlog, against a second plain count and luxon. */
import fc from 'fast-check';
import { DateTime } from 'luxon';
import { describe, expect, test } from 'vitest';
import { sizeOrder } from '../../src/index.ts';
import { readOrders } from '../../src/order/read-orders.ts';
import type { Order, Shop } from '../../src/order/types.ts';
import { defaultShop } from '../../src/cinch/default-shop.ts';
import { agendaOf } from '../../src/work/agenda.ts';
import { materialsOf } from '../../src/work/materials.ts';
import { promiseForOrder } from '../../src/work/new-work.ts';
import { plannedOf, type Keyed } from '../../src/work/planned.ts';
import { cases } from '../support/cases.ts';
import { backlogFiles } from '../support/backlog/backlog.ts';

const day = '2026-11-30';
const dayIn = (days: number): string => DateTime.fromISO(day, { zone: 'utc' }).plus({ days }).toISODate()!;

const known: readonly Order[] = [...backlogFiles({ count: 40, seed: 12, faultyPercent: 0 })].flatMap(
  ({ name, text }) => readOrders(text, name).flatMap((read) => (read.ok ? [read.order] : [])),
);

/** Sized once with a full shelf; random shops change the shelf. */
const planned = known.flatMap((order) => {
  const plan = plannedOf(
    sizeOrder({ ...order, colors: { body: ['natural'] }, options: [] }, defaultShop),
    day,
  );
  return plan === undefined ? [] : [plan];
});

const backlogs = fc
  .uniqueArray(
    fc.record({
      i: fc.nat(planned.length - 1),
      quantity: fc.integer({ min: 1, max: 6 }),
      due: fc.option(fc.integer({ min: 0, max: 9 }), { nil: undefined }),
    }),
    { selector: ({ i }) => i, minLength: 1, maxLength: 12 },
  )
  .map((list) =>
    list.map(({ i, quantity, due }, n): Keyed => {
      const plan = planned[i]!;
      const when = due === undefined ? undefined : dayIn(due * 5);
      const { pieces: all } = plan.ticket;
      // One piece per cinch, no accents: one spool can be counted by hand.
      const ticket = { ...plan.ticket, quantity, due: when, pieces: all.slice(0, 1), accents: [], dees: [] };
      return { ...plan, key: `${n}`, file: 'o.yaml', order: { ...plan.order, quantity, due: when }, ticket };
    }),
  );

const shops = fc
  .record({
    onHand: fc.nat(12),
    lead: fc.option(fc.nat(30), { nil: undefined }),
    feet: fc.integer({ min: 1, max: 1500 }),
  })
  .map(({ onHand, lead, feet }): Shop => ({
    ...defaultShop,
    buckles: defaultShop.buckles.map((buckle) => ({ ...buckle, onHand, orderable: true, leadDays: lead })),
    cords: defaultShop.cords
      .filter(({ color, ply }) => color === 'natural' && ply === 8)
      .map((cord) => ({
        ...{ ...cord, putUps: [{ lot: 'A', feet: 9000, count: 0, opened: [feet] }] },
        ...{ feetOnHand: feet, orderable: true, leadDays: 12 },
      })),
  }));

/** In order of due days, everybody takes what is there. */
function counted(orders: readonly Keyed[], shop: Shop) {
  const inTurn = [...orders].sort((a, b) => {
    const [x, y] = [a, b].map(({ order }) => (order.due === undefined ? Infinity : Date.parse(order.due)));
    return x === y ? orders.indexOf(a) - orders.indexOf(b) : x! - y!;
  });
  const left = new Map(shop.buckles.map(({ id, onHand }) => [id, onHand]));
  let feet = shop.cords[0]!.feetOnHand;
  const lacks = new Map<string, { buckles: number; feet: number }>();
  for (const { key, order, ticket } of inTurn) {
    let buckles = 0;
    for (let n = 0; n < 2 * order.quantity; n++) {
      const there = left.get(ticket.buckle.id)!;
      if (there > 0) left.set(ticket.buckle.id, there - 1);
      else buckles++;
    }
    const needs = ticket.pieces[0]!.feet * order.quantity;
    const has = needs <= feet;
    if (has) feet -= needs;
    lacks.set(key, { buckles, feet: has ? 0 : needs });
  }
  return lacks;
}

describe('one shelf', () => {
  test('materials and schedule tell the shortages of a plain count, and wait for the same days', () => {
    fc.assert(
      fc.property(backlogs, shops, (orders, shop) => {
        const lacks = counted(orders, shop);
        const materials = materialsOf(orders, shop, day);
        const agenda = agendaOf(orders, shop, { from: day, ordered: day });
        expect(agenda.shares).toEqual(materials.shares);
        const buckleDays = shop.buckles[0]!.leadDays;
        for (const { key } of orders) {
          const own = materials.shares.get(key)!;
          const of = (kind: string): number =>
            own.lacks.filter((lack) => lack.kind === kind).reduce((sum, { amount }) => sum + amount, 0);
          const { buckles, feet } = lacks.get(key)!;
          expect([of('buckle'), of('cord') / 96]).toEqual([buckles, feet]);
          const days = [
            ...(buckles > 0 && buckleDays !== undefined ? [buckleDays] : []),
            ...(feet > 0 ? [12] : []),
          ];
          const comes = days.length === 0 ? undefined : dayIn(Math.max(...days));
          expect(own.from).toBe(comes);
          expect(own.certain).toBe(buckles === 0 || buckleDays !== undefined);
          const { startDay } = agenda.jobs.get(key)!;
          expect(startDay >= (comes ?? day)).toBe(true);
        }
        const short = materials.hardware.reduce((sum, need) => sum + need.short, 0);
        const bought = materials.buy.reduce((sum, buy) => sum + ('id' in buy ? buy.count : 0), 0);
        const all = [...lacks.values()].reduce((sum, { buckles }) => sum + buckles, 0);
        expect([short, bought]).toEqual([all, all]);
        const [plan] = materials.plan.materials;
        const cutFromBought = plan!.putUps
          .filter(({ origin }) => origin === 'bought')
          .flatMap(({ pieces }) => pieces.map(({ order }) => order));
        const waiting = orders.filter(({ key }) => lacks.get(key)!.feet > 0).map(({ key }) => key);
        expect([...new Set(cutFromBought)].sort()).toEqual(waiting.sort());
      }),
      { seed: 81, numRuns: cases(20, 200) },
    );
  });

  test('what is promised new stands in the plan, and only promises that are told move', () => {
    fc.assert(
      fc.property(backlogs, shops, (orders, shop) => {
        const [added, ...rest] = orders;
        const before = agendaOf(rest, shop, { from: day, ordered: day });
        const { asked, agenda } = promiseForOrder(before, {
          ...added!,
          order: { ...added!.order, order: 'N' },
        });
        expect(agenda.jobs.get(asked.key)?.promise).toBe(asked.promise?.day);
        expect(asked.promise!.day >= (asked.share!.from ?? day)).toBe(true);
        const later = rest.filter(({ key }) => agenda.jobs.get(key)!.promise > before.jobs.get(key)!.promise);
        expect(later.map(({ key }) => key).sort()).toEqual(asked.moves.map(({ key }) => key).sort());
        if (added!.order.due === undefined) expect(asked.moves).toEqual([]);
      }),
      { seed: 82, numRuns: cases(25, 200) },
    );
  });
});
