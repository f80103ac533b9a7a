/** Numbers for `ask`: spreads of a side photo, and what is worth asking. */
import { choice as ownChoice, fixedOn } from './model-number.ts';

const choice = fixedOn<'in' | 'chance' | 'draws'>(ownChoice);

export const askingNumbers = {
  'photo-room-sd': choice(
    0.7,
    'in',
    'spread of elbow room by side photo alone: what `photo` finds on an invented scene, mostly yaw',
  ),
  'photo-set-back-sd': choice(0.55, 'in', 'spread of elbow to ring by side photo alone'),
  'photo-drop-sd': choice(0.75, 'in', 'spread of ring height by side photo alone'),
  'photo-depth-sd': choice(0.75, 'in', 'spread of barrel depth by side photo alone'),
  'worth-gain': choice(
    0.01,
    'chance',
    'worth asking if it saves one remake in a hundred: asking takes minutes, a remake hours',
  ),
  'worth-change': choice(
    0.1,
    'chance',
    'or if the answer changes what is tied once in ten: width, style or length',
  ),
  strata: choice(64, 'draws', 'strata of possible readings, two draws in each'),
} as const;
