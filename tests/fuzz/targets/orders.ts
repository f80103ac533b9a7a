/** Order files; good ones go through every printer. */
import { textOf } from '../../../src/cli/text-file.ts';
import { orderJsonSchema } from '../../../src/order/json-schema.ts';
import { readOrders } from '../../../src/order/read-orders.ts';
import { pick } from '../../support/draw.ts';
import { damaged } from '../damage/damage.ts';
import { lexiconOf } from '../damage/tree.ts';
import { holdProblems } from '../hold-problems.ts';
import { steers } from '../hold-output.ts';
import { kept, orderSeeds } from '../seeds.ts';
import { hold, type Standing, type Target } from '../target.ts';

const file = 'o.yaml';
const formats = (command: string, names: readonly string[], ...more: string[]): string[][] =>
  names.map((name) => [command, file, '--format', name, ...more]);

const tables = ['table', 'json', 'csv', 'markdown'];
const papers = ['table', 'json', 'markdown', 'html'];
const plans = ['table', 'json', 'csv', 'markdown', 'html'];

/** Every printer of every command. PDF, PNG and JPEG are slow, so rare. */
export const orderLines: readonly (readonly string[])[] = [
  ...formats('size', [...tables, 'html']),
  ...formats('size', ['table', 'markdown'], '--why', '--all', '--units', 'cm'),
  ['size', file, '--simulate', '100', '--why'],
  ...formats('check', [...tables, 'html']),
  ...formats('check', tables, '--strands', '19', '--units', 'cm', '--why'),
  ...formats('ask', ['table', 'text', 'markdown', 'json', 'csv'], '--draws', '4'),
  ...formats('photo', [...tables, 'html']),
  ...formats('quote', [...papers, 'csv', 'text']),
  ...formats('ticket', papers, '--units', 'cm'),
  ...formats('materials', plans),
  ...formats('schedule', plans),
  ['schedule', file, '--promise', file],
  ['quote', file, '--backlog', file],
  ...formats('quote', papers, '--invoice', '1041', '--paid', '12.50'),
  ...formats('ticket', ['table', 'html'], '--care'),
  ...formats('backlog', ['table', 'json', 'ndjson', 'csv', 'markdown']),
  ...formats('draw', ['svg', 'html']),
  ['draw', file, '--view', 'flat'],
  ['draw', file, '--wants', '--current', '--format', 'html'],
  ['draw', file, '--template'],
];
export const slowLines: readonly (readonly string[])[] = [
  ...['size', 'check', 'photo', 'quote', 'ticket', 'materials', 'schedule'].map((command) => [
    command,
    file,
    '--format',
    'pdf',
  ]),
  ['draw', file, '--template', '--format', 'pdf'],
  ['draw', file, '--format', 'png'],
];

function lookAtOrders(input: Buffer): Standing {
  const read = textOf(input);
  if (!read.ok) {
    hold(
      read.line >= 1 && read.why !== '' && !steers.test(read.why),
      () => `cannot be read: ${JSON.stringify(read)}`,
    );
    return 'faulty';
  }
  const entries = readOrders(read.text, file);
  hold(entries.length > 0, () => 'no entry at all');
  for (const entry of entries) if (!entry.ok) holdProblems(entry.problems, file, read.text);
  return entries.some(({ ok }) => ok) ? 'good' : 'faulty';
}

/** They split a file into orders differently. */
const twoWays: readonly (readonly string[])[] = [
  ['size', file, '--format', 'json'],
  ['backlog', file, '--format', 'json'],
];

interface Result {
  readonly order: string | null;
  readonly error?: object;
  readonly problem?: string | null;
}

/** Compares both ways on one file. */
function sameOrders(): NonNullable<Target['after']> {
  let first: { input: Buffer; orders: string } = { input: Buffer.alloc(0), orders: '' };
  return ({ line, stdout }, read) => {
    const way = twoWays.findIndex((each) => each.join() === line.join());
    if (way === -1 || stdout === '') return;
    const input = read(file) ?? Buffer.alloc(0);
    const { results } = JSON.parse(stdout) as { results: Result[] };
    const told = results.map(({ order, error, problem }) => [order, (error ?? problem ?? null) === null]);
    const orders = JSON.stringify(told);
    if (way === 0) first = { input, orders };
    else if (first.input.equals(input))
      hold(first.orders === orders, () => `size reads ${first.orders}, backlog ${orders}`);
  };
}

/** For each good input. */
const printers = 2;

export function ordersTarget(): Target {
  const seeds = orderSeeds();
  const lexicon = lexiconOf(seeds, orderJsonSchema());
  return {
    name: 'orders',
    file,
    beside: { 'photos/juniper-side.jpg': kept('examples/orders/photos/juniper-side.jpg') },
    seeds,
    change: (parents, chance) => damaged(parents, chance, lexicon),
    look: lookAtOrders,
    after: sameOrders(),
    lines: (standing, input, chance) => {
      // Backlog alone reads the good parts of a file that is not text.
      if (chance.uniform() < 0.08 && textOf(input).ok) return twoWays;
      if (standing === 'faulty') return chance.uniform() < 0.25 ? [pick(chance, orderLines)] : [];
      const start = Math.floor(chance.uniform() * orderLines.length);
      const turn = Array.from(
        { length: printers },
        (_, i) => orderLines[(start + 13 * i) % orderLines.length] ?? [],
      );
      return chance.uniform() < 0.01 ? [...turn, pick(chance, slowLines)] : turn;
    },
  };
}
