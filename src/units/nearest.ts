/** Finds the right word for a wrong one, for hints. */
import { distance } from 'fastest-levenshtein';

/** Longer input is no slip, and slow to compare. */
const longest = 40;

/**
 * Undefined when none is near. Same letters, else at most one wrong in three ("nmae" -> "name"), else the one
 * word that contains it ("girth" -> "heart-girth") or shares its stem ("rope" -> "roping").
 */
export function nearestWord(word: string, allowed: readonly string[]): string | undefined {
  if (word.length > longest || plain(word) === '') return undefined;
  const same = allowed.find((candidate) => plain(candidate) === plain(word));
  if (same !== undefined) return same;
  const turned = allowed.find((candidate) => sorted(candidate) === sorted(word));
  if (turned !== undefined) return turned;
  return byDistance(word, allowed) ?? byPart(word, allowed) ?? byStem(word, allowed);
}

/** heartGirth, heart_girth and Heart-Girth become the same. */
function plain(word: string): string {
  return word.toLowerCase().replace(/[^\p{L}\p{N}]/gu, '');
}

/** "3 1/2 plain" for "plain 3 1/2". */
const sorted = (words: string): string => words.toLowerCase().split(/\s+/).sort().join(' ');

function byDistance(word: string, allowed: readonly string[]): string | undefined {
  let best: string | undefined;
  let least = Infinity;
  for (const candidate of allowed) {
    const letters = slips(plain(word), plain(candidate));
    const limit = Math.floor(Math.max(plain(word).length, plain(candidate).length) / 3);
    if (letters <= limit && letters < least) [best, least] = [candidate, letters];
  }
  return best;
}

/** Wrong, missing and extra letters; a swapped pair counts once. */
function slips(word: string, candidate: string): number {
  let least = distance(word, candidate);
  for (let i = 1; i < word.length; i++) {
    const swapped = word.slice(0, i - 1) + word.charAt(i) + word.charAt(i - 1) + word.slice(i + 1);
    least = Math.min(least, 1 + distance(swapped, candidate));
  }
  return least;
}

function byPart(word: string, allowed: readonly string[]): string | undefined {
  const part = plain(word);
  const fitting = allowed.filter((candidate) => candidate.split('-').includes(part));
  return fitting.length === 1 ? fitting[0] : undefined;
}

/** None when several share the stem. */
function byStem(word: string, allowed: readonly string[]): string | undefined {
  const stem = stemOf(plain(word));
  const fitting = allowed.filter((candidate) => stemOf(plain(candidate)) === stem);
  return stem.length >= 3 && fitting.length === 1 ? fitting[0] : undefined;
}

/** rope, ropes and roping all give "rop". */
function stemOf(word: string): string {
  const stem = /^(.{3,}?)(?:ings?|ers?|ed|e?s|ies|e|y)$/u.exec(word)?.[1] ?? word;
  return stem.replace(/^(.{2,})(.)\2$/u, '$1$2');
}
