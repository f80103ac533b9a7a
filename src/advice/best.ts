/** Of each style and strand count the first that passes, best first. */
import type { Criterion } from './criteria.ts';
import { addDigits, type Digits } from './digits.ts';
import type { Judged } from './judge.ts';
import { compare, type Keyed } from './rank.ts';
import { Sums } from './sums.ts';
import { fixedTallies, tallyParts } from './tallies.ts';
import type { Trial } from './trial.ts';
import { countAt, refuses } from './verdict.ts';

// Filled anew for each order.
const tallies = new Sums();
const numbers = new Sums();

/** A candidate whose first criteria are one number. */
interface Numbered extends Keyed {
  readonly number: number;
}

/** Of what passes the first of each style and strand count by these criteria; as `rank` would sort them. */
export function bestOfEach(trial: Trial, criteria: readonly Criterion[]): Judged[] {
  if (trial.size === 0) return [];
  tallies.restart(trial, fixedTallies(trial));
  for (const part of tallyParts(trial.facts)) tallies.add(part, trial);
  numbers.restart(trial);
  const digits = addDigits(numbers, criteria, trial);
  const best: Numbered[] = [];
  for (const group of trial.tied.groups) {
    const first = firstOf(group, trial, digits);
    if (first !== undefined) best.push(first);
  }
  best.sort((a, b) => a.number - b.number || compare(a, b, digits.others));
  return best.map(({ entry }) => entry);
}

/** The first of these makes' candidates that passes. */
function firstOf(group: readonly number[], trial: Trial, { counted, others }: Digits): Numbered | undefined {
  const { ofMakes, ofHangs } = tallies;
  // Of the first so far: an object is made for it only where its number does not tell it from the next, and in the end.
  let least = Infinity;
  let best: Keyed | undefined;
  let bestMake = 0;
  let bestHang = 0;
  for (let i = 0; i < group.length; i++) {
    const make = group[i] as number;
    const from = trial.firstHangOf(make);
    for (let hang = from; hang < from + trial.lengths; hang++) {
      const early = (ofMakes[make] as number) + (ofHangs[hang] as number);
      // No cords need be laid for what the make or the hang is refused for.
      if (refuses(early) || !trial.canTie(make, hang)) continue;
      const laid = trial.laid(make, hang);
      const tally = early + tallies.ofCords(laid);
      if (refuses(tally)) continue;
      const number = numbers.of(make, hang, laid) + ofCounts(counted, tally);
      if (number > least) continue;
      if (number === least) {
        best ??= keyed(trial, bestMake, bestHang);
        const other = keyed(trial, make, hang);
        if (compare(other, best, others) < 0) best = other;
        continue;
      }
      least = number;
      best = undefined;
      bestMake = make;
      bestHang = hang;
    }
  }
  if (least === Infinity) return undefined;
  const { entry, keys } = best ?? keyed(trial, bestMake, bestHang);
  return { entry, keys, number: least };
}

/** An object of its own for a candidate. */
function keyed(trial: Trial, make: number, hang: number): Keyed {
  const tally = tallies.of(make, hang, trial.laid(make, hang));
  return { entry: trial.seat({ make, hang, tally }), keys: [] };
}

/** What the counts of verdicts add to a number. */
function ofCounts(counted: Digits['counted'], tally: number): number {
  let sum = 0;
  for (let i = 0; i < counted.length; i++) {
    const { place, weight } = counted[i] as (typeof counted)[number];
    sum += weight * countAt(tally, place);
  }
  return sum;
}
