/** The units of an order file change nothing in the answer. */
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { sizeOrder } from '../../src/index.ts';
import { sizeJson } from '../../src/views/size-data.ts';
import { defaultShop } from '../../src/cinch/default-shop.ts';
import { orderIn } from '../support/door.ts';

const CM = 2.54;
type Write = (inches: number) => string;

const writers: Readonly<Record<string, Write>> = {
  in: (x) => `${x} in`,
  cm: (x) => `${Number((x * CM).toPrecision(15))} cm`,
  mm: (x) => `${Number((x * CM * 10).toPrecision(15))} mm`,
  quarters: (x) => (x % 1 === 0 ? `${x} in` : `${Math.floor(x)} ${Math.round((x % 1) * 4)}/4 in`),
  feet: (x) => `${Math.floor(x / 12)} ft ${x % 12} in`,
};

function specsOf(write: Write, [girth, room, rings]: readonly [number, number, number]): unknown {
  const text = `order: 1
horse: { heart-girth: ${write(girth)}, elbow-room: ${write(room)} }
saddle: { rigging: { set-back: ${write(1.5)} }, ring-to-ring: ${write(rings)} }
use: trail
`;
  const result = { ok: true, file: 'units.yaml', advice: sizeOrder(orderIn(text), defaultShop) } as const;
  return JSON.parse(sizeJson([result], { top: 3, all: true, why: true })) as unknown;
}

describe('units', () => {
  const quarter = (min: number, max: number) => fc.integer({ min: min * 4, max: max * 4 }).map((x) => x / 4);

  it.each(Object.keys(writers).filter((name) => name !== 'in'))(
    'inches and %s give the same answer',
    (name) => {
      fc.assert(
        fc.property(fc.tuple(quarter(60, 90), quarter(3, 6), quarter(38, 50)), (horse) => {
          expect(specsOf(writers[name] as Write, horse)).toEqual(specsOf(writers['in'] as Write, horse));
        }),
        { seed: 21, numRuns: 25 },
      );
    },
  );
});
