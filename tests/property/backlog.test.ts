/** The invented backlog: readable, varied, repeatable. */
import { expect, test } from 'vitest';
import { sizeOrder } from '../../src/index.ts';
import { readOrders } from '../../src/order/read-orders.ts';
import type { Order } from '../../src/order/types.ts';
import { defaultShop } from '../../src/cinch/default-shop.ts';
import { cases } from '../support/cases.ts';
import { backlogFiles } from '../support/backlog/backlog.ts';
import { faults } from '../support/backlog/faults.ts';

const count = cases(250, 500);
const good = [...backlogFiles({ count, seed: 7, faultyPercent: 0 })];

function ordersIn({ name, text }: { name: string; text: string }): Order[] {
  return readOrders(text, name).map((read) => {
    if (!read.ok) throw new Error(`${name}: ${JSON.stringify(read.problems)}\n${text}`);
    return read.order;
  });
}
const orders = good.flatMap(ordersIn);

test('every good file holds one order that reads', () => {
  expect(orders).toHaveLength(count);
});

test('no two have the same name or the same content', () => {
  expect(new Set(good.map(({ name }) => name)).size).toBe(count);
  expect(new Set(orders.map(({ order }) => order)).size).toBe(count);
  const content = orders.map((order) => JSON.stringify({ ...order, order: '', notes: '', customer: {} }));
  expect(new Set(content).size).toBe(count);
});

test('about sixty lines each', () => {
  const lines = good.map(({ text }) => text.split('\n').length - 1);
  const mean = lines.reduce((sum, n) => sum + n, 0) / count;
  expect(Math.abs(mean - 60)).toBeLessThan(4);
  expect(Math.min(...lines)).toBeGreaterThan(35);
  expect(Math.max(...lines)).toBeLessThan(85);
});

test('the same seed gives the same bytes, however many are made; another seed gives others', () => {
  const few = [...backlogFiles({ count: 40, seed: 7, faultyPercent: 0 })];
  expect(few).toEqual(good.slice(0, 40));
  const other = [...backlogFiles({ count: 40, seed: 8, faultyPercent: 0 })];
  expect(other.filter(({ text }, i) => text === few[i]?.text)).toEqual([]);
});

test('a thousand files a folder, in the order of their numbers', () => {
  const names = [...backlogFiles({ count: 2001, seed: 1, faultyPercent: 0 })].map(({ name }) => name);
  expect([names[0], names[999], names[1000], names[2000]]).toEqual([
    '0000/order-000001.yaml',
    '0000/order-001000.yaml',
    '0001/order-001001.yaml',
    '0002/order-002001.yaml',
  ]);
  expect([...names].sort()).toEqual(names);
});

const share = (of: (order: Order) => boolean): number => orders.filter(of).length / count;

test('orders are of all kinds: much told and little, all units, kinds, positions and wishes', () => {
  const texts = good.map(({ text }) => text).join('');
  for (const unit of ['in', 'cm', 'mm', 'hh']) expect(texts).toMatch(new RegExp(`\\d ${unit}\\b`));
  expect(new Set(orders.map(({ horse }) => horse.kind)).size).toBe(7); // one is not told
  expect(new Set(orders.map(({ use }) => use)).size).toBe(9);
  for (const some of [
    share(({ horse }) => horse.elbowRoom !== undefined),
    share(({ horse }) => horse.heartGirth !== undefined),
    share(({ saddle }) => saddle.ringToRing !== undefined),
    share(({ saddle }) => saddle.rigging.kind === 'named'),
    share(({ wants }) => wants !== undefined),
    share(({ current }) => current !== undefined),
    share(({ colors }) => colors !== undefined),
  ]) {
    expect(some).toBeGreaterThan(0.1);
    expect(some).toBeLessThan(0.95);
  }
});

test('height and girth go together as they do in horses', () => {
  const both = orders.flatMap(({ horse: { height, heartGirth } }) =>
    height === undefined || heartGirth === undefined ? [] : [[height, heartGirth] as const],
  );
  const mean = (values: readonly number[]): number => values.reduce((sum, v) => sum + v, 0) / values.length;
  const h = mean(both.map(([height]) => height));
  const g = mean(both.map(([, girth]) => girth));
  const product = mean(both.map(([height, girth]) => (height - h) * (girth - g)));
  const spread = (of: (pair: readonly [number, number]) => number, from: number): number =>
    Math.sqrt(mean(both.map((pair) => (of(pair) - from) ** 2)));
  const r = product / (spread(([height]) => height, h) * spread(([, girth]) => girth, g));
  expect(r).toBeGreaterThan(0.8);
  expect(r).toBeLessThan(0.99);
});

test('the answers are as varied as the orders', () => {
  const tops = orders.map((order) => sizeOrder(order, defaultShop).specs[0]);
  const none = tops.filter((top) => top === undefined).length / count;
  expect(none).toBeGreaterThan(0.005);
  expect(none).toBeLessThan(0.15);
  const found = tops.filter((top) => top !== undefined);
  const strands = new Set(found.map(({ candidate }) => candidate.strands));
  expect(strands.size).toBeGreaterThan(5);
  expect(new Set(found.map(({ candidate }) => candidate.style)).size).toBeGreaterThan(1);
  expect(new Set(found.map(({ candidate }) => candidate.length)).size).toBeGreaterThan(8);
  // Few clear only just: the shop's narrowest cinch mostly clears surely.
  const unsure = found.filter(({ candidate }) => candidate.clearance.chance < 0.8).length;
  expect(unsure).toBeGreaterThan(1);
  expect(unsure / count).toBeLessThan(0.5);
});

test('with all of them faulty none reads, and the faults are of every kind', () => {
  const broken = [...backlogFiles({ count, seed: 7, faultyPercent: 100 })];
  const reads = broken.filter(({ name, text }) => readOrders(text, name).some(({ ok }) => ok));
  expect(reads.map(({ text }) => text)).toEqual([]);
  const kinds = Object.values(faults);
  const used = kinds.filter((fault) => broken.some(({ text }, i) => fault(good[i]?.text ?? '') === text));
  expect(used).toHaveLength(kinds.length);
});

test('a share of faulty ones leaves the others as they were', () => {
  const some = [...backlogFiles({ count, seed: 7, faultyPercent: 10 })];
  const changed = some.filter(({ text }, i) => text !== good[i]?.text).length;
  expect(Math.abs(changed - count / 10)).toBeLessThan(cases(18, 25)); // binomial, sd 4.7 and 6.7: almost four spreads
});
