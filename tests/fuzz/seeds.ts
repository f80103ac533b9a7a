/** Good files to start from: the shipped examples, the cases kept in tests, and invented orders of the backlog. */
import fs from 'node:fs';
import path from 'node:path';
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

const size = 6_000;
const small = (bytes: Buffer): boolean => bytes.length <= size;

const isShop = (bytes: Buffer): boolean => /^shop:/m.test(bytes.toString('utf8'));
const isOutcomes = (bytes: Buffer): boolean => /^outcomes:/m.test(bytes.toString('utf8'));

/** Orders. */
export const orderSeeds = (): Buffer[] => [
  ...[...yamlIn('examples/orders'), ...yamlIn('tests/golden/cases')]
    .map(kept)
    .filter((bytes) => small(bytes) && !isShop(bytes) && !isOutcomes(bytes)),
  ...[...backlogFiles({ count: 40, seed: 3, faultyPercent: 10 })].map(({ text }) => Buffer.from(text)),
];

/** Shop files. */
export const shopSeeds = (): Buffer[] => [
  kept('examples/shop.yaml'),
  ...yamlIn('tests/golden/cases')
    .map(kept)
    .filter((bytes) => small(bytes) && isShop(bytes)),
];

/** Outcomes, as YAML. */
export const outcomeSeeds = (): Buffer[] => [
  kept('examples/outcomes.yaml'),
  ...yamlIn('tests/golden/cases')
    .map(kept)
    .filter((bytes) => small(bytes) && isOutcomes(bytes)),
];
