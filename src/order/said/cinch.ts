/** Reads a spoken cinch: "straight 27 32 in", "low flare 23", "plain 3 buckle". */
import { nearestWord } from '../../units/nearest.ts';
import { tidy } from '../../units/number.ts';
import { didYouMean, oneOfThese } from '../leaves.ts';
import { cinchKeys } from '../keys/cinch.ts';
import { sensed } from '../near-in-sense.ts';
import type { Fault } from '../../yaml/problem.ts';
import { unitIn } from './lengths.ts';
import type { Reading } from './words.ts';

export type CinchBlock = 'wants' | 'current';

/** Words before a cinch, and which it is. */
export const cinchStarts: Readonly<Record<string, CinchBlock>> = {
  wants: 'wants',
  'asks for': 'wants',
  'asked for': 'wants',
  now: 'current',
  current: 'current',
  currently: 'current',
  'rides in': 'current',
  'ridden in': 'current',
};

/** One part of a cinch. */
export function readCinch(phrase: string, block: CinchBlock): Reading | undefined {
  const part = (key: string, text: string): Reading => ({ part: { path: [block, key], text } });
  const style = styleOf(phrase);
  if (style !== undefined) return part('style', style);
  const meant = sensed(phrase, cinchKeys.style.sense ?? {});
  if (meant.length > 0)
    return { fault: { path: `${block}.style`, expected: 'one style of cinch', hint: oneOfThese(meant) } };
  const strands = strandsOf.exec(phrase)?.[1];
  if (strands !== undefined) return part('strands', strands);
  const length = phrase.replace(/ long$/, '');
  if (![undefined, 'hh'].includes(unitIn(length))) return part('length', length);
  const age = block === 'current' ? ageOf.exec(phrase)?.[1] : undefined;
  return age === undefined ? undefined : part('age', age);
}

const strandsOf = /^(\d{1,2})(?: (?:strands?|cords?))?$/;
const ageOf = /^([\d.]+ ?(?:y|yrs?|years?|mos?|months?))(?: old)?$/;
const styleOf = (phrase: string): string | undefined =>
  cinchKeys.style.words.find((style) => style === phrase.replace(/(?<=.) roper$/, '').replaceAll(' ', '-'));

/** Style or strands that belong to no cinch. */
export function unownedFault(phrase: string): Fault | undefined {
  const [, style = '', count = ''] =
    /^(.*?)((?:(?:^| )\d{1,2})?(?: (?:strands?|cords?))?)$/.exec(phrase) ?? [];
  const isCount = style === '' && / /.test(count);
  if (!isCount && styleOf(style) === undefined) return undefined;
  const hint = oneOfThese([`wants ${phrase}`, `now ${phrase}`]);
  return { path: '', expected: 'whether the customer wants it or rides in it now', hint };
}

const buckleWord = / buckles?$/;

/** A buckle of the shop that ends the phrase. */
export function buckleOf(phrase: string, buckles: readonly string[]): string | undefined {
  if (!/(?:^| )buckles?$/.test(phrase)) return undefined;
  const plain = (id: string): string => tidy(id).toLowerCase();
  return buckles.find((id) => [phrase, phrase.replace(buckleWord, '')].includes(plain(id)));
}

/** Unknown names before "buckle". */
export function buckleFault(phrase: string, buckles: readonly string[]): Fault | undefined {
  if (!buckleWord.test(phrase)) return undefined;
  const near = nearestWord(phrase.replace(buckleWord, ''), buckles);
  const expected = `a buckle of the shop file: ${buckles.slice(0, 20).join(', ')}`;
  return { path: '', expected, hint: didYouMean(near === undefined ? undefined : `${near} buckle`) };
}
