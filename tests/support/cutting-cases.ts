/** Small cutting tasks, plain and random. */
import fc from 'fast-check';
import type { CuttingTask } from '../../src/work/cutting/types.ts';

/** The cutting stock problem: one color, one lot, enough put-ups of one length. */
export function plainTask(
  length: number,
  demands: readonly { length: number; quantity: number }[],
): CuttingTask {
  const pieces = demands.reduce((sum, { quantity }) => sum + quantity, 0);
  return {
    cuts: demands.map(({ length, quantity }, i) => ({
      ...{ id: `cut ${i}`, order: `${i}`, color: 'natural', ply: 8 },
      ...{ length, quantity },
    })),
    onHand: [{ id: 'spool', color: 'natural', ply: 8, lot: 'A', length, count: pieces, opened: false }],
    buyable: [],
    usable: 0,
  };
}

const length = fc.integer({ min: 1, max: 40 });

/** At most two colors, orders of several pieces, lots, remnants, sometimes too little cord. */
export const smallTask: fc.Arbitrary<CuttingTask> = fc.record({
  cuts: fc
    .array(
      fc.record({
        order: fc.constantFrom('1', '2', '3', '4'),
        color: fc.constantFrom('natural', 'rust'),
        ply: fc.constantFrom(8, 8, 8, 2),
        length,
        quantity: fc.integer({ min: 1, max: 2 }),
      }),
      { minLength: 1, maxLength: 6 },
    )
    .map((cuts) => cuts.map((cut, i) => ({ ...cut, id: `cut ${i}` }))),
  onHand: fc
    .array(
      fc.record({
        color: fc.constantFrom('natural', 'rust'),
        ply: fc.constantFrom(8, 8, 8, 2),
        lot: fc.constantFrom('A', 'B'),
        length: fc.integer({ min: 5, max: 60 }),
        count: fc.integer({ min: 0, max: 2 }),
        opened: fc.boolean(),
      }),
      { maxLength: 6 },
    )
    .map((putUps) => putUps.map((putUp, i) => ({ ...putUp, id: `put-up ${i}` }))),
  buyable: fc
    .array(
      fc.record(
        {
          color: fc.constantFrom('natural', 'rust'),
          ply: fc.constantFrom(8, 2),
          length: fc.integer({ min: 20, max: 60 }),
          count: fc.integer({ min: 0, max: 2 }),
        },
        { requiredKeys: ['color', 'ply', 'length'] },
      ),
      { maxLength: 2 },
    )
    .map((all) =>
      all.map(({ count, ...rest }, i) =>
        count === undefined ? { ...rest, id: `new ${i}` } : { ...rest, count, id: `new ${i}` },
      ),
    ),
  usable: fc.integer({ min: 0, max: 12 }),
});
