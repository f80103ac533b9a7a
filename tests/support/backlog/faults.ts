/** Seeded slips that make an order one that must not be read. */
import type { Random } from '../../../src/math/random.ts';
import { whole } from '../draw.ts';

/** Nothing where the order has no place for it. */
export type Fault = (text: string) => string | undefined;

/** The first match. */
const swap =
  (pattern: RegExp, by: string): Fault =>
  (text) =>
    pattern.test(text) ? text.replace(pattern, by) : undefined;

export const faults: Readonly<Record<string, Fault>> = {
  'a length without its unit': swap(/^( {2}heart-girth: [\d. /]+?) (?:in|cm|mm)\b/m, '$1'),
  'four inches of a hand': swap(/^( {2}height: \d+)\.\d hh/m, '$1.4 hh'),
  'inches for centimeters': swap(/^( {2}heart-girth: )[\d. /]+ (?:in|cm|mm)\b/m, '$173 cm'),
  'an even count of strands': swap(/^( {2}strands: )\d+/m, '$116'),
  'a word that is not on the list': swap(/^use: \S+/m, 'use: rodeo'),
  'a rigging that does not exist': swap(/^( {2}rigging: )\S+/m, '$19/8'),
  'no rigging': swap(/^ {2}rigging:.*\n(?: {4}.*\n)*/m, ''),
  'a key written wrong': swap(/^ {2}heart-girth:/m, '  hart-girth:'),
  'a tab': swap(/^ {2}style:/m, '\tstyle:'),
  'a key twice': swap(/^(use: .*)\n/m, '$1\nuse: trail\n'),
  'due before it was taken': swap(/^due: \S+/m, 'due: 2025-12-24'),
  'a decimal comma': swap(/^( {2}(?:ring-to-ring|elbow-room): \d+)[^\n]*/m, '$1,5 in'),
  'nothing in it': () => '# Invented: an order that was never written down.\n',
};

/** One that fits. */
export function faulty(text: string, random: Random): string {
  const kinds = Object.values(faults);
  const from = whole(random, 0, kinds.length - 1);
  for (let i = 0; i < kinds.length; i++) {
    const broken = kinds[(from + i) % kinds.length]?.(text);
    if (broken !== undefined) return broken;
  }
  return ''; // an empty file is faulty too
}
