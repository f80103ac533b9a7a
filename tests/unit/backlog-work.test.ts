/** A backlog by hand: its jobs and days, new work beside it, and what one order takes from another on the shelf. */
import { describe, expect, test } from 'vitest';
import type { Buckle, Shop } from '../../src/order/types.ts';
import { defaultShop } from '../../src/cinch/default-shop.ts';
import { wholeRate } from '../../src/units/money.ts';
import { agendaOf, hoursOf, jobOf, missingForAgenda, taskOf, type Tied } from '../../src/work/agenda.ts';
import { hardwareOf } from '../../src/work/hardware.ts';
import { promiseForOrder, promiseOn, windowBeside } from '../../src/work/new-work.ts';
import { orderOf } from '../support/orders.ts';

/** A Monday. */
const from = '2026-11-30';
const days = { from, ordered: from };
const [buckle] = defaultShop.buckles as [Buckle];
const week = ['mon', 'tue', 'wed', 'thu', 'fri'] as const;

/** One bench of eight hours and one kind of buckle. */
const shopOf = (onHand: number, more: Partial<Buckle> = {}): Shop => ({
  ...defaultShop,
  buckles: [{ ...buckle, onHand, orderable: true, leadDays: 14, ...more }],
  benches: [{ name: 'bench', hours: { over: 8, under: 1 }, days: week }],
  holidays: [],
});

/** An order of so many minutes that takes two buckles and no cord. */
const tied = (key: string, minutes: number, due?: string): Tied =>
  ({
    key,
    order: { ...orderOf(), order: key, due },
    minutes: wholeRate(minutes),
    ticket: { buckle, strands: 13, layers: 1, quantity: 1, due, dees: [], pieces: [], accents: [] },
    doubts: [],
    welfare: [],
  }) as unknown as Tied;

describe('a backlog as jobs', () => {
  test('names what the shop file must add, and lists the days on which any bench works', () => {
    expect(missingForAgenda(defaultShop)).toEqual([]);
    expect(missingForAgenda({ ...defaultShop, labor: undefined, benches: [] })).toEqual([
      'how long tying takes (labor)',
      'who works when (benches)',
    ]);
    const benches = [
      { name: 'back', hours: { over: 100, under: 3 }, days: ['sat', 'tue'] as const },
      { name: 'window', hours: { over: 15, under: 2 }, days: ['fri', 'mon'] as const },
    ];
    const task = taskOf([], { ...defaultShop, benches }, { from, shares: new Map() });
    expect(task.days.weekdays).toEqual([1, 2, 5, 6]);
    // A hundred thirds of an hour are 2000 minutes; seven and a half hours are 450.
    expect(task.benches).toEqual([
      { id: 'back', minutesADay: 2000, weekdays: [6, 2] },
      { id: 'window', minutesADay: 450, weekdays: [5, 1] },
    ]);
  });

  test('takes whole minutes, begun ones whole and one at least, and tells hours as they are', () => {
    const job = (over: bigint, under: bigint) =>
      jobOf('a', { order: orderOf(), minutes: { over, under } }, undefined);
    expect(job(241n, 2n)).toStrictEqual({ id: 'a', minutes: 121 });
    expect([job(240n, 2n).minutes, job(0n, 1n).minutes]).toEqual([120, 1]);
    expect(jobOf('a', tied('a', 60, '2026-12-04'), '2026-12-01')).toEqual({
      ...{ id: 'a', minutes: 60, due: '2026-12-04', from: '2026-12-01' },
    });
    expect(() => jobOf('a', { order: orderOf(), minutes: undefined }, undefined)).toThrow('no labor');
    expect([hoursOf(tied('a', 90)), hoursOf({ ...tied('a', 90), minutes: undefined })]).toEqual([1.5, 0]);
  });

  test('leaves out what needs what we cannot get', () => {
    const { jobs, hours, minutes } = agendaOf(
      [tied('a', 480), tied('b', 480)],
      shopOf(2, { orderable: false }),
      days,
    );
    expect([...jobs.keys()]).toEqual(['a']);
    expect([hours.get('a'), hours.get('b'), minutes.get('a')]).toEqual([8, 8, 480]);
  });
});

describe('new work beside a backlog', () => {
  const backlog = (onHand: number, more: Partial<Buckle> = {}) =>
    agendaOf([tied('a', 480), tied('b', 480, '2026-12-01')], shopOf(onHand, more), days);

  test('of hours alone comes after what is promised, under a name of its own', () => {
    const { asked, agenda } = promiseOn(backlog(9), 481);
    expect(asked).toMatchObject({
      key: 'new work',
      order: undefined,
      minutes: 481,
      share: undefined,
      moves: [],
    });
    // Monday b, Tuesday a, then two days.
    expect(asked.promise?.day).toBe('2026-12-03');
    expect(agenda.jobs.get('new work')?.endDay).toBe('2026-12-03');
    expect([asked.hours, agenda.hours.get('new work')]).toEqual([481 / 60, 481 / 60]);
    expect(promiseOn(agenda, 1).asked.key).toBe('new work (new)');
    expect(promiseOn(agendaOf([tied('new work', 60)], shopOf(9), days), 1).asked.key).toBe('new work (new)');
  });

  test('that is due first takes from the shelf first, and what waits for it is told', () => {
    const { asked, agenda } = promiseForOrder(backlog(4), tied('n', 480, '2026-12-02'));
    // b, promised for Tuesday, makes room on Monday.
    expect(asked.promise).toMatchObject({ day: '2026-11-30', meetsDue: true });
    expect(asked.share).toMatchObject({ shelf: 'good', lacks: [] });
    // Two weeks for the buckles that a would have had.
    expect(asked.moves).toEqual([{ key: 'a', before: '2026-12-01', after: '2026-12-14' }]);
    expect(agenda.shares.get('a')).toMatchObject({ shelf: 'acceptable', from: '2026-12-14', certain: true });
    expect([...agenda.jobs.keys()].sort()).toEqual(['a', 'b', 'n']);
    expect(agenda.orders.map(({ key }) => key)).toEqual(['a', 'b', 'n']);
    const none = promiseForOrder(backlog(4, { orderable: false }), tied('n', 480, '2026-12-02'));
    expect(none.asked.moves).toEqual([{ key: 'a', before: '2026-12-01', after: undefined }]);
    expect(agenda.schedule.proven).toBe(true);
  });

  test('stands, once promised, whether what comes after it changes a wait or not', () => {
    // Ten minutes without a day would go before a in a plan made afresh.
    const { agenda } = promiseOn(backlog(6), 10);
    expect(agenda.jobs.get('new work')?.endDay).toBe('2026-12-02');
    const plenty = promiseForOrder(agenda, tied('n', 480));
    expect([plenty.asked.moves, plenty.asked.promise?.day]).toEqual([[], '2026-12-03']);
    expect(plenty.agenda.jobs.get('a')?.endDay).toBe('2026-12-01');
    const scarce = promiseForOrder(promiseOn(backlog(4), 10).agenda, tied('n', 480, '2026-12-02'));
    expect([...scarce.agenda.jobs.keys()].sort()).toEqual(['a', 'b', 'n', 'new work']);
  });

  test('that is due last moves nothing, waits itself, and is promised no day where nothing more is to be had', () => {
    const { asked } = promiseForOrder(backlog(4), tied('b', 480));
    expect(asked).toMatchObject({ key: 'b (new)', order: 'b', already: '2026-11-30', moves: [], hours: 8 });
    expect(asked.promise?.day).toBe('2026-12-14');
    const none = promiseForOrder(backlog(4, { orderable: false }), tied('n', 480));
    expect(none.asked).toMatchObject({ promise: undefined, share: { shelf: 'refuse' }, moves: [] });
    expect([...none.agenda.jobs.keys()].sort()).toEqual(['a', 'b']);
  });

  test('waits longer where it waits already, and takes turns where no more is to be had', () => {
    const cord = { color: 'natural', ply: 8, feetOnHand: 100, leadDays: 7 };
    const putUps = [{ lot: 'A', feet: 300, count: 0, opened: [100] }];
    const cords = (orderable: boolean) => [{ ...cord, putUps, orderable }];
    const needs = (key: string, feet: number, due?: string): Tied => {
      const order = tied(key, 60, due);
      const pieces = [{ color: 'natural', ply: 8, feet, strands: '1 to 13' }];
      return { ...order, ticket: { ...order.ticket, pieces } } as unknown as Tied;
    };
    const beside = (shop: Shop, feet: readonly number[], own: Tied) =>
      promiseForOrder(
        agendaOf(
          feet.map((each, i) => needs(`${i}`, each, `2026-12-0${i + 1}`)),
          shop,
          days,
        ),
        own,
      );
    // Cord comes in a week, but the last buckles go to n: two weeks now.
    const { asked, agenda } = beside(
      { ...shopOf(2), cords: cords(true) },
      [120],
      needs('n', 10, '2026-11-30'),
    );
    expect(asked.moves).toEqual([{ key: '0', before: '2026-12-07', after: '2026-12-14' }]);
    expect(agenda.shares.get('0')).toMatchObject({ shelf: 'acceptable', from: '2026-12-14' });
    // A hundred feet are for the first, or for the second with n.
    const rare = beside({ ...shopOf(9), cords: cords(false) }, [60, 50], needs('n', 50));
    expect(rare.asked.moves).toEqual([{ key: '0', before: '2026-12-01', after: undefined }]);
    expect([...rare.agenda.jobs.keys()].sort()).toEqual(['1', 'n']);
    // Buckles come on a day; nobody knows when cord does.
    const open = { ...shopOf(0), cords: cords(true).map((each) => ({ ...each, leadDays: undefined })) };
    expect(windowBeside(agendaOf([], open, days), needs('n', 120))?.basis).toMatch(
      /; not counting the wait for what we must order$/,
    );
  });

  test('late work stays as late, and no promise is moved for it', () => {
    const late = agendaOf([tied('a', 480, '2026-11-30'), tied('b', 480, '2026-11-30')], shopOf(9), days);
    expect(late.schedule).toMatchObject({ late: { value: 1, bound: 1 }, proven: true });
    const { asked, agenda } = promiseForOrder(late, tied('n', 480, '2026-12-01'));
    expect([asked.promise?.day, asked.promise?.meetsDue, asked.moves]).toEqual(['2026-12-02', false, []]);
    expect(agenda.schedule.late.value).toBe(2);
    expect(agenda.schedule.proven).toBe(false);
  });

  test('is told with how many orders it stands beside, what moves, and what it waits for', () => {
    const told = (onHand: number, own: Tied, more: Partial<Buckle> = {}) =>
      windowBeside(backlog(onHand, more), own);
    expect(told(9, tied('n', 480))).toEqual({
      earliest: '2026-12-02',
      basis: `by the bench schedule, beside 2 other orders from ${from}; those promises hold`,
    });
    expect(told(4, tied('n', 480, '2026-12-02'))?.basis).toBe(
      `by the bench schedule, beside 2 other orders from ${from}; 1 of those promises moves later`,
    );
    expect(told(4, tied('n', 480))?.basis).toMatch(
      /those promises hold; what we must order for it is here by Dec 14, 2026$/,
    );
    expect(told(4, tied('n', 480), { leadDays: undefined })?.basis).toMatch(
      /those promises hold; not counting the wait for what we must order$/,
    );
    expect(told(4, tied('n', 480), { orderable: false })).toBeUndefined();
    expect(told(9, tied('a', 480))).toEqual({
      earliest: '2026-12-01',
      basis: `as scheduled beside 1 other order from ${from}`,
    });
    expect(told(2, tied('a', 480), { orderable: false })).toBeUndefined();
    expect(windowBeside(agendaOf([], shopOf(9), days), tied('n', 60))?.basis).toMatch(
      /beside no other order/,
    );
    expect(windowBeside(agendaOf([tied('n', 60)], shopOf(9), days), tied('n', 60))?.basis).toMatch(
      /^as scheduled beside no other order/,
    );
  });
});

test('dees are counted by their own, twice where two options take them, and the earliest due take first', () => {
  const needs = (
    key: string,
    quantity: number,
    { due, ...dees }: { due?: string; of: readonly [string, number][] },
  ) => ({
    key,
    ticket: {
      ...tied(key, 1, due).ticket,
      quantity,
      due,
      dees: dees.of.map(([id, count]) => ({ id, count, option: `with ${id}` })),
    },
  });
  const [wide, small] = defaultShop.dees;
  const shop = {
    ...shopOf(5),
    dees: [
      { ...wide!, onHand: 7 },
      { ...small!, onHand: 9 },
    ],
  };
  const orders = [
    needs('late', 1, { of: [[wide!.id, 2]] }),
    needs('soon', 3, {
      due: '2026-12-01',
      of: [
        [wide!.id, 2],
        [small!.id, 1],
        [wide!.id, 1],
      ],
    }),
  ];
  const found = hardwareOf(orders, shop).map(({ kind, id, needed, short, orders: own, lacking }) => [
    kind,
    id,
    needed,
    short,
    own,
    lacking,
  ]);
  expect(found).toEqual([
    [
      'buckle',
      buckle.id,
      8,
      3,
      ['late', 'soon'],
      [
        { order: 'soon', count: 1 },
        { order: 'late', count: 2 },
      ],
    ],
    [
      'dee',
      wide!.id,
      11,
      4,
      ['late', 'soon'],
      [
        { order: 'soon', count: 2 },
        { order: 'late', count: 2 },
      ],
    ],
    ['dee', small!.id, 3, 0, ['soon'], []],
  ]);
});
