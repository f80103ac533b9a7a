/** Materials, schedule and quote agree on a shelf counted by hand. */
import fs from 'node:fs';
import path from 'node:path';
import { beforeAll, describe, expect, test } from 'vitest';
import { ownFolder } from '../support/own-folder.ts';
import { run } from '../support/run-cli.ts';

const shop = `shop: Twelve (invented)
strands: { min: 11, max: 25 }
lengths: { min: 24 in, max: 36 in, step: 2 in }
buckles:
  - id: plain 3
    bar: 3 in
    frame-width: 3 3/4 in
    frame-height: 2 1/2 in
    double: { min: 19, max: 19 }
    on-hand: 23
    orderable: true
    lead-days: 14
cord:
  - { color: natural, ply: 8, put-ups: [{ lot: A, feet: 300, count: 1 }], orderable: true, lead-days: 7 }
  - { color: black, ply: 8, put-ups: [{ lot: K, feet: 300, count: 0, opened: [130] }], orderable: false }
labor: { set-up-minutes: 15, minutes-a-strand: 1.5, minutes-an-inch-of-bar: 9 }
benches:
  - { name: window, hours: 6, days: [mon, tue, wed, thu, fri] }
  - { name: back, hours: 4, days: [tue, thu] }
`;

const orderOf = (name: string, due?: string, more: { color?: string; quantity?: number } = {}): string =>
  `order: ${name}
${due === undefined ? '' : `due: ${due}\n`}quantity: ${more.quantity ?? 1}
horse: { name: Horse of ${name}, height: 15.2 hh, heart-girth: 74 in, elbow-room: 4 in }
saddle: { rigging: 7/8, ring-to-ring: 44 in }
colors: { body: [${more.color ?? 'natural'}] }
`;

// Each takes 51 ft and two buckles, T-08 six times that.
const twelve = [
  orderOf('T-01'),
  orderOf('T-02', '2027-01-29'),
  orderOf('T-03', '2026-12-04', { color: 'black' }),
  orderOf('T-04', '2026-12-11'),
  orderOf('T-05', undefined, { color: 'black' }),
  orderOf('T-06', '2026-12-18'),
  orderOf('T-07', '2026-12-11'),
  orderOf('T-08', '2027-01-08', { quantity: 6 }),
  orderOf('T-09', '2026-12-04'),
  orderOf('T-10', '2027-01-15'),
  orderOf('T-11', '2026-12-23'),
  orderOf('T-12', '2027-01-22', { color: 'black' }),
];

// By due day T-03, T-09, T-04, T-07, T-06 and T-11 take 12 of 23 buckles, T-08 the other 11; the five after
// it lack two each. 300 ft of natural are five times 51 ft, for all but T-08, T-10, T-02 and T-01; 130 ft of
// black for T-03 and T-12.
const buckles: Record<string, number> = { 'T-08': 1, 'T-10': 2, 'T-12': 2, 'T-02': 2, 'T-01': 2, 'T-05': 2 };
const feet: Record<string, number> = { 'T-08': 306, 'T-10': 51, 'T-02': 51, 'T-01': 51, 'T-05': 51 };

interface Wait {
  readonly kind: string;
  readonly count?: number;
  readonly length?: number;
  readonly comes: string | null;
}
interface Result {
  readonly order: string;
  readonly waits: readonly Wait[];
  readonly startDay: string | null;
  readonly promise: string | null;
}

const home = ownFolder();
beforeAll(() => {
  fs.writeFileSync(path.join(home, 'shop.yaml'), shop);
  fs.writeFileSync(path.join(home, 'twelve.yaml'), twelve.join('---\n'));
  fs.writeFileSync(path.join(home, 'soon.yaml'), orderOf('N', '2026-12-11', { quantity: 2 }));
});

const said = async (...args: string[]): Promise<string> =>
  (await run([...args, '--shop', 'shop.yaml'], { cwd: home })).stdout;
const json = async (...args: string[]): Promise<{ results: Result[]; hardware: { short: number }[] }> =>
  JSON.parse(await said(...args, '--format', 'json')) as { results: Result[]; hardware: { short: number }[] };

const day = '2026-11-30';
const scheduleArgs = ['schedule', 'twelve.yaml', '--from', day];

const shortages = (results: readonly Result[], kind: string): Record<string, number> =>
  Object.fromEntries(
    results.flatMap(({ order: name, waits }) =>
      waits
        .filter((wait) => wait.kind === kind)
        .map(({ count, length }) => [name, count ?? (length ?? NaN) / 12] as const),
    ),
  );

describe('twelve orders and one shelf', () => {
  test('materials and schedule tell the shortages that were counted by hand', async () => {
    const materials = await json('materials', 'twelve.yaml', '--date', day);
    const schedule = await json(...scheduleArgs);
    expect(materials.hardware.map(({ short }) => short)).toEqual([11]);
    for (const { results } of [materials, schedule]) {
      expect(shortages(results, 'buckle')).toEqual(buckles);
      expect(shortages(results, 'cord')).toEqual(feet);
    }
    expect(schedule.results.map(({ waits }) => waits)).toEqual(materials.results.map(({ waits }) => waits));
  });

  test('orders short of buckles start when they come, short of black cord never, all others at once', async () => {
    const { results } = await json(...scheduleArgs);
    for (const { order: name, startDay, promise } of results) {
      if (name === 'T-05') expect([startDay, promise]).toEqual([null, null]);
      else if (buckles[name] === undefined) expect(startDay! < '2026-12-14').toBe(true);
      else expect(startDay! >= '2026-12-14').toBe(true);
    }
  });

  test('both papers print the same lines', async () => {
    const lines = (text: string): string[] => {
      const from = text.indexOf(`Short on the shelf, ordered ${day}`);
      return text.slice(from, text.indexOf("can't get more.", from)).split('\n');
    };
    const materials = lines(await said('materials', 'twelve.yaml', '--date', day));
    expect(materials.length).toBeGreaterThan(10);
    expect(lines(await said(...scheduleArgs))).toEqual(materials);
  });

  test('a quote waits as the schedule does', async () => {
    const text = await said('quote', 'twelve.yaml', '--backlog', 'twelve.yaml', '--date', day);
    const ready = text.replace(/\s+/g, ' ').match(/(Ready [^.]*?|We cannot promise a day yet)\./g)!;
    expect(ready).toHaveLength(12);
    expect(ready[4]).toBe('We cannot promise a day yet.');
    expect(ready.filter((each) => each.includes('here by Dec 14, 2026'))).toHaveLength(5);
  });

  test('a new order that is due soon takes four buckles first: it stands in the plan, and what moves is told', async () => {
    const text = await said(...scheduleArgs, '--promise', 'soon.yaml');
    expect(text).toContain('N Horse of N, 2 x straight 19, 30 in');
    // T-09, T-04, T-07 and its own 102 ft leave 45 ft: T-06 and T-11 wait for cord, T-08 for buckles; none is
    // late.
    expect(text.replace(/\s+/g, ' ')).toContain('when it is due. Nothing else moves.');
    expect(text).toContain('T-08: 5 x plain 3, here 2026-12-14');
    expect(text).toMatch(/T-06: 51 ft of natural body cord, here/);
    expect(text).toMatch(/T-11: 51 ft of natural body cord, here/);
  });

  test('a new order that takes all the cord delays a promise, and says which', async () => {
    fs.writeFileSync(path.join(home, 'first.yaml'), orderOf('M', '2026-12-03', { quantity: 5 }));
    const text = await said(...scheduleArgs, '--promise', 'first.yaml');
    // 45 ft are left for T-09, which waits until 2026-12-07.
    expect(text.replace(/\s+/g, ' ')).toContain('these promises move: T-09 from 2026-12-04 to 2026-12-07.');
  });
});
