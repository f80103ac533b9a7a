/** What comes before any cinch: healing a sore, and the saddle's fit. */
import type { Facts } from '../horse/facts.ts';
import { isGalled, rawSkinInNotes } from '../horse/sore.ts';
import { count, dist, say, type Phrase } from '../units/phrase.ts';

/** In reading order; empty when nothing is wrong. */
export function welfareOf(facts: Pick<Facts, 'order' | 'room' | 'k' | 'model'>): Phrase[] {
  const { order } = facts;
  const { trouble } = order.horse;
  const raw = rawSkinInNotes(order);
  const where = [
    ...(trouble.includes('elbow-gall') ? ['GALLED AT THE ELBOW'] : []),
    ...(trouble.includes('buckle-rub') ? ['RUBBED BY THE BUCKLE'] : []),
  ].join(', ');
  const heal =
    'Let it heal first. Do not ride on broken skin. If it is open, swollen or slow to heal, call a vet.';
  return [
    ...(where === '' ? [] : [say`${where}. ${heal}`]),
    ...(where === '' && raw !== undefined ? [say`SORE, from the notes: "${raw}". ${heal}`] : []),
    ...(trouble.includes('girthy')
      ? [say`CINCHY (GIRTHY). Ask a vet first; ulcers and lameness are common causes. No cinch fixes either.`]
      : []),
    ...(isVeryThin(order)
      ? [say`VERY THIN (condition ${count(order.horse.condition ?? 0)}). Ask a vet before anyone rides.`]
      : []),
    ...closeGroove(facts),
  ];
}

/** Henneke et al. 1983: 1 is poor, 2 very thin. */
export const isVeryThin = ({ horse: { condition } }: Facts['order']): boolean =>
  condition !== undefined && condition <= 2;

/** No riding until hurt skin heals. */
export const mustHeal = ({ order }: Pick<Facts, 'order'>): boolean =>
  isGalled(order) || order.horse.trouble.includes('buckle-rub');

/** Less room draws saddle and cinch forward, inches on the average horse [choice]. */
const CLOSE = 3;

/** The saddle is drawn forward, or creeps already. */
export const hasCloseGroove = ({ order, room, k }: Pick<Facts, 'order' | 'room' | 'k'>): boolean =>
  room.value < CLOSE * k || order.horse.trouble.includes('creeps-forward');

function closeGroove({ order, room, k }: Pick<Facts, 'order' | 'room' | 'k'>): Phrase[] {
  if (!hasCloseGroove({ order, room, k })) return [];
  const found =
    room.value < CLOSE * k
      ? say`CLOSE GROOVE: the girth groove lies only ${dist(room.value)} behind the elbow and draws saddle and cinch forward.`
      : say`THE SADDLE CREEPS FORWARD.`;
  return [
    found,
    say`A ring farther back would drag the saddle onto the shoulder. Start with saddle fit: ask a saddle fitter. A saddle maker can move the rigging over the groove; a low flare is our job. A crupper or breeching is up to the rider and a trainer.`,
  ];
}
