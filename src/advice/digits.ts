/** The first criteria of ranking as one number, of which they are the digits: of two candidates the one with the smaller number comes first. */
import { BUCKLE } from '../fit/axes.ts';
import type { LaidCandidate } from '../fit/lay.ts';
import type { CaseFacts } from '../rules/rule.ts';
import type { Criterion } from './criteria.ts';
import { ruleOf, Seen } from './judge.ts';
import { ofShop, type ShopKeys } from './of-shop.ts';
import { HANG, isWithin, type Field, type Part } from './parts.ts';
import type { Sums } from './sums.ts';
import { axesOfRule } from './tallies.ts';
import { placeOf } from './verdict.ts';

/** Whole numbers up to here are exact. */
const MOST = Number.MAX_SAFE_INTEGER;

/** A criterion whose keys are digits of a number. */
interface Digit {
  readonly criterion: Criterion;
  readonly axes: number;
  /** How many different keys there can be, and which they are where they are not whole numbers, smallest first. */
  readonly base: number;
  readonly keys: readonly number[];
  /** Of each make the place of its key, where that follows from the shop alone. */
  readonly places?: Float64Array;
}

export interface Counted {
  /** Where a tally counts them. */
  readonly place: number;
  readonly weight: number;
}

/** What is not in the sums. */
export interface Digits {
  readonly counted: readonly Counted[];
  /** From the first criterion on for which there is no room, or whose keys nobody can list. */
  readonly others: readonly Criterion[];
}

/** Adds to the sums what the digits of each candidate add up to, save for how many rules came to a judgement. */
export function addDigits(sums: Sums, criteria: readonly Criterion[], field: Field): Digits {
  const digits: Digit[] = [];
  let size = 1;
  for (let i = 0; i < criteria.length; i++) {
    const digit = digitOf(criteria[i] as Criterion, field);
    if (digit === undefined || size * digit.base > MOST) break;
    size *= digit.base;
    digits.push(digit);
  }
  const counted: Counted[] = [];
  const readings: Reading[] = [];
  for (const digit of digits) {
    size /= digit.base;
    const { criterion, axes, places } = digit;
    if (criterion.counts !== undefined) counted.push({ place: placeOf[criterion.counts], weight: size });
    else if (places !== undefined) addPlaces(sums.ofMakes, places, size);
    else {
      const others = readings.find((reading) => reading.axes === axes);
      const weighed = { digit, weight: size };
      if (others === undefined) readings.push(new Reading(axes, weighed, field.facts));
      else others.also(weighed);
    }
  }
  for (const reading of readings) sums.add(reading, field);
  return { counted, others: criteria.slice(digits.length) };
}

/** Undefined where keys are any numbers, and follow from too much to list them. */
function digitOf(criterion: Criterion, field: Field): Digit | undefined {
  const { ofShop: isOfShop, whole } = criterion;
  const axes = axesOfCriterion(criterion, field.facts);
  if (isOfShop) {
    const { keys, places } = shopKeys(criterion, field);
    return { criterion, axes, base: keys.length, keys, places };
  }
  if (whole !== undefined) return { criterion, axes, base: 1 + whole[1] - whole[0], keys: [] };
  const keys = keysAlong(axes, criterion, field);
  return keys === undefined ? undefined : { criterion, axes, base: keys.length, keys };
}

function axesOfCriterion({ axes, rule }: Criterion, facts: CaseFacts): number {
  const asked = rule === undefined ? undefined : ruleOf(rule);
  return asked === undefined ? axes : axes | axesOfRule(asked, facts);
}

/** All keys of any size, where they follow from buckle and length alone; undefined where they do not. */
function keysAlong(axes: number, { key }: Criterion, field: Field): number[] | undefined {
  if (!isWithin(axes, HANG)) return undefined;
  // The first buckle has every length.
  const hangs = (axes & BUCKLE) === 0 ? field.lengths : field.hangs.length;
  const keys: number[] = [];
  for (let hang = 0; hang < hangs; hang++) {
    const own = key(new Seen(field.facts, field.laid(0, hang)));
    if (!keys.includes(own)) keys.push(own);
  }
  return keys.sort((a, b) => a - b);
}

interface Weighed {
  readonly digit: Digit;
  readonly weight: number;
}

/** Digits that depend on the same choices are read together. */
class Reading implements Part {
  readonly axes: number;
  readonly #weighed: Weighed[];
  readonly #facts: CaseFacts;

  constructor(axes: number, first: Weighed, facts: CaseFacts) {
    this.axes = axes;
    this.#weighed = [first];
    this.#facts = facts;
  }

  also(weighed: Weighed): void {
    this.#weighed.push(weighed);
  }

  read(candidate: LaidCandidate): number {
    const seen = new Seen(this.#facts, candidate);
    let sum = 0;
    for (let i = 0; i < this.#weighed.length; i++) {
      const { digit, weight } = this.#weighed[i] as Weighed;
      sum += weight * digitIn(digit, seen);
    }
    return sum;
  }
}

function digitIn({ criterion: { key, whole }, keys }: Digit, seen: Seen): number {
  const own = key(seen);
  return whole === undefined ? keys.indexOf(own) : own - whole[0];
}

function shopKeys(criterion: Criterion, field: Field): ShopKeys {
  const { facts, tied } = field;
  const kept = ofShop(tied, facts.model).keys;
  let own = kept.get(criterion);
  if (own === undefined) {
    const all = field.makes.map((_, make) => criterion.key(new Seen(facts, field.laid(make))));
    const keys = [...new Set(all)].sort((a, b) => a - b);
    kept.set(criterion, (own = { keys, places: Float64Array.from(all, (key) => keys.indexOf(key)) }));
  }
  return own;
}

function addPlaces(sums: Float64Array, places: Float64Array, weight: number): void {
  for (let make = 0; make < places.length; make++)
    sums[make] = (sums[make] as number) + weight * (places[make] as number);
}
