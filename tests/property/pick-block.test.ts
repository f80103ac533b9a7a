/** What the landmarks page lets pass, the order's door takes. */
import fc from 'fast-check';
import { expect, test } from 'vitest';
import { factsOf } from '../../src/horse/facts.ts';
import { photoRemarks } from '../../src/horse/photo-remarks.ts';
import type { Pixel } from '../../src/order/photo-types.ts';
import { readOrders } from '../../src/order/read-orders.ts';
import { blockOf } from '../../src/photo/pick/block.ts';
import { badFields } from '../../src/photo/pick/fields.ts';
import { isPoint, stepsFor } from '../../src/photo/pick/landmarks.ts';
import { readingsOf } from '../../src/photo/pick/readings.ts';
import { verdictOf } from '../../src/photo/pick/verdict.ts';
import { act, begin, missing, type Picked } from '../../src/photo/pick/state.ts';
import { defaultModel as model } from '../../src/numbers/numbers.ts';
import { cases } from '../support/cases.ts';
import { demo } from '../support/camera.ts';
import { orderProblems } from '../support/door.ts';

const photo = { file: 'juniper-side.jpg', width: 1600, height: 1200 };

const { clicks } = demo;
const sheet: Record<string, Pixel> = {
  'corner-1': [700, 560],
  'corner-2': [790, 562],
  'corner-3': [788, 678],
  'corner-4': [699, 676],
};
const good: Record<string, Pixel> = {
  ...sheet,
  ...clicks,
  'plumb-top': clicks.top,
  'plumb-bottom': clicks.bottom,
};

/** Good marks, each moved a little. */
const picked = fc
  .record({
    kind: fc.constantFrom('stick' as const, 'sheet' as const),
    by: fc.constantFrom(3, 40, 400),
    moves: fc.array(
      fc.tuple(fc.double({ min: -1, max: 1, noNaN: true }), fc.double({ min: -1, max: 1, noNaN: true })),
      {
        minLength: 20,
        maxLength: 20,
      },
    ),
    skip: fc.boolean(),
    length: fc.constantFrom(
      '36',
      '36.5',
      '18 1/2',
      '3',
      '0',
      '-4',
      '150',
      'x',
      '',
      '1,5',
      '36 in',
      '½',
      '36,5',
      '1.2',
    ),
    lengthUnit: fc.constantFrom('in', 'in', 'cm', 'mm', 'ft', 'm'),
    width: fc.constantFrom('8.5', '8 1/2', '11', '2', '200'),
    distance: fc.constantFrom('', '12', '3', '80', '1e3'),
  })
  .map(({ kind, by, moves, skip, ...typed }): Picked => {
    const points: Record<string, Pixel> = {};
    stepsFor(kind).forEach(({ id, optional }, i) => {
      if (!isPoint(id) || (skip && optional === true)) return;
      const [x, y] = good[id]!;
      const [dx, dy] = moves[i] ?? [0, 0];
      points[id] = [
        Math.min(photo.width - 1, Math.max(0, Math.round(x + by * dx))),
        Math.min(photo.height - 1, Math.max(0, Math.round(y + by * dy))),
      ];
    });
    return { ...begin.now, kind, points, fields: { ...begin.now.fields, height: '11', ...typed } };
  });

const orderWith = (block: string): string =>
  `order: 1\nhorse: { height: 15.2 hh }\nsaddle: { rigging: 7/8 }\n${block}`;

test('a block that is called complete is read by the door, and one that is not ready says why', () => {
  let passed = 0;
  fc.assert(
    fc.property(picked, (now) => {
      const { ready, text: said } = verdictOf(now, photo);
      expect(said).toMatch(ready ? /^Complete(:|, but check: .)/ : /^Not ready: ./);
      if (!ready) return;
      passed += 1;
      const text = orderWith(blockOf(now, photo));
      // Only the door knows the height.
      const faults = orderProblems(text);
      expect(
        faults.filter(({ expected }) => !expected.includes('for a height of')),
        text,
      ).toEqual([]);
    }),
    { numRuns: cases(400, 3000), seed: 11 },
  );
  expect(passed).toBeGreaterThan(cases(16, 100));
});

test('what the door takes is ready on the page', () => {
  let taken = 0;
  fc.assert(
    fc.property(picked, (now) => {
      if (missing(now).length > 0 || badFields(now).length > 0) return;
      const reads = readOrders(orderWith(blockOf(now, photo)), 'a.yaml');
      if (reads.some((read) => !read.ok)) return;
      taken += 1;
      expect(readingsOf(now, photo).doubts.filter(({ refused }) => refused)).toEqual([]);
      expect(verdictOf(now, photo).ready).toBe(true);
    }),
    { numRuns: cases(400, 3000), seed: 12 },
  );
  expect(taken).toBeGreaterThan(cases(16, 100));
});

test('a ring or a room that an order remarks on, whatever its rigging, is doubted on the page as well', () => {
  const points = (ring: Pixel, elbow: Pixel): Picked['points'] => ({ ...good, ring, elbow });
  const fields = { ...begin.now.fields, length: '36', distance: '12' };
  const remarked = (now: Picked): boolean =>
    ['full', '7/8', '3/4', '5/8', 'center-fire'].every((rigging) => {
      // The page assumes this girth.
      const text = `order: 1\nhorse: { heart-girth: 72 in }\nsaddle: { rigging: ${rigging}, bar-span: ${String(model['bar-span'])} in }\n${blockOf(now, photo)}`;
      const [read] = readOrders(text, 'a.yaml');
      if (read?.ok !== true) throw new Error(text);
      const told = photoRemarks(factsOf(read.order, model)).map((phrase) => JSON.stringify(phrase));
      return told.some((remark) => /elbow to ring|elbow room/.test(remark));
    });
  let doubted = 0;
  for (let x = 640; x <= 830; x += cases(20, 10))
    for (const elbow of [
      [696, 673],
      [676, 673],
      [724, 673],
    ] as const) {
      if (x < elbow[0] - 20) continue;
      const now: Picked = { ...begin.now, points: points([x, 549], elbow), fields };
      const { doubts } = readingsOf(now, photo);
      if (doubts.some(({ refused }) => refused)) continue;
      const isDoubted = doubts.some(({ text }) => / is usually /.test(text));
      expect(isDoubted, `${String(x)} ${String(elbow[0])}`).toBe(remarked(now));
      if (isDoubted) doubted += 1;
    }
  expect(doubted).toBeGreaterThan(2);
});

test('undo goes back through every act to the start, whatever was done', () => {
  const deeds = fc.array(
    fc.oneof(
      fc.record({
        do: fc.constant('put' as const),
        id: fc.constantFrom('ring' as const, 'elbow' as const),
        at: fc.tuple(fc.nat(99), fc.nat(99)),
      }),
      fc.record({ do: fc.constantFrom('next' as const, 'back' as const, 'skip' as const) }),
      fc.record({
        do: fc.constant('kind' as const),
        kind: fc.constantFrom('stick' as const, 'sheet' as const),
      }),
      fc.record({ do: fc.constant('remove' as const), id: fc.constant('ring' as const) }),
    ),
    { maxLength: 40 },
  );
  fc.assert(
    fc.property(deeds, (all) => {
      let session = all.reduce(act, begin);
      for (let i = 0; i <= all.length; i++) session = act(session, { do: 'undo' });
      expect(session.now).toEqual(begin.now);
    }),
  );
});
