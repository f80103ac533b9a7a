/** Random saddles and cinches that a horse could have. */
import type { Random } from '../../../src/math/random.ts';
import type { RiggingStyle, Style } from '../../../src/order/types.ts';
import { around, byShare, happens, pick, type Spread } from '../draw.ts';
import type { DrawnHorse } from './horse.ts';

/** The true saddle, inches. */
export interface DrawnSaddle {
  readonly position: string;
  readonly setBack: number;
  readonly style: RiggingStyle;
  readonly barSpan: number;
  readonly ringDrop: number;
  readonly ringToRing: number;
  readonly double: boolean;
}

/** Current or asked for. */
export interface DrawnCinch {
  readonly style: Style;
  readonly strands: number;
  readonly length: number;
  readonly buckle: string;
}

const positions = { full: 18, '7/8': 34, '3/4': 26, '5/8': 9, 'center-fire': 7, '13/16': 2, '11/16': 1 };
const fractions: Readonly<Record<keyof typeof positions, number>> = {
  full: 1,
  '7/8': 7 / 8,
  '3/4': 3 / 4,
  '5/8': 5 / 8,
  'center-fire': 1 / 2,
  '13/16': 13 / 16,
  '11/16': 11 / 16,
};

/** Average spine to ring along the skin, as in the model. */
const drops: Readonly<Record<RiggingStyle, number>> = {
  ring: 14,
  'flat-plate': 14.5,
  'in-skirt': 16,
  dropped: 17,
};

export function drawSaddle(random: Random, { girth, use }: DrawnHorse): DrawnSaddle {
  const k = girth / 72;
  const position = byShare(random, positions);
  const style = byShare(random, { ring: 3, 'flat-plate': 5, 'in-skirt': 3, dropped: 1 });
  const barSpan = around(random, { mean: 12.6 * k, sd: 0.7 });
  const ringDrop = around(random, { mean: drops[style] * k, sd: 0.9 });
  return {
    position,
    setBack: (1 - fractions[position]) * barSpan + around(random, { mean: 0, sd: 0.4 }),
    style,
    barSpan,
    ringDrop,
    ringToRing: girth - 2 * ringDrop + around(random, { mean: 0, sd: 0.5 }),
    double: happens(random, use === 'roping' ? 0.9 : 0.35),
  };
}

/** By the strands they take, small ones first. */
const buckles: readonly (readonly [most: number, ids: readonly string[]])[] = [
  [13, ['pony 2 1/2', 'plain 3']],
  [17, ['plain 3', 'plain 3 1/2']],
  [19, ['plain 3', 'plain 3 1/2', 'plain 4']],
  [23, ['plain 3 1/2', 'plain 4', 'old square 4']],
  [27, ['plain 4', 'wide 5']],
  [31, ['wide 5', 'special 6']],
];

export function drawCinch(random: Random, horse: DrawnHorse, saddle: DrawnSaddle): DrawnCinch {
  const spread: Spread = { mean: (17 + 0.9 * saddle.setBack) * (horse.girth / 72), sd: 2.6 };
  const odd = 2 * Math.round((around(random, spread) - 1) / 2) + 1;
  const strands = Math.max(9, Math.min(31, odd));
  const [, ids] = buckles.find(([most]) => strands <= most) ?? buckles.at(-1)!;
  const length = Math.round(saddle.ringToRing - 12 + around(random, { mean: 0, sd: 1.2 }));
  return {
    style: byShare(random, { straight: 7, 'high-flare': 2, 'low-flare': 1 }),
    strands,
    length: Math.max(18, Math.min(42, length)),
    buckle: pick(random, ids),
  };
}
