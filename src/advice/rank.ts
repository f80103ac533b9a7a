/** Ranks specs by criteria in turn, then a fixed order. */
import { styles } from '../cinch/styles.ts';
import { say, type Phrase } from '../units/phrase.ts';
import type { Criterion } from './criteria.ts';
import type { Judged } from './judge.ts';

/** Neither another candidate nor the input order changes the rest. */
export function rank(judged: readonly Judged[], criteria: readonly Criterion[]): Judged[] {
  const keyed = judged.map((entry) => ({ entry, keys: criteria.map(({ key }) => key(entry)) }));
  keyed.sort((a, b) => {
    const i = a.keys.findIndex((key, at) => key !== b.keys[at]);
    return i < 0 ? tieOrder(a.entry, b.entry) : (a.keys[i] as number) - (b.keys[i] as number);
  });
  return keyed.map(({ entry }) => entry);
}

/** The simpler style, then fewer strands. */
function tieOrder({ candidate: a }: Judged, { candidate: b }: Judged): number {
  return styles[a.style].effort - styles[b.style].effort || a.strands - b.strands || a.length - b.length;
}

/** The first criterion that differs. */
export function whyBefore(
  a: Judged,
  b: Judged,
  criteria: readonly Criterion[],
): { criterion: string; words: Phrase } {
  const first = criteria.find(({ key }) => key(a) !== key(b));
  if (first !== undefined) return { criterion: first.id, words: first.because(a, b) };
  const words =
    a.candidate.style === b.candidate.style
      ? say`otherwise equal; fewer strands go first`
      : say`otherwise equal; the simpler style goes first`;
  return { criterion: 'none', words };
}
