/** Possible but unusual: the order is read, with a remark. */
import type { PhotoReading, Seen } from '../photo/read.ts';
import { defaultModel as model } from '../numbers/numbers.ts';
import { decimals } from '../units/print.ts';
import { doubtful, type Doubt } from './doubt.ts';
import type { Points } from './state.ts';

/** Same limit as the order's remarks; a test compares them. */
const TELLING = 2;

/** For any ring position and a horse of average girth. */
export function unusual(
  { ring, elbow, 'girth-groove': groove }: Points,
  seen: PhotoReading['seen'],
): Doubt[] {
  if (elbow === undefined || groove === undefined) return [];
  const off = (
    { value, sd }: Seen,
    { min, max, usualSd }: { min: number; max: number; usualSd: number },
  ): boolean => Math.max(min - value, value - max) > TELLING * Math.hypot(sd, usualSd);
  const hand = model['elbow-room'];
  const room = off(seen.room, { min: hand, max: hand, usualSd: model['elbow-room-sd'] })
    ? [
        doubtful(
          `Room behind the elbow is usually about ${decimals(hand, 0)} in; this is ${decimals(seen.room.value, 1)} in. Check elbow, groove and the length of the measure.`,
        ),
      ]
    : [];
  const full = model['ring-behind-elbow'];
  const center = full + model['bar-span'] / 2;
  if (ring === undefined) return room;
  if (!off(seen.ringBehindElbow, { min: full, max: center, usualSd: model['named-position-sd'] }))
    return room;
  const { value } = seen.ringOffset;
  const most = decimals(center - hand, 1);
  return [
    ...room,
    doubtful(
      `A ring is usually between ${decimals(hand - full, 1)} in ahead of the groove and ${most} in behind; this one is ${decimals(Math.abs(value), 1)} in ${value < 0 ? 'behind' : 'ahead'}. Check ring, elbow and groove.`,
    ),
  ];
}
