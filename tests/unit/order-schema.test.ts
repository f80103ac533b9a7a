/** The JSON Schemas and the blank order agree with the door. */
import { readFileSync } from 'node:fs';
import { describe, expect, test } from 'vitest';
import { parse } from 'yaml';
import { blankOrder } from '../../src/order/blank.ts';
import { defaultShop } from '../../src/cinch/default-shop.ts';
import { orderJsonSchema, shopJsonSchema } from '../../src/order/json-schema.ts';
import { allKeys } from '../../src/order/key.ts';
import { orderKeys, orderSchema } from '../../src/order/order-schema.ts';
import { readOrders } from '../../src/order/read-orders.ts';
import { keyPlaces } from '../../src/order/schema-keys.ts';
import { modelNumbers } from '../../src/numbers/numbers.ts';

interface Schema {
  type?: string | string[];
  enum?: unknown[];
  pattern?: string;
  minimum?: number;
  maximum?: number;
  multipleOf?: number;
  not?: Schema;
  anyOf?: Schema[];
  items?: Schema;
  properties?: Record<string, Schema>;
  required?: string[];
  additionalProperties?: boolean;
  description?: string;
}

const kindOf = (value: unknown): string[] => {
  if (Array.isArray(value)) return ['array'];
  if (typeof value === 'number') return Number.isInteger(value) ? ['integer', 'number'] : ['number'];
  return [value === null ? 'null' : typeof value];
};

/** A small validator, written apart from the door. */
function fits(schema: Schema, value: unknown): boolean {
  const types = schema.type === undefined ? kindOf(value) : [schema.type].flat();
  const plain =
    kindOf(value).some((kind) => types.includes(kind)) &&
    (schema.enum?.includes(value) ?? true) &&
    (schema.anyOf?.some((branch) => fits(branch, value)) ?? true) &&
    !(schema.not !== undefined && fits(schema.not, value));
  return plain && fitsByKind(schema, value);
}

function fitsByKind(schema: Schema, value: unknown): boolean {
  if (typeof value === 'string') return new RegExp(schema.pattern ?? '', 'u').test(value);
  if (typeof value === 'number') return fitsNumber(schema, value);
  if (Array.isArray(value)) return value.every((entry) => fits(schema.items ?? {}, entry));
  return typeof value !== 'object' || value === null || fitsBlock(schema, value);
}

function fitsNumber({ minimum = -Infinity, maximum = Infinity, multipleOf }: Schema, value: number): boolean {
  return value >= minimum && value <= maximum && (multipleOf === undefined || value % multipleOf === 0);
}

function fitsBlock(
  { properties = {}, required = [], additionalProperties = true }: Schema,
  value: object,
): boolean {
  return (
    required.every((key) => key in value) &&
    Object.entries(value).every(([key, entry]) =>
      key in properties ? fits(properties[key] ?? {}, entry) : additionalProperties,
    )
  );
}

const order: Schema = orderJsonSchema();
const shop: Schema = shopJsonSchema();

/** The blank order with its open lines filled. */
const least = blankOrder()
  .replace('order:', 'order: 2417')
  .replace('height:', 'height: 15.1 hh')
  .replace('rigging:', 'rigging: 7/8');
/** One "#" off every line. */
const filled = least.replace(/^#/gm, '');

describe('the schemas', () => {
  test('are draft 2020-12, closed, and describe every key', () => {
    const walk = (schema: Schema, path: string): void => {
      expect([path, typeof schema.description === 'string' || path.includes('|')]).toEqual([path, true]);
      if (schema.properties !== undefined) expect([path, schema.additionalProperties]).toEqual([path, false]);
      for (const [key, child] of Object.entries(schema.properties ?? {})) walk(child, `${path}.${key}`);
      for (const branch of schema.anyOf ?? []) walk(branch, `${path}|`);
      if (schema.items !== undefined) walk(schema.items, `${path}[]`);
    };
    for (const schema of [order, shop]) {
      expect(schema).toHaveProperty('$schema', 'https://json-schema.org/draft/2020-12/schema');
      walk(schema, '');
    }
    expect(order.required).toEqual(['order', 'horse', 'saddle']);
    expect(order.properties?.['saddle']?.required).toEqual(['rigging']);
  });
  test('the shop that ships fits, and so does the filled blank, as an editor reads them', () => {
    expect(
      fits(shop, parse(readFileSync(new URL('../../examples/shop.yaml', import.meta.url), 'utf8'))),
    ).toBe(true);
    expect(fits(order, parse(filled))).toBe(true);
  });
  test.each([
    'order: 1\nhorse: { height: 15 hh, cow: 1 }\nsaddle: { rigging: full }',
    'order: 1\nhorse: { heart-girth: 73 }\nsaddle: { rigging: full }',
    'order: 1\nhorse: { name: x }\nsaddle: { rigging: full }',
    'order: 1\nhorse: { height: 15 hh }\nsaddle: { rigging: ful }',
    'order: 1\nhorse: { height: 15 hh }\nsaddle: { rigging: full, double: maybe }',
    'order: 1\nhorse: { height: 15 hh, condition: 6.3 }\nsaddle: { rigging: full }',
    'order: 1\nhorse: { height: 15 hh }\nsaddle: { rigging: full }\nwants: { strands: 20 }',
    'order: 1\nhorse: { height: 15 hh }\nsaddle: { rigging: full }\nquantity: 0',
    'horse: { height: 15 hh }\nsaddle: { rigging: full }',
  ])('what the door refuses, the editor marks too: %s', (text) => {
    expect(readOrders(text, 'o.yaml')[0]?.ok).toBe(false);
    expect(fits(order, parse(text))).toBe(false);
  });
  test('the model takes every number of the table, and no other', () => {
    expect(Object.keys(shop.properties?.['model']?.properties ?? {})).toEqual(Object.keys(modelNumbers));
  });
});

describe('the blank order', () => {
  test('asks, as it stands, for exactly what is needed', () => {
    const [read] = readOrders(blankOrder(), 'blank.yaml');
    if (read?.ok !== false) throw new Error('an empty order was taken');
    expect(read.problems.map((p) => [p.path, p.found])).toEqual([
      ['order', 'nothing'],
      ['horse.height', 'nothing'],
      ['saddle.rigging', 'nothing'],
    ]);
  });
  test('is taken with only that filled in, and with everything', () => {
    expect(readOrders(least, 'blank.yaml')[0]?.ok).toBe(true);
    expect(readOrders(filled, 'blank.yaml')).toMatchObject([{ ok: true }]);
  });
  test('is taken with one "#" taken off any single line', () => {
    const lines = least.split('\n');
    for (const [at, line] of lines.entries()) {
      const text = lines.with(at, line.replace(/^#/, '')).join('\n');
      expect([line, readOrders(text, 'blank.yaml')]).toMatchObject([line, [{ ok: true }]]);
    }
  });
  test('names only buckles of the shop that ships', () => {
    const [read] = readOrders(filled, 'blank.yaml');
    const ids = defaultShop.buckles.map(({ id }) => id);
    expect(ids).toContain(read?.ok === true ? read.order.wants?.buckle : undefined);
    expect(ids).toContain(read?.ok === true ? read.order.current?.buckle : undefined);
  });
  test('shows every key there is', () => {
    const written = parse(filled) as Record<string, unknown>;
    const branches = new Set(['saddle.rigging', 'horse.barrel', 'horse.elbow-room', 'photo.reference']);
    for (const { path, keys } of keyPlaces(orderSchema)) {
      if (branches.has(path)) continue;
      const steps = path === '' ? [] : path.split('.');
      const block = steps.reduce((here, key) => here[key] as Record<string, unknown>, written);
      expect([path, Object.keys(block).toSorted()], 'the blank form shows every key').toEqual([
        path,
        [...keys].toSorted(),
      ]);
    }
  });
  test('names every word of the lists', () => {
    const known = new Set(blankOrder().split(/[^\w-]+/));
    // Henneke words may stand for scores.
    for (const { path, words = [] } of allKeys(orderKeys).filter(({ path }) => path[1] !== 'condition'))
      expect([path, words.filter((word) => !known.has(word))]).toEqual([path, []]);
  });
});
