/** Numbers of asking: how well a side photo reads, and what is worth a customer's time; each with its basis. */
import type { NumberBasis } from './model-number.ts';

export interface AskingNumber {
  readonly value: number;
  readonly unit: 'in' | 'chance' | 'draws';
  readonly about: string;
  readonly basis: NumberBasis;
}

const choice = (value: number, unit: AskingNumber['unit'], about: string): AskingNumber => ({
  value,
  unit,
  about,
  basis: { kind: 'choice', source: 'engineering-choice' },
});

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
