/** First-order spread and chance of clearance against draws through the whole geometry. */
import { describe, expect, it } from 'vitest';
import { simulateClearance } from '../../src/advice/simulate.ts';
import { factsOf } from '../../src/horse/facts.ts';
import { lay } from '../../src/cinch/lay.ts';
import { sideOf } from '../../src/cinch/side.ts';
import type { Order, Style } from '../../src/order/types.ts';
import { defaultModel } from '../../src/numbers/numbers.ts';
import { long } from '../support/cases.ts';
import { demoPhoto } from '../support/photo-scenes.ts';
import { orderOf, plainBuckle as buckle, rigging } from '../support/orders.ts';
import { within, withinRelative } from '../support/within.ts';

interface Case {
  readonly name: string;
  readonly order: Order;
  readonly style: Style;
  readonly strands: number;
}

const position = (name: Parameters<typeof rigging>[0], style: Style, strands: number): Case => ({
  name: `${name} ${style} ${strands}`,
  order: orderOf({ saddle: { rigging: rigging(name) } }),
  style,
  strands,
});

/** Every rigging and style, much data or little, small and large. */
const cases: readonly Case[] = [
  position('full', 'straight', 15),
  position('full', 'straight', 17),
  position('full', 'low-flare', 19),
  position('7/8', 'straight', 19),
  position('7/8', 'high-flare', 17),
  position('3/4', 'straight', 21),
  position('3/4', 'low-flare', 23),
  position('5/8', 'straight', 23),
  position('center-fire', 'straight', 25),
  position('center-fire', 'high-flare', 23),
  { name: 'pony', order: orderOf({ horse: { heartGirth: 52 } }), style: 'straight', strands: 11 },
  { name: 'draft', order: orderOf({ horse: { heartGirth: 88 } }), style: 'straight', strands: 19 },
  {
    name: 'height only',
    order: orderOf({ horse: { heartGirth: undefined, height: 62 } }),
    style: 'straight',
    strands: 15,
  },
  {
    name: 'mule by height',
    order: orderOf({ horse: { heartGirth: undefined, height: 58, kind: 'mule' } }),
    style: 'straight',
    strands: 15,
  },
  { name: 'taped room', order: orderOf({ horse: { elbowRoom: 4.5 } }), style: 'straight', strands: 19 },
  {
    name: 'all measured',
    order: orderOf({
      horse: { elbowRoom: 3.5 },
      saddle: { rigging: { kind: 'measured', setBack: 1 }, ringToRing: 43 },
    }),
    style: 'straight',
    strands: 15,
  },
  {
    name: 'round',
    order: orderOf({ horse: { barrel: 'round' }, saddle: { rigging: rigging('3/4') } }),
    style: 'high-flare',
    strands: 19,
  },
  {
    name: 'measured drop',
    order: orderOf({ saddle: { ringDrop: 16, rigging: rigging('7/8') } }),
    style: 'straight',
    strands: 17,
  },
  {
    name: 'dropped',
    order: orderOf({ saddle: { style: 'dropped', rigging: rigging('5/8') } }),
    style: 'straight',
    strands: 21,
  },
  { name: 'wide on full', order: orderOf(), style: 'straight', strands: 23 },
  {
    name: 'by photo',
    order: orderOf({ photo: demoPhoto, horse: { heartGirth: 74 }, saddle: { rigging: rigging('7/8') } }),
    style: 'straight',
    strands: 19,
  },
  {
    name: 'girth from height, rings taped',
    order: orderOf({
      horse: { heartGirth: undefined, height: 62 },
      saddle: { rigging: rigging('7/8'), ringToRing: 42 },
    }),
    style: 'straight',
    strands: 17,
  },
  {
    name: 'by photo, girth from height',
    order: orderOf({
      photo: demoPhoto,
      horse: { heartGirth: undefined, height: 62 },
      saddle: { rigging: rigging('3/4') },
    }),
    style: 'low-flare',
    strands: 23,
  },
];

const laid = ({ order, style, strands }: Case) => {
  const facts = factsOf(order, defaultModel);
  const candidate = lay(
    { style, strands, buckle, layers: 1, length: Math.max(22, 2 * Math.round(facts.girth.value / 4 - 2)) },
    sideOf(facts),
  );
  if (candidate === undefined) throw new Error('cannot be laid');
  return { facts, candidate };
};

describe('first-order spread', () => {
  const seen = { skin: 0, muscle: 0 };

  it.each(cases)('$name: agrees with thousands of seeded draws, its spread within 10 %', (entry) => {
    const { facts, candidate } = laid(entry);
    const drawn = simulateClearance(candidate, facts, { draws: long ? 20_000 : 4_000, seed: 11 });
    within(candidate.clearance.chance, drawn.chance, 0.02);
    const { sd, skin } = candidate.clearance;
    withinRelative(sd, drawn.sd, 0.1);
    seen[skin ? 'skin' : 'muscle'] += 1;
  });

  it('was of thin skin and of muscle', () => {
    expect(Math.min(seen.skin, seen.muscle)).toBeGreaterThan(3);
  });

  it('is there at all: the draws do spread, and a seed gives the same draws again', () => {
    const { facts, candidate } = laid(cases[0] as Case);
    const once = simulateClearance(candidate, facts, { draws: 500, seed: 5 });
    expect(once.sd).toBeGreaterThan(0.2);
    expect(simulateClearance(candidate, facts, { draws: 500, seed: 5 })).toEqual(once);
    expect(simulateClearance(candidate, facts, { draws: 500, seed: 6 })).not.toEqual(once);
  });
});
