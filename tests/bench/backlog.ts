/** Backlogs through the whole program, against only parsing them; not a test. */
import { spawnSync } from 'node:child_process';
import { mkdirSync, mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import path from 'node:path';
import { performance } from 'node:perf_hooks';
import { backlogFiles } from '../support/backlog/backlog.ts';

const bundle = 'dist/cinchwright.cjs';
const perFolder = 1000;

interface Took {
  readonly seconds: number;
  readonly cpu: number;
  readonly megabytes: number;
}

function run(args: readonly string[], folder: string): Took {
  const peak = path.join(folder, 'peak.json');
  const from = performance.now();
  const { status, stderr } = spawnSync(process.execPath, ['--require', './tests/bench/peak.cjs', ...args], {
    env: { ...process.env, PEAK: peak },
    stdio: ['ignore', 'ignore', 'pipe'],
  });
  // 1: some order has no cinch that passes.
  if (status !== 0 && status !== 1) throw new Error(`${args.join(' ')} ended so: ${stderr.toString()}`);
  const seconds = (performance.now() - from) / 1000;
  return { seconds, ...(JSON.parse(readFileSync(peak, 'utf8')) as Omit<Took, 'seconds'>) };
}

function write(count: number, orders: string): void {
  mkdirSync(orders, { recursive: true });
  for (const { name, text } of backlogFiles({ count, seed: 2417, faultyPercent: 0 })) {
    const file = path.join(orders, name);
    mkdirSync(path.dirname(file), { recursive: true });
    writeFileSync(file, text);
  }
}

/** The quickest of some runs. They take turns, so a busy machine slows all. */
function quickest(works: readonly (() => Took)[], rounds: number): Took[] {
  const best: (Took | undefined)[] = works.map(() => undefined);
  for (let round = 0; round < rounds; round++) {
    works.forEach((work, i) => {
      const took = work();
      if (took.seconds < (best[i]?.seconds ?? Infinity)) best[i] = took;
    });
  }
  return best as Took[];
}

function line(cells: readonly string[]): void {
  const [name = '', ...rest] = cells;
  process.stdout.write(`  ${name.padEnd(34)}${rest.map((cell) => cell.padStart(12)).join('')}\n`);
}

function benchCount(count: number, folder: string): void {
  const orders = path.join(folder, String(count));
  write(count, orders);
  const out = path.join(folder, 'out.csv');
  const sized = (): Took => run([bundle, 'backlog', orders, '--format', 'csv', '--out', out], folder);
  const alone = (): Took => run(['tests/bench/parse-alone.cjs', orders], folder);
  const [base, all] = quickest([alone, sized], count > 2 * perFolder ? 2 : 5) as [Took, Took];
  const row = (name: string, took: Took): void => {
    line([
      name,
      took.seconds.toFixed(2),
      (count / took.seconds).toFixed(0),
      (took.seconds / base.seconds).toFixed(2),
      took.cpu.toFixed(2),
      took.megabytes.toFixed(0),
    ]);
  };
  process.stdout.write(`\n${count} distinct orders\n`);
  line(['work', 's', 'orders/s', 'ratio', 'CPU s', 'peak MB']);
  row('read and parse with yaml alone', base);
  row('backlog', all);
  rmSync(orders, { recursive: true });
}

/** Prints times as ratios to parsing with the yaml package alone. */
export function benchBacklogs(counts: readonly number[]): void {
  const folder = mkdtempSync(path.join(tmpdir(), 'cinchwright-bench-'));
  try {
    for (const count of counts) benchCount(count, folder);
  } finally {
    rmSync(folder, { recursive: true });
  }
}
