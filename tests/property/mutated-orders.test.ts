/** Damaged orders give a result or a located problem, never a slip of ours. */
import fs from 'node:fs';
import path from 'node:path';
import { expect, test } from 'vitest';
import { checkCinch, type Checked } from '../../src/advice/check.ts';
import { textOf } from '../../src/cli/text-file.ts';
import { seededRandom } from '../../src/math/random.ts';
import { sizeOrder } from '../../src/index.ts';
import { readOrders } from '../../src/order/read-orders.ts';
import type { Order } from '../../src/order/types.ts';
import { checkJson } from '../../src/views/check-data.ts';
import { slips, steers } from '../fuzz/hold-output.ts';
import { holdProblems } from '../fuzz/hold-problems.ts';
import { checkScreen } from '../support/screens.ts';
import { problemsText } from '../../src/words/problems.ts';
import { sizeJson } from '../../src/views/size-data.ts';
import { sizeScreen } from '../support/screens.ts';
import type { ReportOptions } from '../../src/pages/page.ts';
import type { CheckResult, SizeResult } from '../../src/words/types.ts';
import { columns } from '../../src/units/width.ts';
import { defaultShop } from '../../src/cinch/default-shop.ts';
import { cases } from '../support/cases.ts';
import { cpuMilliseconds } from '../support/cpu-time.ts';
import { mutate } from '../support/mutate-orders.ts';
import { repo } from '../support/run-cli.ts';

const runs = cases(500, 5_500);
const seed = 20261125;
const mostMilliseconds = 2_000;

const folder = path.join(repo, 'examples', 'orders');
const examples = fs
  .readdirSync(folder)
  .filter((name) => name.endsWith('.yaml'))
  .map((name) => fs.readFileSync(path.join(folder, name), 'utf8'));

interface Tally {
  valid: number;
  faulty: number;
  checked: number;
  nothingPasses: number;
  /** Skips orders that damage left as they were. */
  readonly seen: Set<string>;
  slowest: number;
}

/** No slips of the program, unless the file itself said the word. */
function expectClean(page: string, source: string): void {
  for (const slip of slips) if (!source.includes(slip)) expect(page).not.toContain(slip);
}

function expectScreen(page: string, source: string): void {
  expectClean(page, source);
  expect(page).not.toMatch(steers);
  expect(page.split('\n').filter((line) => columns(line) > 80)).toEqual([]);
}

/** What cannot be computed would be null. */
function expectNumbers(json: string): void {
  const { results } = JSON.parse(json) as { results: { specs: Record<string, unknown>[] }[] };
  const numbers = results.flatMap(({ specs }) =>
    specs.flatMap(({ strands, width, length, clearance }) => {
      const { inches, sd, chance } = clearance as Record<string, unknown>;
      return [strands, width, length, inches, sd, chance];
    }),
  );
  expect(numbers.filter((value) => typeof value !== 'number')).toEqual([]);
}

function cinchesOf({ wants, current }: Order): [Checked['which'], NonNullable<Order['wants']>][] {
  return [
    ...(wants === undefined ? [] : [['wants', wants] as [Checked['which'], typeof wants]]),
    ...(current === undefined ? [] : [['current', current] as [Checked['which'], typeof current]]),
  ];
}

function throughAll(order: Order, source: string, tally: Tally): void {
  const options: ReportOptions = {
    units: tally.valid % 2 === 0 ? 'in' : 'cm',
    color: false,
    width: 80,
    top: 3,
    why: tally.valid % 5 === 0,
    all: tally.valid % 50 === 0,
  };
  const advice = sizeOrder(order, defaultShop);
  const checked = cinchesOf(order).map(([which, cinch]) => checkCinch(cinch, which, advice));
  const wants = checked.find(({ which }) => which === 'wants');
  const sized: SizeResult[] = [{ ok: true, file: 'x.yaml', advice, wants }];
  const json = sizeJson(sized, { ...options, all: true });
  expectClean(json, source);
  expectNumbers(json);
  expectScreen(sizeScreen(sized, options), source);
  if (advice.specs.length === 0) tally.nothingPasses += 1;
  if (checked.length === 0) return;
  tally.checked += 1;
  const judged: CheckResult[] = [{ ok: true, file: 'x.yaml', advice, checked }];
  expectClean(checkJson(judged), source);
  expectScreen(checkScreen(judged, options), source);
}

function throughDoor(bytes: Buffer, tally: Tally): void {
  const read = textOf(bytes);
  if (!read.ok) {
    expect(read.line).toBeGreaterThanOrEqual(1);
    expect(read.why).not.toBe('');
    tally.faulty += 1;
    return;
  }
  const entries = readOrders(read.text, 'x.yaml');
  expect(entries.length).toBeGreaterThan(0);
  for (const entry of entries) {
    if (entry.ok) {
      tally.valid += 1;
      const key = JSON.stringify(entry.order);
      if (tally.seen.has(key)) continue;
      tally.seen.add(key);
      throughAll(entry.order, read.text, tally);
    } else {
      tally.faulty += 1;
      holdProblems(entry.problems, 'x.yaml', read.text);
      const page = problemsText(entry.problems, { color: false, width: 80 });
      expectClean(page, read.text);
      expect(page).not.toMatch(steers);
    }
  }
}

test(`${String(runs)} damaged order files give results or located problems`, () => {
  const tally: Tally = { valid: 0, faulty: 0, checked: 0, nothingPasses: 0, slowest: 0, seen: new Set() };
  const chance = seededRandom(seed);
  for (let run = 0; run < runs; run += 1) {
    const bytes = mutate(examples, chance);
    const start = cpuMilliseconds();
    try {
      throughDoor(bytes, tally);
    } catch (error) {
      throw new Error(`run ${String(run)}, file ${JSON.stringify(bytes.toString().slice(0, 3000))}`, {
        cause: error,
      });
    }
    tally.slowest = Math.max(tally.slowest, cpuMilliseconds() - start);
  }
  const orders = tally.valid + tally.faulty;
  // Both must be common for the test to mean anything.
  expect(tally.valid / orders).toBeGreaterThan(0.15);
  expect(tally.faulty / orders).toBeGreaterThan(0.15);
  expect(tally.seen.size).toBeGreaterThan(runs / 7);
  expect(tally.checked).toBeGreaterThan(runs / 14);
  expect(tally.nothingPasses).toBeGreaterThan(runs / 275);
  expect(tally.slowest).toBeLessThan(mostMilliseconds);
}, 600_000);
