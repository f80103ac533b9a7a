/** When nothing passes: how close the best comes, why, and who can help. */
import type { Advice } from '../advice/advice.ts';
import { howToMeasure } from '../numbers/how-to-measure.ts';
import { dist, gap, listed, overlap, say } from '../units/phrase.ts';
import { onlyFails, refusedTexts } from './about-rest.ts';
import { wayOutText } from './about-way-out.ts';
import { horseName } from './counter-words.ts';
import { paragraph, type Block } from '../pages/sheet.ts';
import { capital, phraseText, type Units } from '../units/text.ts';

export const TIE_NOTHING = 'TIE NOTHING. No cinch we tie passes here.';

/** For such an order. */
export function nothingBlocks(advice: Advice, units: Units): Block[] {
  const ruled = refusedTexts(advice, units).map((text) => `${text}.`);
  return [
    { kind: 'text', text: closestText(advice, units) },
    ...advice.remarks.map((remark) => paragraph(phraseText(remark, units))),
    { kind: 'text', text: againText(advice, units), apart: true },
    { kind: 'text', text: wayOutText(advice, units) ?? '' },
    { kind: 'text', text: 'Never move the saddle forward to make a cinch hang plumb.' },
    { kind: 'text', text: 'Ruled out', tone: 'strong', apart: true },
    { kind: 'list', items: ruled.slice(0, MOST), mark: 'x' },
  ];
}

const MOST = 4;

/** "The closest would sit 7/8 in off the elbow. ..." */
function closestText(advice: Advice, units: Units): string {
  if (!onlyFails(advice, 'elbow-clearance')) return '';
  const gaps = advice.every.map(({ candidate }) => candidate.clearance);
  const best = gaps.reduce<(typeof gaps)[number] | undefined>(
    (near, each) => (near === undefined || each.inches > near.inches ? each : near),
    undefined,
  );
  if (best === undefined) return '';
  const off =
    best.inches < 0
      ? say`reach onto the elbow, about ${overlap(-best.inches)}`
      : say`sit ${gap(best.inches)} off the elbow`;
  const needs = phraseText(say`${dist(best.floor)}`, units);
  return `The closest would ${phraseText(off, units)}. ${capital(horseName(advice.facts.order))} needs ${needs}.`;
}

/** The one measurement worth taping again. */
function againText(advice: Advice, units: Units): string {
  const { room, ring, model, k } = advice.facts;
  const usual = model['elbow-room'] * k;
  if (room.kind === 'measured' && onlyFails(advice, 'elbow-clearance')) {
    const why = say`Why: elbow room was taped at only ${dist(room.value)}; about ${dist(usual)} is usual. `;
    const few = room.value < usual ? phraseText(why, units) : '';
    return `${few}Tape the elbow room again first; everything hangs on it: ${howToMeasure['elbow room']}.`;
  }
  if (ring.taped && onlyFails(advice, 'buckle-height'))
    return `Tape ring to ring again first; everything hangs on it: ${howToMeasure['ring to ring']}.`;
  return onlyFails(advice, 'stock') || advice.noBuckle ? '' : guessText(advice);
}

/** A guess must not turn a horse away. */
function guessText({ facts: { room, ring } }: Advice): string {
  const guessed = [
    ...(ring.taped ? [] : ['ring to ring']),
    ...(room.kind === 'measured' || room.kind === 'photo' ? [] : ['elbow room']),
  ];
  if (guessed.length === 0) return '';
  return `Only guessed: ${listed(guessed)}. Tape ${guessed.length === 1 ? 'it' : 'them'} first, then size again.`;
}
