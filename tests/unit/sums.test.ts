/** Sums of parts on made-up candidates: each part is read as seldom as it can differ, and nothing is left of the order before. */
import { describe, expect, it } from 'vitest';
import { alikeOn } from '../../src/advice/of-shop.ts';
import type { Kinds, Part, Rows } from '../../src/advice/parts.ts';
import { Sums } from '../../src/advice/sums.ts';
import { BODY, BUCKLE, CLEARANCE, LENGTH, STRANDS, STYLE } from '../../src/fit/axes.ts';
import type { LaidCandidate } from '../../src/fit/lay.ts';
import type { TiedList } from '../../src/stock/tied.ts';

type Chosen = Pick<LaidCandidate, 'styleNo' | 'strandsNo' | 'buckleNo' | 'lengthNo'>;

interface Counts {
  readonly strands: number;
  readonly buckles: number;
  readonly lengths: number;
}

/** Every strand count on every buckle in three styles; bodies are numbered by style and strands, clearances by style and hang. */
function rowsOf({ strands, buckles, lengths }: Counts): Rows & { readonly makes: readonly Chosen[] } {
  const makes: Chosen[] = [];
  for (let strandsNo = 0; strandsNo < strands; strandsNo++)
    for (let buckleNo = 0; buckleNo < buckles; buckleNo++)
      for (let styleNo = 0; styleNo < 3; styleNo++) makes.push({ styleNo, strandsNo, buckleNo, lengthNo: 0 });
  const hangs: Chosen[] = [];
  for (let buckleNo = 0; buckleNo < buckles; buckleNo++)
    for (let lengthNo = 0; lengthNo < lengths; lengthNo++)
      hangs.push({ styleNo: 0, strandsNo: 0, buckleNo, lengthNo });
  const laid = (make: number, hang = makes[make]!.buckleNo * lengths): LaidCandidate => {
    const { styleNo, strandsNo } = makes[make]!;
    const { buckleNo, lengthNo } = hangs[hang]!;
    const bodyNo = styleNo + 3 * strandsNo;
    const clearanceNo = styleNo + 3 * (buckleNo + buckles * lengthNo);
    return { styleNo, strandsNo, buckleNo, lengthNo, bodyNo, clearanceNo } as LaidCandidate;
  };
  const list = { makes, strands: { length: strands } } as unknown as TiedList;
  const known = { alike: new Map<number, Kinds>() };
  return { makes, hangs, lengths, laid, alike: (axes) => alikeOn(axes, known, list) };
}

/** A part whose values are told apart by all its axes, and how often it was read. */
function partOf(axes: number, scale: number): Part & { readonly reads: () => number; of: Part['read'] } {
  let reads = 0;
  const of = (c: LaidCandidate): number => {
    const no = (axis: number, number: number) => ((axes & axis) === 0 ? 0 : number);
    return (
      scale *
      (no(STYLE, c.styleNo) +
        3 * no(STRANDS, c.strandsNo) +
        1e3 * no(BUCKLE, c.buckleNo) +
        1e5 * no(LENGTH, c.lengthNo) +
        no(BODY, 1 + c.bodyNo) +
        no(CLEARANCE, 1 + c.clearanceNo))
    );
  };
  const read = (c: LaidCandidate): number => {
    reads += 1;
    return of(c);
  };
  return { axes, read, of, reads: () => reads };
}

const axes = [
  0,
  STYLE,
  STRANDS,
  STYLE | STRANDS,
  STRANDS | BUCKLE,
  STYLE | STRANDS | BUCKLE,
  BUCKLE,
  LENGTH,
  BUCKLE | LENGTH,
  STRANDS | LENGTH,
  BODY,
  CLEARANCE,
  // No two of an order are kept, but both are to count.
  BODY,
  CLEARANCE,
];

/** Adds parts for all axes, and compares every candidate with plain adding; gives how often each was read. */
function check(sums: Sums, rows: ReturnType<typeof rowsOf>, start?: Float64Array): number[] {
  const parts = axes.map((each, i) => partOf(each, i + 1));
  sums.restart(rows, start);
  for (const part of parts) sums.add(part, rows);
  const { makes, lengths, laid } = rows;
  let wrong = 0;
  for (let make = 0; make < makes.length; make++) {
    const from = makes[make]!.buckleNo * lengths;
    for (let hang = from; hang < from + lengths; hang++) {
      const candidate = laid(make, hang);
      const plain = parts.reduce((sum, part) => sum + part.of(candidate), start?.[make] ?? 0);
      // Hundreds of thousands are compared, and an expectation costs more than the sum.
      if (sums.of(make, hang, candidate) !== plain) wrong += 1;
    }
  }
  expect(wrong).toBe(0);
  return parts.map((part) => part.reads());
}

describe('sums', () => {
  const few = { strands: 4, buckles: 3, lengths: 2 };

  it('are those of reading every part, each as seldom as it can differ', () => {
    const candidates = 3 * 4 * 3 * 2;
    const once = [1, 3, 4, 12, 12, 36, 3, 2, 6];
    expect(check(new Sums(), rowsOf(few))).toEqual([
      ...once,
      candidates,
      12, // bodies
      18, // clearances
      candidates,
      candidates,
    ]);
  });

  it('begin with what makes begin with', () => {
    check(
      new Sums(),
      rowsOf(few),
      Float64Array.from({ length: 36 }, (_, i) => 7 * i),
    );
  });

  it('grow with more makes, hangs, bodies and clearances than were kept, and forget them for the next order', () => {
    const sums = new Sums();
    check(sums, rowsOf({ strands: 200, buckles: 4, lengths: 80 }));
    check(sums, rowsOf({ strands: 3, buckles: 100, lengths: 3 }));
    check(sums, rowsOf(few), new Float64Array(36).fill(5));
    check(sums, rowsOf(few));
    const rows = rowsOf(few);
    sums.restart(rows);
    expect(sums.of(0, 0, rows.laid(0, 0))).toBe(0);
  });
});
