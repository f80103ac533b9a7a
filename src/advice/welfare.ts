/** What comes before any cinch: a sore heals first, and a saddle that does not fit is no cinch's to mend. */
import type { Facts } from '../facts/facts.ts';
import { rawSkinInNotes } from '../facts/sore.ts';
import { dist, say, type Phrase } from '../units/phrase.ts';

/** In the order in which they must be read; empty for a sound horse with room behind the elbow. */
export function welfareOf(facts: Pick<Facts, 'order' | 'room' | 'k' | 'model'>): Phrase[] {
  const { order } = facts;
  const { trouble } = order.horse;
  const raw = rawSkinInNotes(order);
  const where = [
    ...(trouble.includes('elbow-gall') ? ['galled at the elbow'] : []),
    ...(trouble.includes('buckle-rub') ? ['rubbed by the buckle'] : []),
  ].join(', ');
  const heal =
    'let it heal first, and do not ride on broken skin. If it is open, swollen or slow to heal, call a vet';
  return [
    ...(where === '' ? [] : [say`Sore: ${where}. Before anything is tied, ${heal}.`]),
    ...(where === '' && raw !== undefined
      ? [say`Sore: the notes say "${raw}". Before anything is tied, ${heal}.`]
      : []),
    ...(trouble.includes('girthy')
      ? [
          say`Cinchy (girthy): ask a vet first. Ulcers and lameness are common causes, and a cinch mends neither.`,
        ]
      : []),
    ...closeGroove(facts),
  ];
}

/** Room under this is a groove close behind the elbow: it draws saddle and cinch forward (inches on the average horse) [choice]. */
const CLOSE = 3;

/** Whether the girth groove lies so close behind the elbow that the saddle is drawn forward, or does so already. */
export const hasCloseGroove = ({ order, room, k }: Pick<Facts, 'order' | 'room' | 'k'>): boolean =>
  room.value < CLOSE * k || order.horse.trouble.includes('creeps-forward');

function closeGroove({ order, room, k }: Pick<Facts, 'order' | 'room' | 'k'>): Phrase[] {
  if (!hasCloseGroove({ order, room, k })) return [];
  const found =
    room.value < CLOSE * k
      ? say`The girth groove lies close behind the elbow, ${dist(room.value)}, and draws saddle and cinch forward.`
      : say`The saddle creeps forward.`;
  return [
    found,
    say`A ring further back would drag the saddle onto the shoulder. First have a saddle fitter see to the fit; a saddle maker can hang the rigging over the groove; of what we tie a low flare gives the elbow the most room; a crupper or breeching is for the rider and a trainer to decide.`,
  ];
}
