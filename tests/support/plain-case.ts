/** Orders and cinches in the second geometry's terms. */
import type { Candidate } from '../../src/cinch/candidate.ts';
import type { Order } from '../../src/order/types.ts';
import type { PlainCinch, PlainHorse } from './second-geometry.ts';

/** Inches, for bars nobody measured [common practice, no source]. */
const USUAL_BARS = 12;

/** An untaped horse needs `girth`. */
export function plainHorse({ horse, saddle }: Order, girth = horse.heartGirth): PlainHorse {
  if (girth === undefined) throw new Error('which girth?');
  const { rigging, barSpan = USUAL_BARS, ringToRing, ringDrop, style } = saddle;
  return {
    girth,
    elbowRoom: horse.elbowRoom,
    setBack: rigging.kind === 'measured' ? rigging.setBack : (1 - rigging.fraction) * barSpan,
    ringToRing,
    ringDrop,
    style,
    round: horse.barrel === 'round',
    barrelTold: horse.barrel !== undefined,
    girthTaped: horse.heartGirth !== undefined,
    setBackMeasured: rigging.kind === 'measured',
  };
}

/** How it was laid matters only for a roper's flare. */
export function plainCinch({
  style,
  strands,
  layers,
  buckle,
  length,
  flareStart = 0,
}: Candidate): PlainCinch {
  const { barWidth, frameWidth, frameHeight } = buckle;
  return {
    style: style === 'straight' ? 'straight' : 'roper',
    strands,
    layers: layers === 2 ? 2 : 1,
    barWidth,
    frameWidth,
    frameHeight,
    length,
    flareStart,
  };
}
