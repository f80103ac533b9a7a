/** The cut list against a craft how-to, a sum evaluated elsewhere and a walk to and fro. */
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { endOf, piecesOf, sectionsOf, type End } from '../../src/work/strands.ts';
import { accentNeeds, placedBars } from '../../src/cinch/accent.ts';
import { accentFeetAnInch } from '../../src/cinch/cord.ts';
import { flatOf, profileOf } from '../../src/cinch/flat.ts';
import { barInches, barsOf } from '../../src/cinch/bars.ts';
import { within } from '../support/within.ts';

describe('body cord of one color', () => {
  // (n s + (n-1) 0.6 + 2 t)/12 + 15 %, evaluated elsewhere (derived): 17 at 32 in 49 ft, 19 55, 27 78, 31 89.
  test.each([
    [17, 49],
    [19, 55],
    [27, 78],
    [31, 89],
  ])('%i strands of 32 in: one piece of %i ft', (strands, feet) => {
    expect(piecesOf(sectionsOf(strands, ['natural']), 32).map((piece) => piece.feet)).toEqual([feet]);
  });
  // t = 2 n pi 0.2 in (derived).
  test('tails grow with the strands', () => {
    within(piecesOf(sectionsOf(17, ['natural']), 32)[0]!.tail, 21.363, 0.001);
    within(piecesOf(sectionsOf(31, ['natural']), 32)[0]!.tail, 38.956, 0.001);
  });
});

describe('accent cord', () => {
  test('4.5 ft for an inch of bar 4 in wide: nine passes of one and a half widths (derived)', () => {
    within(accentFeetAnInch(4), 4.5, 1e-12);
  });
  test('a straight 4 in wide has 4 to 4.5 in of bars, which take the 20 ft of a craft how-to', () => {
    const inches = barInches(barsOf('straight', { half: 13.5, flareStart: undefined }));
    expect(inches).toBeGreaterThanOrEqual(4);
    expect(inches).toBeLessThanOrEqual(4.5);
    within(inches * accentFeetAnInch(4), 20, 1);
  });

  // By hand: 16 in of half less a frame of 2.5 is 13.5. End bars 1.25 in, center bar 1.75: an inch of bar
  // takes 1.125 ft per inch of width.
  const laid = (pinched: number, fullUpTo: number) => ({
    ...({ style: 'straight', length: 32, buckle: { frameHeight: 2.5 }, flareStart: undefined } as const),
    shape: { full: 4, pinched, fullUpTo, pinchedFrom: 13.5, top: 13.5 },
  });
  const feetIn = (accents: string[], pinched = 4, fullUpTo = 13.5) =>
    accentNeeds(placedBars(flatOf(laid(pinched, fullUpTo)), accents)).map(({ color, feet }) => [color, feet]);

  // Rows of 1 in, the first half an inch from the buckle, the last where the flare begins, at most 2.5 in
  // apart: a choice.
  test.each([
    ['high-flare', 3, [0.5, 2]],
    ['high-flare', 5, [0.5, 4]],
    ['high-flare', 9, [0.5, 3, 5.5, 8]],
    ['low-flare', 3, [0.5, 2]],
    ['low-flare', 5, [0.5, 2.25, 4]],
    ['low-flare', 9, [0.5, 3, 5.5, 8]],
    // No room for two: one.
    ['low-flare', 2.25, [1.25]],
    ['low-flare', 0.75, [0]],
  ] as const)('rows of a %s that begins to widen after %f in', (style, flareStart, rows) => {
    const bars = barsOf(style, { half: 13.5, flareStart });
    expect(bars.slice(0, -1).map(({ from }) => from)).toEqual(rows);
    expect(bars.at(-1)).toEqual({ kind: 'centre', from: 13, length: 1 });
    const carries = bars.filter(({ kind }) => kind === 'further').map(({ from }) => from);
    expect(carries).toEqual(style === 'low-flare' && rows.length > 1 ? rows.slice(-1) : []);
  });

  test('each bar by its own length, end bars twice and the center bar once; colors take turns', () => {
    expect(feetIn([])).toEqual([[undefined, 20]]); // 4.25 x 4.5 = 19.1
    expect(feetIn(['rust'])).toEqual([['rust', 20]]);
    expect(flatOf(laid(4, 13.5)).turns).toEqual([]);
    expect(feetIn(['rust', 'black', 'sage'])).toEqual([
      ['rust', 12], // 2.5 x 4.5 = 11.25
      ['black', 8], // 1.75 x 4.5 = 7.875
    ]);
  });

  test('a bar takes cord for the width at its middle', () => {
    // From 2 to 4 in over 4 in: at the middle of the end bar, 2.125 in from the buckle, 3.0625 in wide.
    expect(feetIn(['rust', 'black'], 2, 9.5)).toEqual([
      ['rust', 9], // 2.5 x 1.125 x 3.0625 = 8.6
      ['black', 8],
    ]);
  });

  test('whole feet are not rounded up once more', () => {
    // End bars 3.2 in wide: 2.5 x 1.125 x 3.2 = 9.
    const end = { kind: 'end', from: 1.5, length: 1.25, accent: 'rust' } as const;
    expect(accentNeeds([{ ...end, width: 3.2 }])).toEqual([{ color: 'rust', feet: 9 }]);
  });

  test('on the bench every distance is shorter by the stretch in new cord', () => {
    // On the horse 14 in up from the midline, flat 13.5: the flare is that much nearer the buckle.
    const shape = { full: 6, pinched: 4, fullUpTo: 7, pinchedFrom: 10.5, top: 14 };
    const flat = flatOf({ ...laid(4, 0), style: 'high-flare', shape, flareStart: 3.5 });
    expect([flat.half, flat.flare]).toEqual([13.5, { start: 3.375, whole: 6.75 }]);
    expect(flat.turns).toEqual([3.375, 6.75]);
    expect([0, 3.375, 6.75, 13.5].map(flat.widthFrom)).toEqual([4, 4, 6, 6]);
    expect(profileOf(flat, 3).map(({ at }) => at)).toEqual([0, 2, 4, 6, 8, 10, 12, 13.5]);
    // At the buckle the cords gather to its width.
    expect(
      profileOf(flat, 3)
        .map(({ width }) => width)
        .slice(0, 2),
    ).toEqual([3, 4]);
  });
});

/** Walks every pass of every piece and counts ends, without asking whether a count is odd. */
function tailsAt(sections: ReturnType<typeof sectionsOf>): Record<End, number> {
  const tails = { near: 0, off: 0 };
  for (const { passes, startsAt } of sections) {
    let here = startsAt;
    tails[here]++;
    for (let pass = 0; pass < passes; pass++) here = here === 'near' ? 'off' : 'near';
    tails[here]++;
  }
  return tails;
}

const odd = fc.integer({ min: 2, max: 22 }).map((half) => 2 * half + 1);
const colors = fc.uniqueArray(fc.string({ minLength: 1 }), { maxLength: 6 });

describe('tails', () => {
  test('one continuous cord with an odd number of passes leaves one at each buckle (why counts are odd)', () => {
    fc.assert(
      fc.property(odd, (strands) => {
        expect(tailsAt(sectionsOf(strands, []))).toEqual({ near: 1, off: 1 });
        expect(endOf('near', strands)).toBe('off');
        expect(endOf('near', strands + 1)).toBe('near');
      }),
    );
  });
  test('several colors leave as many at either buckle, mirror each other, and share out all strands', () => {
    fc.assert(
      fc.property(odd, colors, (strands, names) => {
        const sections = sectionsOf(strands, names);
        const { near, off } = tailsAt(sections);
        expect([near, off]).toEqual([sections.length, sections.length]);
        expect(sections.every(({ startsAt, endsAt, passes }) => endOf(startsAt, passes) === endsAt)).toBe(
          true,
        );
        expect(sections.flatMap(({ from, to }) => [from, to])[0]).toBe(1);
        expect(sections.at(-1)!.to).toBe(strands);
        expect(sections.reduce((sum, { passes }) => sum + passes, 0)).toBe(strands);
        expect(sections.map(({ color }) => color)).toEqual(sections.map(({ color }) => color).toReversed());
        expect(sections.every(({ passes }) => passes > 0)).toBe(true);
      }),
    );
  });
});
