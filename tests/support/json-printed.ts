/** What each command prints as JSON of the examples: between them every name that it has. */
import fs from 'node:fs';
import os from 'node:os';
import path from 'node:path';
import { run } from './run-cli.ts';

const orders = 'examples/orders';
const runs: readonly (readonly string[])[] = [
  [
    'size',
    `${orders}/01-height-only.yaml`,
    `${orders}/08-elbow-gall.yaml`,
    `${orders}/10-nothing-passes.yaml`,
    `${orders}/11-wants-refused.yaml`,
    `${orders}/25-photo.yaml`,
    `${orders}/faulty-20-hands.yaml`,
    '--why',
    '--simulate',
    '100',
  ],
  ['size', '--say', 'girth 76 in, room 3.3 in, set-back -2 in, round'],
  ['size', `${orders}/01-height-only.yaml`, '--what-if', '3/4'],
  ['check', `${orders}/08-elbow-gall.yaml`, `${orders}/12-wants-passes.yaml`],
  ['photo', `${orders}/25-photo.yaml`],
  ['ask', `${orders}/03-pony.yaml`, '--draws', '8'],
  ['quote', `${orders}/11-wants-refused.yaml`, `${orders}/12-wants-passes.yaml`, `${orders}/17-colors.yaml`],
  ['ticket', `${orders}/02-everything-measured.yaml`, `${orders}/07-saddle-rolls.yaml`],
  ['materials', orders],
  ['schedule', `${orders}/10-nothing-passes.yaml`, `${orders}/16-several-orders.yaml`, '--hours', '3'],
  ['learn', 'examples/outcomes.csv'],
  ['backlog', orders],
  ['rules'],
];

/** Documents by command, in the order in which they are told of. */
export async function jsonPrinted(): Promise<[command: string, document: object][]> {
  const home = fs.mkdtempSync(path.join(os.tmpdir(), 'cinchwright-names-'));
  try {
    const learned = path.join(home, 'shop.yaml');
    await run(['learn', 'examples/outcomes.csv', '--shop', 'examples/shop.yaml', '--write', learned]);
    const all = [...runs, ['size', `${orders}/01-height-only.yaml`, '--shop', learned]];
    const printed = await Promise.all(all.map((args) => run([...args, '--format', 'json'])));
    return printed.map(({ stdout }, i) => [all[i]![0]!, JSON.parse(stdout) as object]);
  } finally {
    fs.rmSync(home, { recursive: true });
  }
}
