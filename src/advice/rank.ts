/** Ranking only compares: keys of the criteria one after the other, then a fixed order that means nothing. */
import { styles } from '../stock/styles.ts';
import { say, type Phrase } from '../units/phrase.ts';
import type { Criterion } from './criteria.ts';
import type { Judged } from './judge.ts';

/** Passing candidates, best first. Adding a candidate never reorders the others; the order of the input does not matter. */
export function rank(judged: readonly Judged[], criteria: readonly Criterion[]): Judged[] {
  const keyed = judged.map((entry) => ({ entry, keys: criteria.map(({ key }) => key(entry)) }));
  keyed.sort((a, b) => compareKeys(a.keys, b.keys) || tieOrder(a.entry, b.entry));
  return keyed.map(({ entry }) => entry);
}

function compareKeys(a: readonly number[], b: readonly number[]): number {
  for (let i = 0; i < a.length; i++) {
    const difference = (a[i] ?? 0) - (b[i] ?? 0);
    if (difference !== 0) return difference;
  }
  return 0;
}

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
