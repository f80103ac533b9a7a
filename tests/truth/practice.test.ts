/** What practice ties, against the whole engine's ranking [common practice, no source]. */
import { describe, expect, it } from 'vitest';
import type { Advice, RankedSpec } from '../../src/advice/advice.ts';
import { checkCinch } from '../../src/advice/check.ts';
import { sizeOrder } from '../../src/index.ts';
import type { Candidate } from '../../src/cinch/candidate.ts';
import type { Order, RiggingStyle, Style } from '../../src/order/types.ts';
import { saddleKeys } from '../../src/order/keys/saddle.ts';
import { defaultShop } from '../../src/cinch/default-shop.ts';
import { long } from '../support/cases.ts';
import { orderOf, rigging } from '../support/orders.ts';

type Position = Parameters<typeof rigging>[0];

interface Row {
  readonly usual: readonly [number, number];
  /** Least when pinched or short of room, most with taped room. */
  readonly pinched: number;
  readonly taped: number;
}

// Straights on grown horses.
const table: Readonly<Record<Position, Row>> = {
  full: { usual: [15, 17], pinched: 13, taped: 17 },
  '7/8': { usual: [17, 19], pinched: 15, taped: 21 },
  '3/4': { usual: [17, 21], pinched: 15, taped: 23 },
  '5/8': { usual: [21, 23], pinched: 17, taped: 25 },
  'center-fire': { usual: [21, 25], pinched: 19, taped: 25 },
};
const positions = Object.keys(table) as readonly Position[];
const styles: readonly (RiggingStyle | undefined)[] = [undefined, ...saddleKeys.style.words];

const at = (
  position: Position,
  horse: Partial<Order['horse']> = {},
  saddle: Partial<Order['saddle']> = {},
): Advice => sizeOrder(orderOf({ horse, saddle: { rigging: rigging(position), ...saddle } }), defaultShop);

/** A height alone. */
const untaped = (height: number, more: Partial<Order['horse']> = {}) => ({
  heartGirth: undefined,
  height,
  ...more,
});

/** 14.1 to 16.3 hands, off the whole inches. */
const heights = long ? [57, 58.4, 59.9, 61.3, 62.7, 64.2, 65.6, 67] : [57, 59.9, 62.7, 67];

const nameOf = ({ style, strands }: Pick<Candidate, 'style' | 'strands'>): string =>
  `${style} ${String(strands)}`;

/** Names each first spec that is no straight within the bounds. */
function strays(
  cases: readonly (readonly [string, Advice])[],
  [least, most]: readonly [number, number],
): string[] {
  return cases.flatMap(([name, { first, specs }]) => {
    const straight = first?.candidate.style === 'straight' ? first.candidate.strands : Number.NaN;
    const wide = specs.some(({ candidate }) => candidate.style === 'straight' && candidate.strands > 25);
    if (straight >= least && straight <= most && !wide) return [];
    return [`${name}: ${first === undefined ? 'nothing' : nameOf(first.candidate)}`];
  });
}

describe.each(positions)('straights on %s', (position) => {
  const { usual, pinched, taped } = table[position];

  it('are first, with usual strands, on any untaped grown horse and rigging style', () => {
    const cases = styles.flatMap((style) =>
      heights.flatMap((height) =>
        [undefined, 'stock', 'light' as const].map((kind) => {
          const horse = untaped(height, { kind: kind as Order['horse']['kind'] });
          return [
            `${String(style)} ${String(height)} ${String(kind)}`,
            at(position, horse, { style }),
          ] as const;
        }),
      ),
    );
    expect(strays(cases, usual)).toEqual([]);
  });

  it('are no wider on round ribs, and no narrower than on a pinched horse', () => {
    const cases = styles.flatMap((style) =>
      heights
        .filter((_, i) => i % 2 === 1)
        .map((height) => {
          const advice = at(position, untaped(height, { barrel: 'round' }), { style });
          return [`${String(style)} ${String(height)}`, advice] as const;
        }),
    );
    expect(strays(cases, [pinched, usual[1]])).toEqual([]);
  });

  it('reach the most that is tied with taped room, and never more', () => {
    for (const style of styles) {
      const straight = (elbowRoom: number) => at(position, { elbowRoom }, { style }).first?.candidate;
      expect(straight(5)).toMatchObject({ style: 'straight', strands: taped });
      const near = straight(4.5);
      expect(near?.style).toBe('straight');
      expect(near?.strands).toBeGreaterThanOrEqual(usual[0]);
      expect(near?.strands).toBeLessThanOrEqual(taped);
      for (const elbowRoom of [5.1, 5.3, 5.6]) expect(straight(elbowRoom)?.strands).toBe(taped);
    }
  });

  it('the narrowest usual one is neither refused nor poor for its width', () => {
    const { judged } = checkCinch({ style: 'straight', strands: usual[0] }, 'wants', at(position));
    expect(['good', 'acceptable']).toContain(judged?.judgementOf('elbow-clearance'));
    expect(judged?.findings.filter(({ judgement }) => judgement === 'refuse')).toEqual([]);
  });

  it('ponies are tied 11 to 13, on every rigging', () => {
    // 11 to 13.2 hands.
    const ponies = [44, 45.7, 48, 50.3, 52.1, 54];
    const untapedPonies = styles.flatMap((style) =>
      ponies.map((height) => {
        const advice = at(position, untaped(height, { kind: 'pony' }), { style });
        return [`${String(style)} ${String(height)}`, advice] as const;
      }),
    );
    expect(strays(untapedPonies, [11, 13])).toEqual([]);
  });
});

describe('room that was taped, down to 2 in', () => {
  const notPoor = (spec: RankedSpec): boolean =>
    spec.judgementOf('elbow-clearance') !== 'poor' && spec.judgementOf('flare-position') !== 'poor';

  it('never puts 11 strands first on a grown horse if 13 or a low flare passes and is not poor', () => {
    let elevens = 0;
    for (const position of positions) {
      for (let elbowRoom = 2; elbowRoom < 4; elbowRoom += long ? 0.05 : 0.1) {
        for (const style of ['ring', 'in-skirt'] as const) {
          const { first, specs } = at(position, { elbowRoom }, { style });
          if (first?.candidate.strands !== 11) continue;
          elevens += 1;
          const better = specs.filter(
            (spec) =>
              notPoor(spec) && (spec.candidate.strands === 13 || spec.candidate.style === 'low-flare'),
          );
          expect(
            better.map(({ candidate }) => nameOf(candidate)),
            `${position} ${String(elbowRoom)}`,
          ).toEqual([]);
        }
      }
    }
    expect(elevens).toBeGreaterThan(1);
  });
});

const verdict = (position: Position, style: Style, strands: number): 'refuse' | 'poor' | 'better' => {
  const { judged } = checkCinch({ style, strands }, 'wants', at(position));
  if (judged === undefined) throw new Error('cannot be laid');
  const worst = (judgement: string) => judged.findings.some((finding) => finding.judgement === judgement);
  return worst('refuse') ? 'refuse' : worst('poor') ? 'poor' : 'better';
};

const cordsClear = (position: Position, style: Style, strands: number): number =>
  checkCinch({ style, strands, length: 32 }, 'wants', at(position)).judged?.candidate.cordClearance.likely ??
  Number.NaN;

describe('one cinch after the other', () => {
  it.each(['full', '7/8'] as const)('a straight of 25 crowds the elbow on %s', (position) => {
    expect(verdict(position, 'straight', 25)).not.toBe('better');
  });

  it.each([19, 21, 23, 27, 29, 31])(
    'a high flare of %i strands on full is refused or poor, the low flare clears better',
    (strands) => {
      expect(verdict('full', 'high-flare', strands)).not.toBe('better');
      expect(cordsClear('full', 'low-flare', strands)).toBeGreaterThan(
        cordsClear('full', 'high-flare', strands),
      );
    },
  );

  it('a high flare is no trouble at 7/8 to 3/4', () => {
    expect(verdict('7/8', 'high-flare', 19)).toBe('better');
    expect(verdict('3/4', 'high-flare', 19)).toBe('better');
  });

  it.each([19, 21])('at 3/4 all three styles of %i strands pass', (strands) => {
    for (const style of ['straight', 'high-flare', 'low-flare'] as const)
      expect(verdict('3/4', style, strands)).toBe('better');
  });
});

describe('buckles', () => {
  it.each([undefined, 'round'] as const)(
    'the further forward the ring, the smaller (barrel %s)',
    (barrel) => {
      const frames = positions.map(
        (position) => at(position, { barrel }).first?.candidate.buckle.frameWidth ?? NaN,
      );
      expect(frames).toEqual([...frames].sort((a, b) => a - b));
      expect(frames.at(-1)).toBeGreaterThan(frames[0] ?? Infinity);
    },
  );

  it.each(positions)('on %s round ribs never take a larger one', (position) => {
    const frame = (barrel?: 'round') => at(position, { barrel }).first?.candidate.buckle.frameWidth ?? NaN;
    expect(frame('round')).toBeLessThanOrEqual(frame());
  });

  it('a low one meets the elbow: a very short cinch is refused for it', () => {
    const { judged } = checkCinch({ style: 'straight', strands: 17, length: 20 }, 'wants', at('7/8'));
    expect(judged?.judgementOf('buckle-height')).toBe('refuse');
  });
});
