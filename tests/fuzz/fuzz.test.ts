/** A small fixed fuzz, and every input that once failed. */
import fs from 'node:fs';
import path from 'node:path';
import { expect, test } from 'vitest';
import { cases } from '../support/cases.ts';
import { repo } from '../support/run-cli.ts';
import { keptCase, keptText } from './case.ts';
import { fuzz } from './fuzz.ts';
import { Bench } from './judge.ts';
import { targets } from './targets/index.ts';

const folder = path.join(repo, 'tests', 'fuzz', 'regressions');
const kept = fs.readdirSync(folder);

/** Three seconds in all. Good inputs make sure the printers are tried. */
const parts: Readonly<Record<string, readonly [tries: number, good: number]>> = {
  orders: [cases(30, 200), 0.2],
  shop: [cases(20, 150), 0.1],
  words: [cases(100, 200), 1],
  pictures: [cases(150, 1500), 0.1],
  'outcomes-yaml': [cases(25, 80), 0.1],
  'outcomes-csv': [cases(80, 200), 0.1],
};

test('every input has its part', () => {
  expect(Object.keys(parts)).toEqual(Object.keys(targets));
});

test.each(Object.entries(parts))(
  '%s: all that must hold does',
  async (name, [tries, good]) => {
    // No clock: machines may be slow.
    const plan = { tries, seed: 20261126, guided: 0, mostMilliseconds: Infinity };
    const figures = await fuzz(targets[name]!.make(), plan);
    expect(figures.failures.map((failure) => keptText(failure).slice(0, 2000))).toEqual([]);
    expect(figures.tries).toBe(tries);
    expect(figures.good / tries).toBeGreaterThanOrEqual(good);
    expect(figures.runs).toBeGreaterThan(0);
  },
  300_000,
);

test.each(kept)('once failed: %s', async (file) => {
  const { tried } = keptCase(fs.readFileSync(path.join(folder, file), 'utf8'));
  const bench = new Bench(targets[tried.target]!.make(), Infinity);
  const { why } = await bench.judge(tried);
  bench.close();
  expect(why).toBeUndefined();
});

test('the same seed tries the same', async () => {
  const plan = { tries: cases(8, 40), seed: 5, guided: 0, mostMilliseconds: Infinity };
  const once = async (): Promise<string[]> => {
    const inputs: string[] = [];
    await fuzz(targets['orders']!.make(), { ...plan, before: (each) => inputs.push(keptText(each)) });
    return inputs;
  };
  expect(await once()).toEqual(await once());
});

test('what does not hold is found', async () => {
  const orders = targets['orders']!.make();
  const spoiled = { ...orders, look: orders.look, lines: () => [['size', 'o.yaml', '--shop', 'gone.yaml']] };
  const bad = {
    ...spoiled,
    after: ({ code }: { code: number }) => {
      if (code !== 0) throw new Error('planted');
    },
  };
  const { failures } = await fuzz(bad, { tries: 5, seed: 1, guided: 0, mostMilliseconds: Infinity });
  expect(failures.map(({ why }) => why)).toEqual(['Error: planted']);
  const copy = keptCase(keptText(failures[0]!));
  expect(copy).toEqual(failures[0]);
});
