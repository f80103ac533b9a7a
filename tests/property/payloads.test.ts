/** Collected payloads print inert in every format. */
import { afterAll, beforeAll, expect, test } from 'vitest';
import { buildProgram } from '../../src/cli/program.ts';
import type { WordReader } from '../../src/cli/options.ts';
import { readOrders } from '../../src/order/read-orders.ts';
import { holdRun } from '../fuzz/hold-run.ts';
import { Folder } from '../fuzz/machine.ts';
import { orderLines, slowLines } from '../fuzz/targets/orders.ts';
import { cases } from '../support/cases.ts';
import { repoText } from '../support/run-cli.ts';
import {
  escapes,
  evasions,
  formulas,
  harmless,
  markup,
  moreFormulas,
  owaspCells,
  signs,
} from '../unit/report-payloads.ts';

interface Naughty {
  readonly strings: readonly string[];
}
const naughty = JSON.parse(repoText('tests/unit/naughty-strings.json')) as Naughty;

const payloads = [
  ...new Set([
    ...formulas,
    ...moreFormulas,
    ...harmless,
    ...owaspCells.map(([text]) => text),
    ...markup,
    ...evasions,
    ...escapes,
    ...signs.map((sign) => `q7${sign}q8`),
    ...naughty.strings,
  ]),
];

const seats = 8;
const orderWith = (texts: readonly string[], i: number): string => {
  const at = (seat: number): string => texts[seat % texts.length] ?? '';
  return JSON.stringify({
    order: `${String(i)} ${at(0)}`.slice(0, 190),
    customer: { name: at(1), phone: at(2), email: at(3) },
    horse: { name: at(4), 'heart-girth': '73 in', height: '15.1 hh', trouble: ['elbow-gall'] },
    saddle: { rigging: '7/8', 'ring-to-ring': '44 in' },
    wants: { style: 'straight', strands: 21, buckle: at(5) },
    current: { style: 'straight', strands: 27, buckle: at(5) },
    colors: { body: [at(6)], accent: [at(7)] },
    notes: at(0),
  });
};

const isOrder = (text: string): boolean => readOrders(text, 'o.yaml').every(({ ok }) => ok);
/** The door refuses the rest; its message is read too. */
const taken = payloads.filter((text) => isOrder(orderWith([text], 1)));
const refused = payloads.filter((text) => !taken.includes(text));

let folder: Folder;
beforeAll(() => {
  folder = new Folder();
});
afterAll(() => {
  folder.remove();
});

async function runAll(lines: readonly (readonly string[])[], file: string, said: string): Promise<void> {
  for (const line of lines) {
    const args = line.map((word) => (word === 'o.yaml' ? file : word));
    const ran = await folder.run(args, Buffer.alloc(0));
    holdRun(line, ran, said);
  }
}

test('there are payloads of every kind, and the door takes most', () => {
  expect(payloads.length).toBeGreaterThan(350);
  expect(taken.length).toBeGreaterThan(250);
  expect(refused.length).toBeGreaterThan(40);
});

test('every format of every command that reads orders is among the lines that are run', () => {
  const io = { stdout: () => undefined, stderr: () => undefined, env: {}, columns: undefined };
  const { commands } = buildProgram({ io: io as never, code: 0 });
  const wanted = commands.flatMap((command) => {
    const format = command.options.find(({ long }) => long === '--format');
    const { words = [] } = (format?.parseArg ?? {}) as Partial<WordReader>;
    const reads = !['rules', 'learn'].includes(command.name()); // one reads no file, the other no orders alone
    return reads ? words.map((word) => `${command.name()} ${word}`) : [];
  });
  const usual: Readonly<Record<string, string>> = { draw: 'svg' };
  const found = [...orderLines, ...slowLines].map((line) => {
    const [command = ''] = line;
    return `${command} ${line[line.indexOf('--format') + 1] ?? ''}`.replace(/ (?!\w+$).*/, '');
  });
  const bare = orderLines
    .filter((line) => !line.includes('--format'))
    .map(([command = '']) => `${command} ${usual[command] ?? 'table'}`);
  // A JPEG is made of photos alone.
  expect(wanted.filter((each) => ![...found, ...bare, 'draw jpeg'].includes(each))).toEqual([]);
});

test('in every text of an order they are inert, whatever prints them', async () => {
  const orders = Array.from({ length: Math.ceil(taken.length / seats) }, (_, i) =>
    orderWith(taken.slice(seats * i, seats * (i + 1)), i),
  );
  expect(orders.every(isOrder)).toBe(true);
  const every = cases(16, 1);
  const single = orderLines.filter(([command]) => command === 'draw');
  for (const [n, line] of orderLines.filter((each) => !single.includes(each)).entries()) {
    const text = orders.filter((_, i) => (i + n) % every === 0).join('\n');
    folder.put({ 'all.ndjson': Buffer.from(text) });
    await runAll([line], 'all.ndjson', text);
  }
  folder.put({ 'one.yaml': Buffer.from(orders[5] ?? '') });
  await runAll(single, 'one.yaml', orders[5] ?? '');
  for (const order of orders.slice(0, cases(2, 12))) {
    folder.put({ 'one.yaml': Buffer.from(order) });
    await runAll(single.slice(0, 3), 'one.yaml', order);
  }
}, 300_000);

test('what the door refuses is told, not obeyed', async () => {
  for (const text of refused) {
    folder.put({
      'bad.yaml': Buffer.from(`order: ${text}\n`),
      'bad.json': Buffer.from(orderWith([text], 1)),
    });
    await runAll([['size', 'bad.yaml', 'bad.json']], '', text);
  }
});

test('as the name of a file they are inert', async () => {
  const names = [...escapes, ...signs.map((sign) => `q7${sign}q8`), ...formulas, ...markup]
    .filter((text) => !/[\0/\ud800]/.test(text))
    .map((text) => `${text.slice(0, 60)}.yaml`);
  const order = Buffer.from(orderWith(['x'], 7));
  const lines = orderLines.filter((line) =>
    /^(size|check|backlog|materials|ask|schedule)$/.test(line[0] ?? ''),
  );
  for (const [i, name] of names.entries()) {
    folder.put({ [name]: i % 2 === 0 ? order : Buffer.from('order: 7\n') });
    const turn = Array.from({ length: cases(1, 3) }, (_, step) => lines[(3 * i + step) % lines.length] ?? []);
    await runAll(turn, name, name);
  }
}, 60_000);
