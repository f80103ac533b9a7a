/** Every key of JSON and every column is in the list of names, with one unit, and nothing else is. */
import { describe, expect, test } from 'vitest';
import { headOf, names, type Name, type NameUnit } from '../../src/words/names.ts';
import { tables } from '../support/docs/columns.ts';
import { jsonNames } from '../support/json-names.ts';
import { jsonPrinted } from '../support/json-printed.ts';

const tableNames = Object.keys(names) as Name[];
const unitOf = new Map<string, NameUnit>([
  ...jsonNames,
  ...tableNames.map((name): [string, NameUnit] => [name, names[name].unit]),
]);

/** Leaves out null. */
function* valuesIn(value: unknown, key = ''): Generator<[key: string, value: unknown]> {
  if (value === null) return;
  if (Array.isArray(value)) for (const each of value) yield* valuesIn(each, key);
  else {
    if (key !== '') yield [key, value];
    if (typeof value === 'object')
      for (const [name, inner] of Object.entries(value)) yield* named(name, inner);
  }
}

function* named(key: string, value: unknown): Generator<[string, unknown]> {
  yield [key, undefined];
  yield* valuesIn(value, key);
}

const number = (value: unknown): boolean => typeof value === 'number';
const chance = (value: unknown): boolean => typeof value === 'number' && value >= 0 && value <= 1;
const text = (pattern: RegExp) => (value: unknown) => typeof value === 'string' && pattern.test(value);
const fits: Readonly<Record<NameUnit, (value: unknown) => boolean>> = {
  '': () => true,
  in: number,
  n: number,
  minutes: number,
  chance,
  share: chance,
  money: text(/^-?\d+(\.\d+)?$/),
  day: text(/^\d{4}-\d\d-\d\d$/),
  yes: (value) => typeof value === 'boolean',
};

const printed = await jsonPrinted();
const found = printed.flatMap(([command, document]) =>
  [...valuesIn(document)].map(([key, value]) => ({ command, key, value })),
);

describe('JSON', () => {
  test.each([...new Set(printed.map(([command]) => command))])('%s: every key is in the list', (command) => {
    const keys = new Set(found.filter((each) => each.command === command).map(({ key }) => key));
    expect(
      [...keys].filter((key) => !unitOf.has(key)),
      'src/words/names.ts or tests/support/json-names.ts',
    ).toEqual([]);
  });

  test('a name has one unit, whoever prints it', () => {
    const wrong = found.filter(
      ({ key, value }) =>
        value !== undefined && typeof value !== 'object' && !fits[unitOf.get(key) ?? ''](value),
    );
    expect(wrong).toEqual([]);
  });

  test('what tables flatten is where the list says', () => {
    for (const name of tableNames.filter((each) => names[each].path.length > 1)) {
      const [outer = '', inner = ''] = names[name].path;
      const holders = found.filter(({ key, value }) => key === outer && typeof value === 'object') as {
        value: object;
      }[];
      expect(
        holders.some(({ value }) => inner in value),
        name,
      ).toBe(true);
    }
  });
});

describe('the list', () => {
  test('holds nothing that nobody prints', () => {
    const used = new Set<string>([...found.map(({ key }) => key), ...Object.values(tables).flat()]);
    expect([...unitOf.keys()].filter((name) => !used.has(name))).toEqual([]);
  });

  test('names are camelCase in JSON, snake_case in tables, and nothing is in both lists', () => {
    for (const name of unitOf.keys()) expect(name).toMatch(/^[a-z]+([A-Z][a-z]*)*$/);
    for (const name of tableNames) expect(headOf(name)).toMatch(/^[a-z]+(_[a-z]+)*$/);
    expect(tableNames.filter((name) => jsonNames.has(name))).toEqual([]);
  });

  test('a head has its unit', () => {
    expect((['buckleWidth', 'chance', 'lateDays', 'inches', 'clearanceSd'] as const).map(headOf)).toEqual([
      'buckle_width_in',
      'chance',
      'late_days',
      'inches',
      'clearance_sd_in',
    ]);
  });
});
