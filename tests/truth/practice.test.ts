/** What practice ties, against what the whole engine ranks: nothing here was made by the program. */
import { describe, expect, it } from 'vitest';
import type { RankedSpec } from '../../src/advice/advice.ts';
import { checkCinch } from '../../src/advice/check.ts';
import { factsOf } from '../../src/facts/facts.ts';
import { Ground } from '../../src/fit/ground.ts';
import { lay } from '../../src/fit/lay.ts';
import { sizeOrder } from '../../src/index.ts';
import type { Order, Style } from '../../src/order/types.ts';
import { defaultModel } from '../../src/sources/numbers.ts';
import { defaultShop } from '../../src/stock/default-shop.ts';
import { orderOf, rigging } from '../support/orders.ts';
import { within } from '../support/within.ts';

type Position = Parameters<typeof rigging>[0];
const positions: readonly Position[] = ['full', '7/8', '3/4', '5/8', 'center-fire'];

const at = (position: Position, horse: Partial<Order['horse']> = {}) =>
  sizeOrder(orderOf({ horse, saddle: { rigging: rigging(position) } }), defaultShop);

const firstStraight = (specs: readonly RankedSpec[]): RankedSpec => {
  const found = specs.find(({ candidate }) => candidate.style === 'straight');
  if (found === undefined) throw new Error('no straight passes');
  return found;
};

const verdict = (position: Position, style: Style, strands: number): 'refuse' | 'poor' | 'better' => {
  const { judged } = checkCinch({ style, strands }, 'wants', at(position));
  if (judged === undefined) throw new Error('cannot be laid');
  if (judged.countOf('refuse') > 0) return 'refuse';
  return judged.countOf('poor') > 0 ? 'poor' : 'better';
};

const clearance = (position: Position, style: Style, strands: number): number =>
  checkCinch({ style, strands }, 'wants', at(position)).judged?.candidate.clearance.inches ?? Number.NaN;

// Strand counts that practice ties, average horse of 72 in of girth [common practice, no source].
const straightByPractice: Readonly<Record<Position, readonly [number, number]>> = {
  full: [15, 17],
  '7/8': [17, 19],
  '3/4': [17, 21], // 17 to 19, 21 with room
  '5/8': [21, 25],
  'center-fire': [21, 25],
};

describe('straight strand counts that practice ties, average horse [common practice, no source]', () => {
  it.each(positions)('%s: the first-ranked straight is one of them', (position) => {
    const { strands } = firstStraight(at(position).specs).candidate;
    const [least, most] = straightByPractice[position];
    expect(strands).toBeGreaterThanOrEqual(least);
    expect(strands).toBeLessThanOrEqual(most);
  });

  // Design figure of the default spreads: 15, 19, 21, 23, 23.
  it.each([
    ['full', 15],
    ['7/8', 19],
    ['3/4', 21],
    ['5/8', 23],
    ['center-fire', 23],
  ] as const)('%s: with the default spreads it is %i', (position, strands) => {
    expect(firstStraight(at(position).specs).candidate.strands).toBe(strands);
  });

  it.each(positions)(
    '%s: the narrowest that practice ties is not refused, nor poor for its width',
    (position) => {
      const judged = checkCinch(
        { style: 'straight', strands: straightByPractice[position][0] },
        'wants',
        at(position),
      ).judged;
      expect(judged?.countOf('refuse')).toBe(0);
      expect(['good', 'acceptable']).toContain(judged?.judgementOf('elbow-clearance'));
    },
  );
});

describe('ponies are tied 11 to 13 [common practice, no source]', () => {
  // About 10 to 12 hands; practice names no rigging.
  const girths = [48, 50, 55, 59];
  it.each(positions)('%s: the first-ranked straight is one of them', (position) => {
    for (const heartGirth of girths) {
      const { strands } = firstStraight(at(position, { heartGirth, kind: 'pony' }).specs).candidate;
      expect(strands).toBeGreaterThanOrEqual(11);
      expect(strands).toBeLessThanOrEqual(13);
    }
  });

  it('an 11 hh pony that nobody taped, too', () => {
    for (const position of positions) {
      const { strands } = firstStraight(
        at(position, { height: 44, heartGirth: undefined, kind: 'pony' }).specs,
      ).candidate;
      expect([11, 13]).toContain(strands);
    }
  });

  it('further back the room would take more: they pass, and stand behind', () => {
    const { specs } = at('center-fire', { heartGirth: 50, kind: 'pony' });
    const wider = specs.find(({ candidate }) => candidate.style === 'straight' && candidate.strands === 15);
    expect(wider?.judgementOf('pony-strands')).toBe('acceptable');
  });
});

describe('wide straights crowd the elbow [common practice, no source]', () => {
  it.each(['full', '7/8'] as const)('25 strands on %s are refused or poor', (position) => {
    expect(verdict(position, 'straight', 25)).not.toBe('better');
  });
});

describe('ropers [common practice, no source]', () => {
  it.each([15, 17, 19, 21])(
    'a high flare of %i strands on full is refused or poor, the low flare clears better',
    (strands) => {
      expect(verdict('full', 'high-flare', strands)).not.toBe('better');
      expect(clearance('full', 'low-flare', strands)).toBeGreaterThan(
        clearance('full', 'high-flare', strands),
      );
    },
  );

  it.each([27, 29, 31])('so does one of %i, as double layers are tied', (strands) => {
    expect(verdict('full', 'high-flare', strands)).toBe('refuse');
    expect(clearance('full', 'low-flare', strands)).toBeGreaterThan(clearance('full', 'high-flare', strands));
  });

  it('a high flare is no trouble at 7/8 to 3/4', () => {
    expect(verdict('7/8', 'high-flare', 17)).toBe('better');
    expect(verdict('3/4', 'high-flare', 19)).toBe('better');
  });

  it.each([17, 19, 21])('at 3/4 all three styles of %i strands pass', (strands) => {
    for (const style of ['straight', 'high-flare', 'low-flare'] as const) {
      expect(verdict('3/4', style, strands)).toBe('better');
    }
  });

  it.each([{ barrel: 'round' }, { barrel: 'slab-sided' }] as const)(
    'a saddle that rolls on a $barrel barrel gets a high flare first',
    ({ barrel }) => {
      const first = at('3/4', { barrel, trouble: ['saddle-rolls'] }).specs[0];
      expect(first?.candidate.style).toBe('high-flare');
    },
  );
});

describe('buckles [common practice, no source]', () => {
  it('the further forward the ring, the smaller the buckle', () => {
    const frames = positions.map((position) => firstStraight(at(position).specs).candidate.buckle.frameWidth);
    expect(frames).toEqual([...frames].sort((a, b) => a - b));
    expect(frames.at(-1)).toBeGreaterThan(frames[0] ?? Infinity);
  });

  it('a low buckle meets the elbow: a very short cinch is refused for it', () => {
    const advice = at('7/8');
    const { judged } = checkCinch({ style: 'straight', strands: 17, length: 20 }, 'wants', advice);
    expect(judged?.judgementOf('buckle-height')).toBe('refuse');
  });
});

describe('clearances of a prototype made apart from this program (design figures, two decimals)', () => {
  it.each([
    ['full', 17, 1.24],
    ['7/8', 19, 1.47],
    ['3/4', 21, 1.52],
    ['5/8', 23, 1.46],
    ['center-fire', 25, 1.4],
  ] as const)('%s, %i strands straight: %f in', (position, strands, expected) => {
    const facts = factsOf(orderOf({ saddle: { rigging: rigging(position) } }), defaultModel);
    const buckle = defaultShop.buckles[0];
    if (buckle === undefined) throw new Error('the shop has no buckle');
    const laid = lay({ style: 'straight', strands, buckle, layers: 1, length: 32 }, new Ground(facts));
    within(laid?.clearance.inches ?? Number.NaN, expected, 0.015);
  });
});

describe('measuring can earn a wider cinch', () => {
  it('a taped room of 5 in ties more strands than an assumed 4 in', () => {
    const taped = firstStraight(at('full', { elbowRoom: 5 }).specs).candidate.strands;
    expect(taped).toBeGreaterThan(firstStraight(at('full').specs).candidate.strands);
  });

  it('a tape and a set-back that read just what was assumed earn two strands on full', () => {
    const rig = { kind: 'measured', setBack: 0 } as const;
    const order = orderOf({ horse: { elbowRoom: 4 }, saddle: { rigging: rig, ringToRing: 44 } });
    expect(firstStraight(sizeOrder(order, defaultShop).specs).candidate.strands).toBe(17);
  });
});
