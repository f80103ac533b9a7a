/** Outcome files, and the orders they name. */
import { textOf } from '../../../src/cli/text-file.ts';
import { orderJsonSchema } from '../../../src/order/json-schema.ts';
import { readOutcomes } from '../../../src/order/read-outcomes.ts';
import type { Random } from '../../../src/math/random.ts';
import { happens, pick, whole } from '../../support/draw.ts';
import { damaged, damagedBytes } from '../damage/damage.ts';
import { misspelled, strangeText } from '../damage/texts.ts';
import { lexiconOf } from '../damage/tree.ts';
import { holdProblems } from '../hold-problems.ts';
import { kept, outcomeSeeds } from '../seeds.ts';
import type { Standing, Target } from '../target.ts';

type Kind = 'yaml' | 'csv';

const looked =
  (kind: Kind) =>
  (input: Buffer): Standing => {
    const read = textOf(input);
    if (!read.ok) return 'faulty';
    const { text } = read;
    const outcomes = readOutcomes(text, `x.${kind}`, kind);
    if (!outcomes.ok) holdProblems(outcomes.problems, `x.${kind}`, text);
    return outcomes.ok ? 'good' : 'faulty';
  };

const lines = (file: string): string[][] => [
  ...['table', 'markdown', 'html', 'json'].map((format) => [
    'learn',
    file,
    '--orders',
    'orders',
    '--format',
    format,
  ]),
  ['learn', file, '--orders', 'orders', '--picture', '-', '--format', 'json', '--out', 'learned.json'],
  ['learn', file, '--write', '-', '--out', 'learned.txt'],
];

const orders = { 'orders/o.yaml': '02-everything-measured', 'orders/p.yaml': '11-wants-refused' };

const target = (kind: Kind, more: Pick<Target, 'seeds' | 'change'>): Target => ({
  name: `outcomes-${kind}`,
  file: `x.${kind}`,
  beside: Object.fromEntries(
    Object.entries(orders).map(([name, order]) => [name, kept(`examples/orders/${order}.yaml`)]),
  ),
  ...more,
  look: looked(kind),
  lines: (standing, _, chance) =>
    standing === 'good' || happens(chance, 0.2) ? [pick(chance, lines(`x.${kind}`))] : [],
  writes: true,
});

export function outcomesTarget(): Target {
  const seeds = outcomeSeeds();
  const lexicon = lexiconOf(seeds, orderJsonSchema());
  return target('yaml', { seeds, change: (parents, chance) => damaged(parents, chance, lexicon) });
}

export function outcomesTableTarget(): Target {
  const rows = kept('examples/outcomes.csv').toString('utf8').split('\n').slice(0, 12).join('\n');
  return target('csv', { seeds: [Buffer.from(`${rows}\n`)], change: damagedTable });
}

/** Damages cells, rows, columns, or the table's form. */
function damagedTable(parents: readonly Buffer[], chance: Random): Buffer {
  const parent = pick(chance, parents);
  if (happens(chance, 0.2)) return damagedBytes(parent, chance);
  const rows = parent
    .toString('utf8')
    .split('\n')
    .map((row) => row.split(','));
  for (let times = whole(chance, 1, 3); times > 0; times -= 1) {
    const row = pick(chance, rows);
    const at = whole(chance, 0, row.length - 1);
    const cell = row[at] ?? '';
    const other = pick(chance, rows)[at] ?? '';
    const spoiled = [strangeText(chance), misspelled(cell, chance), `"${cell}`, `${cell}""`, ''];
    const wrong = happens(chance, 0.3);
    row[at] = wrong
      ? pick(chance, spoiled)
      : pick(chance, [other, other, other, `"${cell}"`, cell.replace(/\d/, '7')]);
    if (happens(chance, 0.05)) row.splice(at, 1);
    if (happens(chance, 0.05)) rows.push([...pick(chance, rows)]);
    if (happens(chance, 0.1)) for (const each of rows) each.reverse();
  }
  const end = pick(chance, ['\n', '\n', '\n', '\r\n', '\r']);
  const mark = happens(chance, 0.03) ? pick(chance, [';', '\t', ', ', ',,']) : ',';
  return Buffer.from(rows.map((row) => row.join(mark)).join(end));
}
