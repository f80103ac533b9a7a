/** What `new` asks the clerk, and the answer so far. */
import type { QuestionId } from '../order/said/asked.ts';
import { visible } from '../units/clean.ts';
import { capital, phraseText, type Units } from '../units/text.ts';
import { standingOf } from './about-check.ts';
import { isUnsure } from '../advice/judge.ts';
import { aCinch, notCutText, oddsText } from './counter-words.ts';
import { TIE_NOTHING } from './nothing-words.ts';
import type { SizeResult } from './types.ts';
import { namedText } from './wish-words.ts';

const questions: Readonly<Record<Exclude<QuestionId, 'order'>, string>> = {
  customer: "Customer's name?",
  name: "Horse's name?",
  height: 'How tall, and what kind? Such as 15.2 hh stock; or pony, light, draft, mule, donkey.',
  girth: 'Heart girth, if taped? Once around behind withers and elbows, such as 73 in.',
  rigging: 'Where does the rigging hang, and what style? Such as 7/8 flat plate, or full double in-skirt.',
  barrel: 'Ribs, seen from the front: slab-sided, average or round?',
  withers: 'Withers: low, average or high?',
  trouble: 'Any trouble now? Such as elbow gall, buckle rub, rolls, creeps forward, slides back, girthy.',
  room: 'Elbow room, if taped? Girth groove straight forward to the elbow, such as 4 in.',
  rings: 'Ring to ring, if taped? Under the groove, saddle and pad on, such as 44 in.',
  use: 'What for? Such as roping, ranch, trail, barrels, reining, packing, endurance, pleasure.',
  current: 'Cinch in use now, if any? Such as straight 27, 32 in.',
  wants: 'Any cinch asked for? Such as straight 25.',
  due: 'Due when? Such as 2026-12-18.',
  notes: 'Any notes?',
};

/** A question as read aloud. */
export const questionText = (id: QuestionId, stem: string): string =>
  id === 'order' ? `Order number? Enter for ${visible(stem)}.` : questions[id];

/** A sore first, then what to tie, then what keeps us from cutting. */
export function soFarText({ advice, wants }: SizeResult & { readonly ok: true }, units: Units): string {
  const { first, facts } = advice;
  const [welfare] = advice.welfare.map((phrase) => phraseText(phrase, units));
  const tie =
    first === undefined
      ? TIE_NOTHING
      : `${aCinch(first.candidate)}, ${oddsText(first.candidate.clearance.chance)}${isUnsure(first) ? ', NOT SURE' : ''}.`;
  return [
    'So far:',
    // The final screen has the rest.
    ...(welfare === undefined ? [] : [welfare.replace(/(?<=[.]) .*$/s, '')]),
    advice.mustHeal ? `Once healed, ${tie}` : tie,
    ...(first === undefined || facts.lengthNeed.measured ? [] : [notCutText(advice)]),
    ...(wants === undefined
      ? []
      : [`${capital(namedText(wants.asked, units))}, as asked: ${wishWords[standingOf(wants)]}.`]),
  ].join(' ');
}

const wishWords = { passes: 'passes', 'not sure': 'not sure', refused: 'ruled out' } as const;
