/** `new`: the next question, answers, the written order. */
import { describe, expect, test } from 'vitest';
import { readOrders } from '../../src/order/read-orders.ts';
import {
  answer,
  formOf,
  isTold,
  nextQuestion,
  nothingTold,
  type QuestionId,
  type Told,
} from '../../src/order/said/asked.ts';

const buckles = ['plain 3', 'old square 4'];

/** Answers in the order of the questions. */
function after(...lines: string[]): Told {
  return lines.reduce((told, line) => {
    const next = answer(told, nextQuestion(told)!, { line, buckles });
    if (!next.ok) throw new Error(next.problems.map(({ expected }) => expected).join());
    return next.told;
  }, nothingTold);
}

function answered(id: QuestionId, line: string, told = nothingTold): unknown {
  const next = answer(told, id, { line, buckles });
  return next.ok ? next.told.tree : next.problems.map(({ found, expected, hint }) => [found, expected, hint]);
}

describe('which question comes next', () => {
  test('all of them once when each is skipped', () => {
    const ids: QuestionId[] = [];
    let told = nothingTold;
    for (let id = nextQuestion(told); id !== undefined; id = nextQuestion(told)) {
      ids.push(id);
      told = { ...told, skipped: [...told.skipped, id] };
    }
    expect(ids).toHaveLength(16);
    expect(ids.slice(0, 6)).toEqual(['order', 'customer', 'name', 'height', 'girth', 'rigging']);
    expect(isTold(told)).toBe(false);
  });

  test('what an answer says beyond the question is not asked again', () => {
    expect(nextQuestion(after('2501', '', '', '15.2 hh stock, 73 girth, 7/8, round, trail'))).toBe('withers');
  });

  test('an answer to another question corrects that one, and the question stays', () => {
    const told = after('2501', '', '', '15.2 hh', '73', '7/8', 'round');
    const next = answer(told, 'withers', { line: 'girth 75 in', buckles });
    expect(next).toMatchObject({ ok: true, told: { tree: { horse: { 'heart-girth': '75 in' } } } });
    expect(next.ok && nextQuestion(next.told)).toBe('withers');
  });
});

describe('an answer', () => {
  test.each<[QuestionId, string, object]>([
    ['height', '15-2', { horse: { height: '15.2 hh' } }],
    ['height', '15.2 quarter horse', { horse: { height: '15.2 hh', kind: 'stock' } }],
    ['height', '73 girth', { horse: { 'heart-girth': '73 in' } }],
    ['rigging', 'full double in-skirt', { saddle: { rigging: 'full', style: 'in-skirt', double: 'true' } }],
    ['rigging', 'set back 2 in', { saddle: { rigging: { 'set-back': '2 in' } } }],
    ['barrel', 'average', { horse: { barrel: 'average' } }],
    ['withers', 'average', { horse: { withers: 'average' } }],
    ['barrel', 'depth 27 in', { horse: { barrel: { depth: '27 in' } } }],
    ['trouble', 'rolls, galled', { horse: { trouble: ['saddle-rolls', 'elbow-gall'] } }],
    ['room', '4 1/2 in', { horse: { 'elbow-room': '4 1/2 in' } }],
    ['rings', '44', { saddle: { 'ring-to-ring': '44 in' } }],
    ['use', 'barrels', { use: 'barrels' }],
    [
      'current',
      'straight 27, 32 in, 3 y',
      { current: { style: 'straight', strands: '27', length: '32 in', age: '3 y' } },
    ],
    ['wants', '25, plain 3 buckle', { wants: { strands: '25', buckle: 'plain 3' } }],
    ['customer', ' Jo "Trail" Alvarez ', { customer: { name: 'Jo "Trail" Alvarez' } }],
    ['notes', 'no', { notes: 'no' }],
  ])('to %s, "%s"', (id, line, tree) => {
    expect(answered(id, line)).toEqual({ horse: {}, saddle: {}, ...tree });
  });

  test.each<[QuestionId, string]>([
    ['trouble', 'no'],
    ['current', 'None'],
    ['notes', ''],
    ['order', '  '],
  ])('to %s, "%s", skips it', (id, line) => {
    const next = answer(nothingTold, id, { line, buckles });
    expect(next).toEqual({ ok: true, told: { ...nothingTold, skipped: [id] }, taken: '' });
  });

  test.each<[QuestionId, string, string, string, string | undefined]>([
    ['height', '15.4 hh', 'height 15.4 hh', 'height at the withers, with its unit', 'after 15.3 comes 16.0'],
    ['height', '15.2 hh stok', 'stok', 'a word of an order', 'did you mean "stock"'],
    [
      'barrel',
      'rond',
      'rond',
      'shape of the barrel, one of slab-sided, average, round',
      'did you mean "round"',
    ],
    ['room', '4', 'room 4', 'back of elbow to girth groove', 'add a unit'],
    ['room', '44 in', 'room 44 in', 'back of elbow to girth groove from', 'did you mean "44 mm"'],
    ['trouble', 'slips', 'slips', 'words that mean one thing', 'rolls to a side, or slides back'],
    ['wants', 'straight 24', '24', 'strands, an odd whole number', 'even'],
    ['due', 'next week', 'next week', 'a day such as 2026-12-18', 'year-month-day'],
    ['customer', 'Jo\u0007', '\\u{7}', 'text without control characters', undefined],
  ])('to %s, "%s", is told and nothing is guessed', (id, line, ...told) => {
    expect(answered(id, line)).toEqual([
      told.map((each): unknown => (each === undefined ? undefined : expect.stringContaining(each))),
    ]);
  });

  test('that contradicts an earlier one is told', () => {
    const told = after('2501', '', '', '15.2 hh', '60 in', '7/8');
    expect(answered('rings', '62 in', told)).toEqual([
      ['ring to ring 62 in', 'ring-to-ring less than the heart girth', expect.stringContaining('60 in')],
    ]);
  });
});

describe('the form', () => {
  test('is read back as what was said', () => {
    const told = after('7 a', 'Jo: "x" # y', '', '15.2 hh stock', '', '7/8', 'round', 'low', 'rolls', '4 in');
    const [read] = readOrders(formOf(told, { stem: 'f' }), 'f.yaml');
    expect(read).toMatchObject({
      ok: true,
      order: {
        order: '7 a',
        customer: { name: 'Jo: "x" # y' },
        horse: {
          height: 62,
          kind: 'stock',
          barrel: 'round',
          withers: 'low',
          trouble: ['saddle-rolls'],
          elbowRoom: 4,
        },
        saddle: { rigging: { kind: 'named', fraction: 7 / 8 } },
      },
    });
  });

  test('has the name of the file where no number was said, and asks for what is needed', () => {
    const form = formOf(nothingTold, { stem: '2501' });
    expect(form).toMatch(/^order: 2501 #/m);
    const [read] = readOrders(form, 'f.yaml');
    expect(read?.ok === false && read.problems.map(({ path }) => path)).toEqual([
      'horse.height',
      'saddle.rigging',
    ]);
  });

  test('keeps harmless text that was typed but not taken', () => {
    const told = after('1', '', '', '', '73 in', '7/8');
    const [read] = readOrders(formOf(told, { stem: 'f', unread: 'ro: [' }), 'f.yaml');
    expect(read).toMatchObject({ ok: true, order: { order: '1', horse: { heartGirth: 73 } } });
  });
});
