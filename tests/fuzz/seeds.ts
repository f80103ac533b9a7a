/** Good files to start from: the shipped examples, the cases kept in tests, and invented orders of the backlog. */
import fs from 'node:fs';
import path from 'node:path';
import { filesOf, readCase } from '../support/case-file.ts';
import { backlogFiles } from '../support/backlog/backlog.ts';

/** Where the project stands; tests and the bundled fuzz are both started there. */
const home = process.cwd();

const at = (name: string): string => path.join(home, name);

/** A file of the project. */
export const kept = (name: string): Buffer => fs.readFileSync(at(name));

const yamlIn = (folder: string): string[] =>
  fs
    .readdirSync(at(folder), { recursive: true, encoding: 'utf8' })
    .filter((name) => name.endsWith('.yaml'))
    .sort()
    .map((name) => path.join(folder, name));

/** The order, shop and outcome files that golden cases find. */
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

/** Orders. */
export const orderSeeds = (): Buffer[] => [
  ...[...yamlIn('examples/orders').map(kept), ...goldenFiles()].filter(
    (bytes) => small(bytes) && !isShop(bytes) && !isOutcomes(bytes),
  ),
  ...[...backlogFiles({ count: 40, seed: 3, faultyPercent: 10 })].map(({ text }) => Buffer.from(text)),
];

/** Shop files. */
export const shopSeeds = (): Buffer[] => [
  kept('examples/shop.yaml'),
  ...goldenFiles().filter((bytes) => small(bytes) && isShop(bytes)),
];

/** Outcomes, as YAML. */
export const outcomeSeeds = (): Buffer[] => [
  kept('examples/outcomes.yaml'),
  ...goldenFiles().filter((bytes) => small(bytes) && isOutcomes(bytes)),
];
