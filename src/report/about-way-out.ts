/** When nothing passes: what moving the ring would change, in a sentence. */
import type { Advice } from '../advice/advice.ts';
import { dist, say } from '../units/phrase.ts';
import { phraseText, type Units } from './text.ts';
import { specName } from './words.ts';

/** A way out, or that there is none; undefined where something passes. */
export function wayOutText(advice: Advice, units: Units): string | undefined {
  if (advice.specs.length > 0) return undefined;
  const way = advice.wayOut;
  if (way === undefined) return 'No place of the ring makes anything pass either.';
  const { candidate } = way.first;
  return phraseText(
    say`With the ring ${dist(way.further)} further back, ${specName(candidate)}, would clear the elbow by ${dist(candidate.clearance.inches)}: that is for the saddle maker to judge, no cinch does it.`,
    units,
  );
}
