/** Good files to start from. */
import fs from 'node:fs';
import path from 'node:path';
import { filesOf, readCase } from '../support/case-file.ts';
import { backlogFiles } from '../support/backlog/backlog.ts';

/** Tests and the bundled fuzz both start there. */
const home = process.cwd();

const at = (name: string): string => path.join(home, name);

export const kept = (name: string): Buffer => fs.readFileSync(at(name));

const yamlIn = (folder: string): string[] =>
  fs
    .readdirSync(at(folder), { recursive: true, encoding: 'utf8' })
    .filter((name) => name.endsWith('.yaml'))
    .sort()
    .map((name) => path.join(folder, name));

const goldenFiles = (): Buffer[] =>
  fs
    .readdirSync(at('tests/golden/cases'))
    .sort()
    .flatMap((name) => filesOf(readCase(kept(`tests/golden/cases/${name}`).toString('utf8'))))
    .flatMap(([name, bytes]) => (name.endsWith('.yaml') ? [bytes] : []));

const size = 6_000;
const small = (bytes: Buffer): boolean => bytes.length <= size;

const isShop = (bytes: Buffer): boolean => /^shop:/m.test(bytes.toString('utf8'));
const isOutcomes = (bytes: Buffer): boolean => /^outcomes:/m.test(bytes.toString('utf8'));

export const orderSeeds = (): Buffer[] => [
  ...[...yamlIn('examples/orders').map(kept), ...goldenFiles()].filter(
    (bytes) => small(bytes) && !isShop(bytes) && !isOutcomes(bytes),
  ),
  ...[...backlogFiles({ count: 40, seed: 3, faultyPercent: 10 })].map(({ text }) => Buffer.from(text)),
];

export const shopSeeds = (): Buffer[] => [
  kept('examples/shop.yaml'),
  ...goldenFiles().filter((bytes) => small(bytes) && isShop(bytes)),
];

/** As YAML. */
export const outcomeSeeds = (): Buffer[] => [
  kept('examples/outcomes.yaml'),
  ...goldenFiles().filter((bytes) => small(bytes) && isOutcomes(bytes)),
];
