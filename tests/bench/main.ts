/** Benchmarks: ratios measured in one run on one machine; not tests. */
import { spawnSync } from 'node:child_process';
import { readFileSync } from 'node:fs';
import { performance } from 'node:perf_hooks';
import { parse } from 'yaml';
import { askAbout } from '../../src/advice/ask.ts';
import { sizeOrder } from '../../src/index.ts';
import { readOrders } from '../../src/order/read-orders.ts';
import { sizeScreen } from '../support/screens.ts';
import { defaultShop } from '../../src/cinch/default-shop.ts';
import { benchBacklogs } from './backlog.ts';
import { benchPlans } from './plan.ts';

// Bundled first, since tsx slows every closure, and started in the project's folder.
const root = process.cwd();
const bin = 'bin/cinchwright';
const sample = 'tests/bench/sixty-lines.yaml';

const median = (values: readonly number[]): number =>
  [...values].sort((a, b) => a - b)[values.length >> 1] ?? Number.NaN;

/** Milliseconds. */
function startOnce(args: readonly string[]): number {
  const from = performance.now();
  const { status } = spawnSync(process.execPath, args, { stdio: 'ignore', cwd: root });
  if (status !== 0) throw new Error(`${args.join(' ')} ended with ${String(status)}`);
  return performance.now() - from;
}

interface Start {
  readonly name: string;
  readonly args: readonly string[];
  readonly aim: string;
}

const starts: readonly Start[] = [
  { name: 'node -e 0', args: ['-e', '0'], aim: '1' },
  { name: 'cinchwright --help', args: [bin, '--help'], aim: '1.3' },
  { name: 'cinchwright size, one order', args: [bin, 'size', sample], aim: '2.0, 1.7 wanted' },
  { name: 'cinchwright size --format json', args: [bin, 'size', sample, '--format', 'json'], aim: '' },
  { name: 'cinchwright check, one order', args: [bin, 'check', sample, '--strands', '15'], aim: '' },
];

/** In turns, so a slow machine slows all. */
function benchStarts(rounds: number): void {
  const times = starts.map((): number[] => []);
  for (let round = 0; round < rounds + 2; round++) {
    starts.forEach(({ args }, i) => {
      const took = startOnce(args);
      if (round >= 2) times[i]?.push(took);
    });
  }
  const base = median(times[0] ?? []);
  print(`start-up, median of ${rounds} starts in turn`, ['command', 'ms', 'ratio to node -e 0', 'aim']);
  starts.forEach(({ name, aim }, i) => {
    const took = median(times[i] ?? []);
    print('', [name, took.toFixed(1), (took / base).toFixed(2), aim]);
  });
}

interface Work {
  readonly name: string;
  readonly call: () => unknown;
  readonly aim?: string;
}

/**
 * Microseconds a call once V8 has compiled everything: the quickest batch, since other work only adds. They take
 * turns.
 */
function microseconds(works: readonly Work[]): number[] {
  for (const { call } of works) for (let i = 0; i < 2500; i++) call();
  const least = works.map(() => Infinity);
  for (let batch = 0; batch < 40; batch++) {
    works.forEach(({ call }, work) => {
      const from = performance.now();
      for (let i = 0; i < 40; i++) call();
      const took = ((performance.now() - from) / 40) * 1000;
      least[work] = Math.min(took, least[work] ?? Infinity);
    });
  }
  return least;
}

function benchSizing(): void {
  const text = readFileSync(sample, 'utf8');
  const read = readOrders(text, sample)[0];
  if (read?.ok !== true) throw new Error('the sample order is faulty');
  const { order } = read;
  const size = () => sizeOrder(order, defaultShop);
  const options = { units: 'in', color: false, width: 80, top: 3, why: false, all: false } as const;
  const works: readonly Work[] = [
    { name: 'parse with the yaml package alone', call: () => parse(text) as unknown, aim: '1' },
    { name: 'size: facts, making, ranking', call: () => size().specs, aim: 'under 1000 us' },
    { name: 'size and ask what to measure', call: () => size().ask },
    { name: 'read, with the place of everything', call: () => readOrders(text, sample) },
    {
      name: 'size and print the screen',
      call: () => sizeScreen([{ ok: true, file: sample, advice: size() }], options),
    },
  ];
  const times = microseconds(works);
  const [base = Number.NaN] = times;
  const lines = text.trimEnd().split('\n').length;
  const title = `one order of ${lines} lines, ${size().every.length} styles and strand counts`;
  print(title, ['work', 'us', 'ratio to parsing', 'aim']);
  works.forEach(({ name, aim = '' }, i) => {
    const us = times[i] ?? Number.NaN;
    print('', [name, us.toFixed(0), (us / base).toFixed(2), aim]);
  });
}

/** The shortest order is slowest: it leaves everything to ask. */
function benchAsking(): void {
  const file = 'examples/orders/01-height-only.yaml';
  const times = Array.from({ length: 9 }, () => startOnce([bin, 'ask', file]));
  print('asking about one order that says the least', ['work', 'ms', 'aim']);
  print('', ['cinchwright ask, from start to end', median(times).toFixed(0), 'under 1000']);
  const read = readOrders(readFileSync(file, 'utf8'), file)[0];
  if (read?.ok !== true) throw new Error('the sample order is faulty');
  const advice = sizeOrder(read.order, defaultShop);
  const warm = Array.from({ length: 9 }, () => {
    const from = performance.now();
    askAbout(advice);
    return performance.now() - from;
  });
  print('', ['asking alone, warm, 5 x 128 sizings', median(warm).toFixed(0), '']);
}

function print(title: string, cells: readonly string[]): void {
  if (title !== '') process.stdout.write(`\n${title}\n`);
  const [name = '', ...rest] = cells;
  process.stdout.write(`  ${name.padEnd(40)}${rest.map((cell) => cell.padStart(20)).join('')}\n`);
}

/** `npm run bench -- starts 51` or `backlog 100 100000`: one part; else all. */
const [part, ...numbers] = process.argv.slice(2);
const asked = numbers.map(Number);
process.stdout.write(`node ${process.version}\n`);
if (part === undefined || part === 'starts') benchStarts(asked[0] ?? 31);
if (part === undefined || part === 'sizing') benchSizing();
if (part === undefined || part === 'ask') benchAsking();
if (part === undefined || part === 'plans') benchPlans();
if (part === undefined || part === 'backlog') benchBacklogs(asked.length > 0 ? asked : [100, 1000, 10_000]);
