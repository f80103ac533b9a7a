/** No file within the size limit takes long or much memory. */
import fs from 'node:fs';
import path from 'node:path';
import { beforeAll, describe, expect, test } from 'vitest';
import { readOrders } from '../../src/order/read-orders.ts';
import { readOutcomes } from '../../src/order/read-outcomes.ts';
import { readShop } from '../../src/order/read-shop.ts';
import type { Problem } from '../../src/yaml/problem.ts';
import { long } from '../support/cases.ts';
import { orderText } from '../support/backlogs.ts';
import { cpuMilliseconds } from '../support/cpu-time.ts';
import { leastOrder as good, orderProblems } from '../support/door.ts';
import { ownFolder } from '../support/own-folder.ts';
import { repo, run } from '../support/run-cli.ts';
import { start } from '../support/start.ts';

const MILLISECONDS = 2000;
const MEGABYTES = 300;

const letters = 'at most 400000 characters in a document';
const marks = 'at most 30000 line ends, commas and brackets in a document';
const cells = 'at most 60000 cells in a table';
const columns = 'order,style,strands,length,days,result\n';

/** Close to 5 MB, and just within what is read. */
const inputs: readonly (readonly [
  name: string,
  text: string,
  told: readonly [place: string, expected: string],
])[] = [
  ['commas that never end', `foo: [${','.repeat(4_900_000)}`, ['1:400001', letters]],
  ['commas, fewer', `foo: [${','.repeat(300_000)}`, ['1:30006', marks]],
  ['keys without number', keys(600_000), ['49777:5', letters]],
  ['keys, fewer', keys(40_000), ['30001:8', marks]],
  ['lines that are blank', good + '\n'.repeat(4_900_000), ['399944:1', letters]],
  ['blank lines, fewer', good + '\n'.repeat(300_000), ['29997:1', marks]],
  ['keys in braces', `foo: {${'a,'.repeat(14_900)}}`, ['1:1', 'number or name of the order']],
  ['question marks', '?\n'.repeat(29_900), ['1:1', 'number or name of the order']],
  [
    'words that are none',
    `order: 1\nhorse: { trouble: [${'x,'.repeat(14_000)}] }\n`,
    ['2:22', 'trouble, one of'],
  ],
  ['signs of no text', `a: ${'\u0007'.repeat(390_000)}`, ['1:4', 'text without control characters']],
];

function keys(count: number): string {
  return Array.from({ length: count }, (_, i) => `k${i.toString(36)}: 1\n`).join('');
}

/** Bounds the time, then expects the problem. */
function within(read: () => readonly Problem[], [place, expected]: readonly [string, string]): void {
  const before = cpuMilliseconds();
  const problems = read();
  expect(cpuMilliseconds() - before).toBeLessThan(MILLISECONDS);
  const told = problems.map(({ line, column, expected: words }) => `${line}:${column} ${words}`);
  expect(
    told.filter((words) => words.startsWith(`${place} ${expected}`)),
    told[0],
  ).toHaveLength(1);
}

describe('in an order', () => {
  test.each(inputs)('%s', (_, text, told) => {
    within(() => orderProblems(text), told);
  });

  test('orders by the ten thousand are for a backlog', () => {
    const [read, ...more] = readOrders('--- a\n'.repeat(800_000), 'o.yaml');
    expect(more).toEqual([]);
    expect(read).toMatchObject({ ok: false, line: 10_001 });
  });
});

const refused = inputs.filter(([, , [, expected]]) => expected === letters || expected === marks);

test.each(refused)('in a shop and in outcomes: %s', (_, text, told) => {
  within(() => {
    const read = readShop(text, 's.yaml');
    return read.ok ? [] : read.problems;
  }, told);
  within(() => {
    const read = readOutcomes(text, 'o.yaml', 'yaml');
    return read.ok ? [] : read.problems;
  }, told);
});

test.each([
  ['rows of commas', columns + ',,,,,\n'.repeat(50_000), '10001:1'],
  ['a row of commas', columns + ','.repeat(4_900_000), '2:59995'],
  ['rows without end', columns + 'x\n'.repeat(2_000_000), '59996:1'],
])('in a table of outcomes: %s', (_, text, place) => {
  within(() => {
    const read = readOutcomes(text, 'o.csv', 'csv');
    return read.ok ? [] : read.problems;
  }, [place, cells]);
});

describe('the built program', () => {
  const home = ownFolder();
  beforeAll(() => {
    inputs.forEach(([, text], i) => {
      fs.writeFileSync(path.join(home, `${i}.yaml`), text);
    });
    fs.writeFileSync(path.join(home, 'rows.csv'), columns + ',,,,,\n'.repeat(50_000));
    fs.writeFileSync(path.join(home, 'many.yaml'), '--- a\n'.repeat(800_000));
    fs.writeFileSync(path.join(home, 'lines.ndjson'), '{}\n'.repeat(1_600_000));
    fs.writeFileSync(path.join(home, 'order.yaml'), orderText(1));
  });

  // The others were read in this process.
  const files = [...(long ? inputs.map((_, i) => `${i}.yaml`) : []), 'many.yaml', 'lines.ndjson'];
  test.each([
    ...files.map((file) => [['size', file]]),
    [['size', 'order.yaml', '--shop', '0.yaml']],
    [['learn', 'rows.csv']],
  ])(
    '%j answers within two seconds and 300 MB',
    async (args) => {
      const peak = path.join(home, 'peak.json');
      const env = { NODE_OPTIONS: `--require ${path.join(repo, 'tests/bench/peak.cjs')}`, PEAK: peak };
      const { code, stderr } = await start(args, { cwd: home, env });
      expect(code, stderr).toBe(3);
      const took = JSON.parse(fs.readFileSync(peak, 'utf8')) as { cpu: number; megabytes: number };
      expect(took.cpu * 1000).toBeLessThan(MILLISECONDS);
      expect(took.megabytes).toBeLessThan(MEGABYTES);
    },
    60_000,
  );
});

test('in a backlog it costs its own row', async () => {
  const stdin = [orderText(1), ...refused.map(([, text]) => text), orderText(2)].join('\n---\n');
  const { stdout } = await run(['backlog', '-', '--format', 'ndjson'], { stdin });
  const rows = stdout
    .trimEnd()
    .split('\n')
    .map((line) => JSON.parse(line) as { verdict: string; problem: string | null; line: number });
  expect(rows.map(({ verdict }) => verdict)).toEqual(['sized', ...refused.map(() => 'faulty'), 'sized']);
  rows.slice(1, -1).forEach(({ problem }, i) => {
    expect(problem).toContain(refused[i]![2][1]);
  });
}, 60_000);
