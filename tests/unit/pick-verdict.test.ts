/** Bad marks that a shop owner got past the landmarks page. */
import { expect, test } from 'vitest';
import type { Pixel } from '../../src/order/photo-types.ts';
import { begin } from '../../src/photo/pick/state.ts';
import { verdictOf } from '../../src/photo/pick/verdict.ts';
import { height, places, width } from '../browser/sample.ts';

const photo = { file: 'juniper-side.jpg', width, height };
const { fields } = begin.now;

test.each<[string, { marks?: Record<string, Pixel>; typed?: object; says: RegExp; ready?: true }]>([
  ['good marks', { says: /^Complete: copy/, ready: true }],
  ['a stick of 20 pixels', { marks: { to: [420, 700] }, says: /^Not ready: The measure is only 20 pix/ }],
  ['a depth that no horse has', { typed: { length: '144' }, says: /^Not ready: .*should be (14|1) to/ }],
  [
    'spine and underline swapped',
    { marks: { spine: places.underline, underline: places.spine }, says: /^Not ready: The top line/ },
  ],
  [
    'the plumb line upside down',
    {
      marks: { 'plumb-top': places['plumb-bottom'], 'plumb-bottom': places['plumb-top'] },
      says: /^Not ready: The plumb line: its bottom/,
    },
  ],
  [
    'fork and cantle swapped',
    { marks: { fork: places.cantle, cantle: places.fork }, says: /^Not ready: By elbow and girth groove/ },
  ],
  ['a distance no camera is at', { typed: { distance: 'far' }, says: /^Not ready: Camera distance/ }],
  ['no length', { typed: { length: '' }, says: /^Not ready: still needed: size of the measure/ }],
  [
    'a ring a foot too far back',
    {
      marks: { ring: [870, 560] },
      says: /^Complete, but check: A ring .* this one is 1\d\.\d in behind/,
      ready: true,
    },
  ],
])('%s', (_, { marks, typed, says, ready }) => {
  const points = { ...places, ...marks };
  const now = { ...begin.now, points, fields: { ...fields, length: '36', distance: '12', ...typed } };
  const verdict = verdictOf(now, photo);
  expect(verdict.text).toMatch(says);
  expect(verdict.ready).toBe(ready === true);
});
