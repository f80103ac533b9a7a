/** Expected and actual complaints, and whether chance explains the difference. */
import { chanceOf } from '../math/logistic.ts';
import { normalInverse } from '../math/normal.ts';
import { learning } from '../numbers/learning-numbers.ts';
import type { Learning } from './models.ts';

/** Outcomes of about the same expected chance. */
export interface Bin {
  readonly count: number;
  /** Mean chance of a complaint ever. */
  readonly chance: number;
  /** Within the days in use, before the fit. */
  readonly before: number;
  readonly after: number;
  readonly came: number;
  /** Wilson interval of `came`. */
  readonly low: number;
  readonly high: number;
  /** Chance of a share at least this far off. */
  readonly tail: number;
}

interface Foretold {
  readonly chance: number;
  readonly before: number;
  readonly after: number;
  readonly came: number;
}

const MOST_BINS = 6;
const LEAST_IN_BIN = 5;
/** Closer chances stay in one bin. */
const SAME = 1e-9;

/** At most six bins. */
export function binsOf(asked: Learning, before: readonly number[], after: readonly number[]): Bin[] {
  const foretold = foretoldOf(asked, before, after).sort((a, b) => a.chance - b.chance);
  const most = Math.max(1, Math.min(MOST_BINS, Math.floor(foretold.length / LEAST_IN_BIN)));
  const bins: Foretold[][] = [];
  foretold.forEach((each, i) => {
    const full = i >= Math.round((bins.length * foretold.length) / most);
    const alike = i > 0 && each.chance - (foretold[i - 1]?.chance ?? 0) < SAME;
    if (bins.length === 0 || (full && !alike)) bins.push([each]);
    else bins.at(-1)?.push(each);
  });
  return bins.map(binOf);
}

function binOf(bin: readonly Foretold[]): Bin {
  const mean = (of: (each: Foretold) => number): number =>
    bin.reduce((sum, each) => sum + of(each), 0) / bin.length;
  const came = mean((each) => each.came);
  return {
    count: bin.length,
    chance: mean((each) => each.chance),
    before: mean((each) => each.before),
    after: mean((each) => each.after),
    came,
    ...wilson(came, bin.length),
    tail: tailOf(
      bin.map((each) => each.after),
      Math.round(came * bin.length),
    ),
  };
}

/** One entry per outcome, even with two trials. */
function foretoldOf({ odds, of }: Learning, before: readonly number[], after: readonly number[]): Foretold[] {
  const scratch = after.map(() => 0);
  const trials = new Map<number, number[]>();
  of.forEach((place, i) => trials.set(place, [...(trials.get(place) ?? []), i]));
  const outcomes = [...trials.values()].map((own) => {
    const none = (numbers: readonly number[]): number =>
      own.reduce((product, i) => product * chanceOf(-odds.at(i, numbers, scratch)), 1);
    return {
      before: 1 - none(before),
      after: 1 - none(after),
      seen: odds.trials[own[0] ?? 0]?.seen ?? 1,
      happened: own.some((i) => odds.trials[i]?.happened === true),
    };
  });
  const whole = wholeDays(outcomes);
  return outcomes.map((each, i) => ({
    chance: each.after,
    before: (whole[i] ?? 1) * each.before,
    after: (whole[i] ?? 1) * each.after,
    came: each.happened ? 1 : 0,
  }));
}

/**
 * Chance per outcome that trouble shows in the days the cinch was meant to be used. A complaint ends use
 * early, so it gets the mean of those that lasted longer (Kaplan & Meier 1958, J. Am. Stat. Assoc. 53:457;
 * Efron 1967), or 1 if none did.
 */
export function wholeDays(outcomes: readonly { seen: number; happened: boolean }[]): number[] {
  const order = outcomes
    .map((each, place) => ({ ...each, place }))
    .sort((a, b) => b.seen - a.seen || Number(a.happened) - Number(b.happened));
  const shares: number[] = [];
  let [sum, count] = [0, 0];
  for (const { seen, happened, place } of order) {
    const share = !happened ? seen : count === 0 ? 1 : sum / count;
    shares[place] = share;
    sum += share;
    count += 1;
  }
  return shares;
}

/** The smaller chance, of at most or of at least this many. */
export function tailOf(chances: readonly number[], came: number): number {
  let counts = [1];
  for (const chance of chances) {
    const next = [...counts, 0].map((here, k) => here * (1 - chance) + (counts[k - 1] ?? 0) * chance);
    counts = next;
  }
  const sum = (part: readonly number[]): number => part.reduce((total, each) => total + each, 0);
  return Math.min(1, sum(counts.slice(0, came + 1)), sum(counts.slice(came)));
}

/** Whether any bin is odd. */
export const isMisfit = (bins: readonly Bin[]): boolean => bins.some((bin) => isOdd(bin, bins.length));

/** Corrected for looking at both sides of every bin. */
export const isOdd = ({ tail }: Bin, bins: number): boolean => 2 * bins * tail < learning('misfit-chance');

/** Interval of a share (Wilson 1927, J. Am. Stat. Assoc. 22:209). */
export function wilson(share: number, count: number): { low: number; high: number } {
  const z = normalInverse((1 + learning('interval')) / 2);
  const square = (z * z) / count;
  const center = (share + square / 2) / (1 + square);
  const half = (z * Math.sqrt((share * (1 - share)) / count + square / (4 * count))) / (1 + square);
  return { low: Math.max(0, center - half), high: Math.min(1, center + half) };
}
