/** The right word for a wrong one: for hints only, nothing is ever put right behind the writer's back. */
import { distance } from 'fastest-levenshtein';

/** Longer input is no slip of the fingers, and comparing it would only cost time. */
const longest = 40;

/**
 * The allowed word nearest to `word`, or undefined when none is near: same letters in another spelling (snake_case, camelCase,
 * capitals), else about one wrong letter in three, else a word of which it is one part ("girth" -> "heart-girth").
 */
export function nearestWord(word: string, allowed: readonly string[]): string | undefined {
  if (word.length > longest || plain(word) === '') return undefined;
  const same = allowed.find((candidate) => plain(candidate) === plain(word));
  if (same !== undefined) return same;
  return byDistance(word, allowed) ?? byPart(word, allowed);
}

/** Letters and digits only, lower case: heartGirth, heart_girth and Heart-Girth all become the same. */
function plain(word: string): string {
  return word.toLowerCase().replace(/[^\p{L}\p{N}]/gu, '');
}

function byDistance(word: string, allowed: readonly string[]): string | undefined {
  let best: string | undefined;
  let least = Infinity;
  for (const candidate of allowed) {
    const letters = distance(plain(word), plain(candidate));
    const limit = Math.floor(Math.max(plain(word).length, plain(candidate).length) / 3);
    if (letters <= limit && letters < least) [best, least] = [candidate, letters];
  }
  return best;
}

function byPart(word: string, allowed: readonly string[]): string | undefined {
  const part = plain(word);
  const fitting = allowed.filter((candidate) => candidate.split('-').includes(part));
  return fitting.length === 1 ? fitting[0] : undefined;
}
