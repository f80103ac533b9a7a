/** Of each style and strand count the first that passes, best first. */
import type { Criterion } from './criteria.ts';
import { addDigits, type Digits } from './digits.ts';
import type { Judged } from './judge.ts';
import { compare, type Keyed } from './rank.ts';
import { Sums } from './sums.ts';
import { fixedTallies, tallyParts } from './tallies.ts';
import type { Trial } from './trial.ts';
import { countIn, refuses } from './verdict.ts';

// Filled anew for each order.
const tallies = new Sums();
const numbers = new Sums();

/** A candidate whose first criteria are one number. */
interface Numbered extends Keyed {
  readonly number: number;
}

/** Of what passes the first of each style and strand count by these criteria; as `rank` would sort them. */
export function bestOfEach(trial: Trial, criteria: readonly Criterion[]): Judged[] {
  const { facts, tied } = trial;
  if (trial.size === 0) return [];
  tallies.restart(trial, fixedTallies(facts, trial, tied));
  for (const part of tallyParts(facts)) tallies.add(part, trial);
  numbers.restart(trial);
  const digits = addDigits(numbers, criteria, { facts, rows: trial, list: tied });
  const best: Numbered[] = [];
  for (const group of tied.groups) {
    const first = firstOf(group, trial, digits);
    if (first !== undefined) best.push(first);
  }
  best.sort((a, b) => a.number - b.number || compare(a, b, digits.others));
  return best.map(({ entry }) => entry);
}

/** The first of these makes' candidates that passes. */
function firstOf(group: readonly number[], trial: Trial, digits: Digits): Numbered | undefined {
  const { ofMakes, ofHangs } = tallies;
  const { lengths } = trial;
  let least = Infinity;
  // The first so far: an object only where its number alone does not tell.
  let best: Numbered | undefined;
  let bestMake = 0;
  let bestHang = 0;
  for (let i = 0; i < group.length; i++) {
    const make = group[i] as number;
    if (refuses(ofMakes[make] as number)) continue;
    const from = trial.firstHangOf(make);
    for (let hang = from; hang < from + lengths; hang++) {
      // No cords need be laid for what the make or the hang is refused for.
      if (refuses(ofHangs[hang] as number) || !trial.canTie(make, hang)) continue;
      const laid = trial.laid(make, hang);
      const tally = tallies.of(make, hang, laid);
      if (refuses(tally)) continue;
      const number = numbers.of(make, hang, laid) + ofCounts(digits, tally);
      if (number > least) continue;
      if (number === least) {
        best ??= numbered(trial, { make: bestMake, hang: bestHang }, digits);
        const other = numbered(trial, { make, hang }, digits);
        if (compare(other, best, digits.others) < 0) best = other;
        continue;
      }
      least = number;
      best = undefined;
      bestMake = make;
      bestHang = hang;
    }
  }
  return least === Infinity
    ? undefined
    : (best ?? numbered(trial, { make: bestMake, hang: bestHang }, digits));
}

/** An object of its own for a candidate. */
function numbered(trial: Trial, { make, hang }: { make: number; hang: number }, digits: Digits): Numbered {
  const laid = trial.laid(make, hang);
  const tally = tallies.of(make, hang, laid);
  const number = numbers.of(make, hang, laid) + ofCounts(digits, tally);
  return { entry: trial.seat(make, hang, tally), keys: [], number };
}

/** What the counts of verdicts add to a number. */
function ofCounts({ counted }: Digits, tally: number): number {
  let sum = 0;
  for (let i = 0; i < counted.length; i++) {
    const { judgement, weight } = counted[i] as (typeof counted)[number];
    sum += weight * countIn(tally, judgement);
  }
  return sum;
}
