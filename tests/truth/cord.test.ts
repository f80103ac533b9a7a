/** Cord and cinch rows of the outside check values. */
import { describe, expect, it } from 'vitest';
import { defaultModel } from '../../src/numbers/numbers.ts';
import { bodyCordFeet } from '../../src/cinch/cord.ts';
import { fullWidth } from '../../src/cinch/outline.ts';
import { within } from '../support/within.ts';

describe('width of a strand', () => {
  // Two 8-ply cords make half an inch [common practice, no source].
  it('two cords add half an inch', () => {
    within(fullWidth(19, defaultModel) - fullWidth(17, defaultModel), 0.5, 1e-12);
  });

  // 17 strands 4 in, 30 strands 7 in: an encyclopedia article on girths (seen second-hand).
  it.each([
    [17, 4],
    [30, 7],
  ])('%i strands published as %f in wide lie within two of our spreads', (strands, published) => {
    const spread = strands * defaultModel['strand-pitch-sd'];
    expect(Math.abs(fullWidth(strands, defaultModel) - published)).toBeLessThanOrEqual(2 * spread);
  });
});

describe('body cord', () => {
  // A craft how-to: 50 ft of 8-ply for 17 strands (seen).
  it('17 strands take about the 50 ft of a craft how-to', () => {
    within(bodyCordFeet(17, 32), 50, 2);
  });
});
