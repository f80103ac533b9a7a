/** When nothing passes: the length it would take, or moving the ring. */
import type { Advice } from '../advice/advice.ts';
import { dist, gap, len, say } from '../units/phrase.ts';
import { noBuckleText, onlyFails } from './about-rest.ts';
import { capital, phraseText, type Units } from '../units/text.ts';
import { aCinch } from './counter-words.ts';

/** Undefined when something passes. */
export function wayOutText(advice: Advice, units: Units): string | undefined {
  if (advice.specs.length > 0) return undefined;
  if (advice.noBuckle) return `${capital(noBuckleText(advice.facts))}: the horse is not the problem.`;
  const { lengthNeed, shop } = advice.facts;
  if (lengthNeed.target.value <= 0)
    return 'Ring to ring leaves no room for a cinch and two latigos: tape it again.';
  // Too short a cinch leaves too much latigo and low buckles.
  const tooShort = lengthNeed.target.value > shop.lengths.max && onlyFails(advice, 'buckle-height');
  if (tooShort || onlyFails(advice, 'latigo-run')) {
    return phraseText(
      say`This horse and saddle need a cinch of about ${len(lengthNeed.target.value)}; we tie ${len(shop.lengths.min)} to ${len(shop.lengths.max)}.`,
      units,
    );
  }
  if (onlyFails(advice, 'stock'))
    return 'The shelf is short; the horse is not the problem. Another color or fewer cinches may pass.';
  if (advice.closeGroove) return 'A ring farther back does not help here; see the top.';
  const way = advice.wayOut;
  if (way === undefined) return 'No ring position makes a cinch pass, either.';
  const { candidate } = way.first;
  return phraseText(
    say`If the tape is right, ask the saddle maker. With the ring ${dist(way.further)} farther back, ${aCinch(candidate)}, would clear by about ${gap(candidate.clearance.inches)}. No cinch fixes this.`,
    units,
  );
}
