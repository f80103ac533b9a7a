/** How many strands makers tie for this set-back and horse. */
import type { Horse } from '../order/types.ts';
import type { Model } from '../numbers/numbers.ts';
import type { Estimate } from './estimate.ts';
import { usualRoom } from './room.ts';
import { contradicts } from './weigh.ts';

/** May be fractions: interpolated between riggings. */
interface Bounds {
  /** When short of room; `most` with taped room to spare. */
  readonly least: number;
  readonly most: number;
  /** What is usual. */
  readonly low: number;
  readonly high: number;
}

export interface StrandBand extends Bounds {
  /** Tied on this horse, given its room. */
  readonly from: number;
  readonly to: number;
}

export interface Practice {
  readonly straight: StrandBand;
  readonly roper: StrandBand;
  /** 0 for a horse, 1 for a pony. */
  readonly ponyShare: number;
  /** Narrowest straight for this horse. */
  readonly narrowest: number;
}

interface Row extends Bounds {
  /** Set-back on the average horse, inches. */
  readonly back: number;
}

/** Straights: full, 7/8, 3/4, 5/8 and center-fire on 12 in bars [common practice, no source]. */
const grown: readonly Row[] = [
  { back: 0, least: 13, low: 15, high: 17, most: 17 },
  { back: 1.5, least: 15, low: 17, high: 19, most: 21 },
  { back: 3, least: 15, low: 17, high: 21, most: 23 },
  { back: 4.5, least: 17, low: 21, high: 23, most: 25 },
  { back: 6, least: 19, low: 21, high: 25, most: 25 },
];

/** Ponies, any rigging [common practice, no source]. */
const pony: Bounds = { least: 9, low: 11, high: 13, most: 15 };

/** Girth, inches: a pony up to `from`, a horse from `to` [choice]. */
const passage = { pony: { from: 67, to: 73 }, other: { from: 58, to: 68 } } as const;

/** Strands over a straight [common practice, no source]; usually not all six [choice]. */
const OVER = { least: 2, usual: 4, most: 6 };
/** Narrowest straight [choice, from the table above]. */
const NARROWEST = { grown: 13, pony: 9 };

interface PracticeInput {
  readonly horse: Pick<Horse, 'kind' | 'barrel'>;
  readonly girth: Pick<Estimate, 'value'>;
  readonly room: Pick<Estimate, 'kind' | 'value' | 'sd'>;
  /** Inches over `k`. */
  readonly setBack: number;
  readonly k: number;
  readonly isSore: boolean;
}

/** Rigging style does not matter; set-back and size do. */
export function practiceOf(asked: PracticeInput, model: Model): Practice {
  const { horse, girth, setBack } = asked;
  const { from, to } = passage[horse.kind === 'pony' ? 'pony' : 'other'];
  const share = Math.max(0, Math.min(1, (to - girth.value) / (to - from)));
  const bounds = between(rowAt(setBack), pony, share);
  const { least, low, high, most } = bounds;
  const straight = {
    ...bounds,
    from: mix(low, least, shortOfRoom(asked, model)),
    to: mix(high, most, muchRoom(asked, model)),
  };
  return {
    straight,
    roper: roperBand(bounds, share, model),
    ponyShare: share,
    narrowest: mix(NARROWEST.grown, NARROWEST.pony, share),
  };
}

const isSeen = ({ kind }: Pick<Estimate, 'kind'>): boolean => kind === 'measured' || kind === 'photo';

/** Taped room an inch off the usual counts in full [choice]. */
const WHOLLY = 1;
const part = (inches: number, k: number): number => Math.max(0, Math.min(1, inches / (WHOLLY * k)));

/** 0 to 1, by round ribs, sores or room. */
function shortOfRoom({ horse, room, k, isSore }: PracticeInput, model: Model): number {
  if (horse.barrel === 'round' || isSore) return 1;
  return isSeen(room) ? part(usualRoom(k, model).value - room.value, k) : 0;
}

/** 0 to 1; an implausible tape earns nothing. */
function muchRoom({ room, k }: PracticeInput, model: Model): number {
  const usual = usualRoom(k, model);
  return isSeen(room) && !contradicts(usual, room) ? part(room.value - usual.value, k) : 0;
}

/** On a pony even the narrowest roper is too wide. */
function roperBand({ low, high }: Bounds, ponyShare: number, model: Model): StrandBand {
  const least = model['roper-fewest'];
  const over = (strands: number): number => mix(high + strands, pony.most, ponyShare);
  const usual = over(OVER.usual);
  return {
    least,
    from: least,
    low: Math.max(least, low + OVER.least),
    high: usual,
    to: usual,
    most: over(OVER.most),
  };
}

function rowAt(back: number): Bounds {
  const [first, last] = [grown[0] as Row, grown.at(-1) as Row];
  const next = grown.findIndex((row) => row.back > back);
  if (next === 0) return first;
  if (next < 0) return last;
  const [low, high] = [grown[next - 1] as Row, grown[next] as Row];
  return between(low, high, (back - low.back) / (high.back - low.back));
}

const mix = (a: number, b: number, share: number): number => a + (b - a) * share;

const between = (a: Bounds, b: Bounds, share: number): Bounds => ({
  least: mix(a.least, b.least, share),
  low: mix(a.low, b.low, share),
  high: mix(a.high, b.high, share),
  most: mix(a.most, b.most, share),
});

/** Counts are odd, so one strand off is the same. */
const HALF_STEP = 1;

const within = (strands: number, from: number, to: number): boolean => stepsBeyond(strands, from, to) === 0;

const stepsBeyond = (strands: number, from: number, to: number): number =>
  Math.max(
    0,
    Math.ceil((from - HALF_STEP - strands) / 2 - 1e-9),
    Math.ceil((strands - to - HALF_STEP) / 2 - 1e-9),
  );

/** Usually tied. */
export const isUsual = (strands: number, { low, high }: StrandBand): boolean => within(strands, low, high);

/** Tied by some maker. */
export const isTied = (strands: number, { least, most }: StrandBand): boolean => within(strands, least, most);

/** Steps of two outside this horse's band; 0 inside. */
export const stepsOutside = (strands: number, { from, to }: StrandBand): number =>
  stepsBeyond(strands, from, to);
