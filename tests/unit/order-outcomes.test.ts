/** Outcomes from YAML and CSV read the same. */
import { describe, expect, test } from 'vitest';
import { csvRows } from '../../src/order/csv-rows.ts';
import { outcomeColumns } from '../../src/order/csv-outcomes.ts';
import { readOutcomes } from '../../src/order/read-outcomes.ts';
import { evidenceFrom, partFaults } from '../../src/learn/learn.ts';
import { defaultShop } from '../../src/cinch/default-shop.ts';

const yaml = (text: string) => readOutcomes(text, 'o.yaml', 'yaml');
const csv = (text: string) => readOutcomes(text, 'o.csv', 'csv');
const told = (read: ReturnType<typeof yaml>): string[] =>
  read.ok
    ? []
    : read.problems.map(
        ({ line, column, path, expected, hint }) =>
          `${line}:${column} ${path}: ${expected}${hint === undefined ? '' : ` (${hint})`}`,
      );

const tied = 'tied: { style: straight, strands: 19, length: 32 in }';
const good = `outcomes:\n  - { order: 1, ${tied}, days: 30, result: good }\n`;

test('an outcome of an order, and one with its pair', () => {
  const read = yaml(
    `${good}  - horse: { heart-girth: 72 in }\n    saddle: { rigging: { set-back: 2 in } }\n    ${tied}\n    days: 0\n    result: elbow-rub\n`,
  );
  expect(told(read)).toEqual([]);
  if (!read.ok) return;
  const [one, other] = read.outcomes;
  expect(one).toMatchObject({ order: '1', pair: undefined, days: 30, result: 'good' });
  expect(other?.pair?.saddle.rigging).toEqual({ kind: 'measured', setBack: 2 });
});

test('the same as a table', () => {
  const read = csv(
    'order,heart-girth,set-back,style,strands,length,days,result\r\n7,72 in,2 in,straight,19,32 in,4,good\r\n',
  );
  expect(told(read)).toEqual([]);
  if (!read.ok) return;
  expect(read.outcomes[0]).toMatchObject({
    order: '7',
    days: 4,
    tied: { strands: 19, length: 32, buckle: undefined },
  });
  expect(read.outcomes[0]?.pair?.horse.heartGirth).toBe(72);
});

test('two cinches of one order: another spec, or the same after other days', () => {
  const row = good.split('\n')[1]!;
  for (const other of [row.replace('19', '21'), row.replace('32 in', '30 in'), row.replace('30,', '31,')])
    expect(told(yaml(`${good}${other}\n`))).toEqual([]);
  const spaced = row.replace('32 in', '32.0 in').replace('good', 'elbow-rub');
  expect(told(yaml(`${good}${spaced}\n`)).join()).toMatch(/each cinch of an order once/);
});

describe('faults of YAML', () => {
  const one = (change: string): string => `outcomes:\n  - { order: 1, ${tied}, ${change} }\n`;
  test.each<[string, string, RegExp]>([
    [
      'days negative',
      one('days: -3, result: good'),
      /^2:\d+ outcomes\[0\]\.days: days in use .* from 0 to 5000$/,
    ],
    [
      'a result not on the list',
      one('days: 3, result: gall'),
      /result: how it turned out, one of good.*"elbow-rub"/,
    ],
    ['a result of two meanings', one('days: 3, result: rub'), /"elbow-rub" or "buckle-rub"/],
    ['an even count', one('days: 3, result: good').replace('19', '18'), /strands.*odd.*even/],
    ['nobody knows what for', good.replace('order: 1, ', ''), /an order, or a horse and a saddle/],
    ['half a pair', good.replace('order: 1', 'horse: { heart-girth: 72 in }'), /a saddle with the horse/],
    [
      'the same report twice',
      good + good.split('\n')[1]!,
      /^3:\d+ outcomes\[1\]\.order: each cinch of an order once; the same spec after the same days is already on line 2/,
    ],
    [
      'a pair without a size',
      good.replace('order: 1', 'horse: { barrel: round }, saddle: { rigging: full }'),
      /outcomes\[0\]\.horse.*: height or heart-girth/,
    ],
    ['no list', 'outcomes: []\n', /at least one outcome/],
    ['nothing', '# only a comment\n', /outcomes: the file is empty/],
    [
      'the key that people write',
      good.replace('result', 'outcome'),
      /outcomes\[0\]\.outcome: .*\(did you mean "result"\?\)/,
    ],
    ['another key', good.replace('days', 'day'), /"days"|days/],
  ])('%s', (_, text, expected) => {
    expect(told(yaml(text)).join('\n')).toMatch(expected);
  });
});

describe('faults of CSV', () => {
  const head = 'order,style,strands,length,days,result';
  test.each<[string, string, RegExp]>([
    [
      'a column of another name',
      `${head.replace('strands', 'strand')}\n1,straight,19,32 in,3,good\n`,
      /^1:13 : a column: .*"strands"/m,
    ],
    [
      'a column missing',
      'order,style\n1,straight\n',
      /^1:1 : the columns strands, length, days and result, too$/m,
    ],
    [
      'the column that people write',
      `${head.replace('result', 'outcome')}\n`,
      /^1:33 : a column: .*\(did you mean "result"\?\)/m,
    ],
    ['a column twice', `${head},days\n1,straight,19,32 in,3,good,3\n`, /each column once/],
    ['semicolons', `${head.replaceAll(',', ';')}\n`, /columns separated by commas/],
    ['a short row', `${head}\n1,straight,19,32 in,3\n`, /^2:1 : 6 cells, as many as the header row/],
    [
      'a cell that is wrong',
      `${head}\n1,straight,19,32,3,good\n`,
      /^2:15 outcomes\[0\]\.tied\.length: .*"32 in"/,
    ],
    ['days negative', `${head}\n1,straight,19,32 in,-3,good\n`, /^2:21 outcomes\[0\]\.days/],
    ['a quote left open', `${head}\n"1,straight\n`, /^2:1 : an end to the quote that opens here/],
    [
      'an order twice',
      `${head}\n1,straight,19,32 in,3,good\n1,straight,19,32 in,3,good\n`,
      /^3:1 .*already on line 2/,
    ],
    ['nothing', '', /a table: the file is empty/],
  ])('%s', (_, text, expected) => {
    expect(told(csv(text)).join('\n')).toMatch(expected);
  });
  test('every column goes somewhere of its own', () => {
    const paths = Object.values(outcomeColumns).map((path) => path.join('.'));
    expect(new Set(paths).size).toBe(paths.length);
  });
});

/** RFC 4180, section 2; misplaced quotes by 2.5 and 2.7. */
describe('CSV by RFC 4180', () => {
  const texts = (text: string) => {
    const read = csvRows(text);
    return read.ok ? read.rows.map((row) => row.map((cell) => cell.text)) : 'error';
  };
  test.each<[string, string[][] | 'error']>([
    [
      'aaa,bbb,ccc\r\nzzz,yyy,xxx\r\n',
      [
        ['aaa', 'bbb', 'ccc'],
        ['zzz', 'yyy', 'xxx'],
      ],
    ],
    [
      'aaa,bbb,ccc\r\nzzz,yyy,xxx',
      [
        ['aaa', 'bbb', 'ccc'],
        ['zzz', 'yyy', 'xxx'],
      ],
    ],
    [
      '"aaa","bbb","ccc"\r\nzzz,yyy,xxx',
      [
        ['aaa', 'bbb', 'ccc'],
        ['zzz', 'yyy', 'xxx'],
      ],
    ],
    [
      '"aaa","b\r\nbb","ccc"\r\nzzz,yyy,xxx',
      [
        ['aaa', 'b\r\nbb', 'ccc'],
        ['zzz', 'yyy', 'xxx'],
      ],
    ],
    ['"aaa","b""bb","ccc"', [['aaa', 'b"bb', 'ccc']]],
    ['a,b\r\n"unterminated', 'error'],
    ['a,b"c\r\n', 'error'],
    ['"a"b,c\r\n', 'error'],
    [
      'a,\n\n,b',
      [
        ['a', ''],
        ['', 'b'],
      ],
    ],
  ])('%j', (text, expected) => {
    expect(texts(text)).toEqual(expected);
  });
});

test('outcomes with other faults are still compared with orders and shop', () => {
  const read = yaml(
    `outcomes:\n  - { order: 8, ${tied}, days: two, result: good }\n  - { order: 9, days: 3, result: good,\n      tied: { style: low-flare, strands: 19, buckle: plain 2 1/2, length: 32 in }, note: x }\n  - { order: 7, tied: { style: straight, strands: 18, length: 32 in }, days: 3, result: good }\n`,
  );
  if (read.ok) throw new Error('read');
  const orders = new Map([['9', {} as never]]);
  const found = read.parts.flatMap((parts) => partFaults(parts, orders, defaultShop));
  expect(told({ ok: false, problems: found, parts: [] })).toEqual([
    expect.stringMatching(/^2:\d+ outcomes\[0\]\.order: an order number found in/),
    expect.stringMatching(
      /^4:\d+ outcomes\[1\]\.tied\.strands: a strand count that the plain 2 1\/2 buckle takes/,
    ),
    expect.stringMatching(/^5:\d+ outcomes\[2\]\.order: an order number found in/),
  ]);
});

describe('outcomes against orders and shop', () => {
  const faults = (text: string): string => {
    const read = yaml(text);
    if (!read.ok) throw new Error(told(read).join('\n'));
    const found = evidenceFrom(read.outcomes, new Map(), defaultShop);
    return found.ok ? '' : told({ ok: false, problems: found.problems, parts: [] }).join('\n');
  };
  const pair = 'horse: { heart-girth: 72 in }, saddle: { rigging: 7/8 }, days: 3, result: good';
  test.each<[string, string, RegExp]>([
    ['an order nobody has', good, /^2:\d+ outcomes\[0\]\.order: .*no orders were named.*--orders/],
    [
      'a buckle the shop does not have',
      `outcomes:\n  - { ${pair}, tied: { style: straight, strands: 19, buckle: big one, length: 32 in } }`,
      /outcomes\[0\]\.tied\.buckle: a buckle in the shop file: plain 2 1\/2, plain 3/,
    ],
    [
      'strands no buckle takes',
      `outcomes:\n  - { ${pair}, tied: { style: straight, strands: 45, length: 32 in } }`,
      /tied\.strands: a strand count that some buckle/,
    ],
    [
      'strands this buckle does not take',
      `outcomes:\n  - { ${pair}, tied: { style: straight, strands: 31, buckle: plain 3, length: 32 in } }`,
      /a strand count that the plain 3 buckle takes/,
    ],
    [
      'a low flare with no side left',
      `outcomes:\n  - { ${pair}, tied: { style: low-flare, strands: 13, length: 16 in } }`,
      /tied\.length: a longer cinch/,
    ],
  ])('%s', (_, text, expected) => {
    expect(faults(text)).toMatch(expected);
  });
});
