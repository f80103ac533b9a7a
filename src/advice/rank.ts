/** Ranking only compares: keys of the criteria one after the other, then a fixed order that means nothing. */
import { styles } from '../stock/styles.ts';
import { say, type Phrase } from '../units/phrase.ts';
import type { Criterion } from './criteria.ts';
import type { Judged } from './judge.ts';

/** Best first. Adding a candidate never reorders the others; the order of the input does not matter. */
export function rank(judged: readonly Judged[], criteria: readonly Criterion[]): Judged[] {
  const keyed = judged.map(keyedOf);
  keyed.sort((a, b) => compare(a, b, criteria));
  return keyed.map(({ entry }) => entry);
}

// Most pairs are told apart by the first few criteria, so later keys are computed only when two entries tie.
const keyedOf = (entry: Judged): Keyed => ({ entry, keys: [] });

/** Keys are computed when they are first compared. */
export interface Keyed {
  readonly entry: Judged;
  readonly keys: number[];
}

/** Negative when `a` comes first. */
export function compare(a: Keyed, b: Keyed, criteria: readonly Criterion[]): number {
  for (let i = 0; i < criteria.length; i++) {
    const difference = keyAt(a, i, criteria) - keyAt(b, i, criteria);
    if (difference !== 0) return difference;
  }
  return tieOrder(a.entry, b.entry);
}

function keyAt({ entry, keys }: Keyed, i: number, criteria: readonly Criterion[]): number {
  const known = keys[i];
  if (known !== undefined) return known;
  const key = (criteria[i] as Criterion).key(entry);
  keys[i] = key;
  return key;
}

/** What tells those apart that no criterion does: fewest strands first, and the like. */
function tieOrder({ candidate: a }: Judged, { candidate: b }: Judged): number {
  return (
    styles[a.style].effort - styles[b.style].effort ||
    a.strands - b.strands ||
    a.length - b.length ||
    (a.buckle.id < b.buckle.id ? -1 : a.buckle.id > b.buckle.id ? 1 : 0)
  );
}

/** Why `a` comes before `b`: the first criterion that differs. */
export function whyBefore(
  a: Judged,
  b: Judged,
  criteria: readonly Criterion[],
): { criterion: string; words: Phrase } {
  const first = criteria.find(({ key }) => key(a) !== key(b));
  if (first === undefined)
    return { criterion: 'none', words: say`nothing tells them apart; fewer strands stand first` };
  return { criterion: first.id, words: first.because(a, b) };
}
