/** Numbers of asking: how well a side photo reads, and what is worth a customer's time; each with its basis. */
import { choice as ownChoice, fixedOn } from './model-number.ts';

const choice = fixedOn<'in' | 'chance' | 'draws'>(ownChoice);

/** The table; the shop file does not override these. */
export const askingNumbers = {
  'photo-room-sd': choice(
    0.7,
    'in',
    'spread of an elbow room read off a side photo, by itself: what `photo` finds on an invented scene, mostly yaw',
  ),
  'photo-set-back-sd': choice(
    0.55,
    'in',
    'spread of where the ring hangs behind the elbow, read off a side photo, by itself',
  ),
  'photo-drop-sd': choice(0.75, 'in', 'spread of the height of the ring read off a side photo, by itself'),
  'photo-depth-sd': choice(0.75, 'in', 'spread of a barrel depth read off a side photo, by itself'),
  'worth-gain': choice(
    0.01,
    'chance',
    'a question is asked when it spares one remake in a hundred: asking takes minutes, a remake hours',
  ),
  'worth-change': choice(
    0.1,
    'chance',
    'or when the answer changes what is tied at least once in ten: wider, another style, another length',
  ),
  strata: choice(64, 'draws', 'strata of what the tape may read, two draws in each'),
} as const;
