/** The one cinch a maker would tie for each style and strand count. */
import type { Seat } from '../cinch/candidate.ts';
import { isTooClose, layOn, seatOf, type SpottedSeat } from '../cinch/lay.ts';
import { sideOf } from '../cinch/side.ts';
import { rubsAgain } from '../rules/better-than-now.ts';
import { buckleHeight } from '../rules/buckle-height.ts';
import { latigoRun } from '../rules/latigo-run.ts';
import { isEven } from '../rules/usual-length.ts';
import type { CaseFacts } from '../rules/rule.ts';
import { bySize, isUsualLayer, layersOf, mustBeOrdered, type Layers } from '../cinch/buckles.ts';
import { kindsOf, type Kind } from '../cinch/tied.ts';
import { judge, passes, type Judged } from './judge.ts';
import { lengthsFor } from './lengths.ts';

/** What a style and strand count leave open. */
interface Detail {
  readonly seat: SpottedSeat;
  readonly layers: Layers;
}

export interface Tied extends Kind {
  /** Undefined when all are refused. */
  readonly made: Judged | undefined;
  /** Best first, only good buckle positions if any; empty without room below the buckle. */
  readonly ways: () => Judged[];
  readonly hasBuckle: boolean;
}

/** One per style and strand count. */
export function make(facts: CaseFacts): Tied[] {
  const side = sideOf(facts);
  const lengths = lengthsFor(facts);
  const all = facts.shop.buckles.flatMap((buckle) => lengths.map((length) => seatOf(buckle, length, side)));
  const seats = ranked(
    all.filter((seat) => !isRefused(seat, facts)),
    facts,
  );
  let every: RankedSeat[] | undefined;
  const details = new Map<number, Detail[]>();
  return kindsOf(facts.shop).map(({ style, strands }) => {
    const open = details.get(strands) ?? detailsOf(strands, seats);
    details.set(strands, open);
    const way = ({ seat, layers }: Detail): Judged[] => {
      const candidate = layOn({ style, strands, layers }, seat, side);
      return candidate === undefined ? [] : [judge(candidate, facts)];
    };
    const isOpen = ({ seat, layers }: Detail): boolean => !isTooClose({ style, strands, layers }, seat, side);
    const tried = open.length > 0 ? open : detailsOf(strands, (every ??= ranked(all, facts)));
    return {
      style,
      strands,
      made: first(open, (detail) => (isOpen(detail) ? way(detail).filter(passes) : [])),
      ways: () => tried.flatMap(way),
      hasBuckle: tried.length > 0,
    };
  });
}

/** By buckle position alone. */
const isRefused = (seat: Seat, facts: CaseFacts): boolean =>
  latigoRun.judge(facts, seat).judgement === 'refuse' ||
  buckleHeight.judge(facts, seat).judgement === 'refuse';

/** Among equal seats: usual layers, then smallest buckle. */
function detailsOf(strands: number, seats: readonly RankedSeat[]): Detail[] {
  const details: (Detail & RankedSeat)[] = [];
  for (const { seat, place } of seats)
    for (const layers of layersOf(seat.buckle, strands)) details.push({ seat, place, layers });
  const unusual = (each: Detail): number => Number(!isUsualLayer(each.layers, strands));
  return details.sort(
    (a, b) => a.place - b.place || unusual(a) - unusual(b) || bySize(a.seat.buckle, b.seat.buckle),
  );
}

function first(details: readonly Detail[], of: (detail: Detail) => Judged[]): Judged | undefined {
  for (const detail of details) {
    const [found] = of(detail);
    if (found !== undefined) return found;
  }
  return undefined;
}

interface RankedSeat {
  readonly seat: SpottedSeat;
  /** Equal seats share a rank. */
  readonly place: number;
}

function ranked(seats: readonly SpottedSeat[], facts: CaseFacts): RankedSeat[] {
  const keys = seatKeys(facts);
  const compare = (a: SpottedSeat, b: SpottedSeat): number => {
    for (const key of keys) {
      const difference = key(a) - key(b);
      if (difference !== 0) return difference;
    }
    return 0;
  };
  const sorted = [...seats].sort(compare);
  let place = 0;
  return sorted.map((seat, i) => {
    const before = sorted[i - 1];
    if (before !== undefined && compare(before, seat) < 0) place = i;
    return { seat, place };
  });
}

/** Length before frame, because the ring settles it. */
function seatKeys(facts: CaseFacts): ((seat: SpottedSeat) => number)[] {
  const { model, lengthNeed, order } = facts;
  return [
    (seat) => rubsAgain(facts, seat),
    ({ run }) => Number(run < model['run-low'] || run > model['run-high']),
    ({ length }) => Number(!isEven(length)),
    // Nobody ties latigo finer than a quarter inch.
    ({ run }) => Math.round(4 * Math.abs(run - lengthNeed.runTarget)),
    ({ length }) => Math.abs(length - lengthNeed.crossCheck),
    ({ length }) => length,
    ({ frameClearance: { likely } }) =>
      likely >= model['chance-good'] ? 0 : likely >= model['chance-acceptable'] ? 1 : 2,
    ({ buckle }) => Number(mustBeOrdered(buckle, order.quantity)),
  ];
}
