/** Elbow room: girth groove to the back of the elbow. */
import type { Horse } from '../order/types.ts';
import type { PhotoReading } from '../photo/read/reading.ts';
import type { Model } from '../numbers/numbers.ts';
import { type Estimate, type Working, short } from './estimate.ts';
import { weighedCautiously } from './weigh.ts';

export interface Room extends Estimate {
  readonly perGirth: number;
  /** Photo and usual averaged. */
  readonly weighed: boolean;
}

/** Room nobody measured. */
export const usualRoom = (k: number, model: Model): Estimate => ({
  value: model['elbow-room'] * k,
  sd: model['elbow-room-sd'],
  kind: 'assumed',
  basis: 'about a hand behind the elbow, scaled by the girth',
});

/** Inches: taped, or a photo averaged with the usual. */
export function roomOf({ horse, k, seen }: RoomInput, model: Model): Room {
  const usual = usualRoom(k, model);
  if (horse.elbowRoom !== undefined) {
    const side = tighterSide(horse);
    return {
      value: horse.elbowRoom,
      sd: Math.min(usual.sd, model['elbow-room-taped-sd']),
      kind: 'measured',
      basis: side === undefined ? 'measured' : `on the ${side} side, the tighter`,
      perGirth: 0,
      weighed: false,
    };
  }
  const perGirth = model['elbow-room'] / model['average-girth'];
  if (seen === undefined) return { ...usual, perGirth, weighed: false };
  const { room } = seen;
  const basis = 'measured by photo, averaged with the usual hand';
  const { estimate, share } = weighedCautiously(usual, room, { basis, words: 'the usual hand' });
  return { ...estimate, perGirth: perGirth * (1 - share), weighed: share > 0 && share < 1 };
}

/** Undefined when one side was given or both are equal. */
export function tighterSide({ elbowSides }: Horse): 'near' | 'off' | undefined {
  if (elbowSides === undefined || elbowSides.near === elbowSides.off) return undefined;
  return elbowSides.near < elbowSides.off ? 'near' : 'off';
}

interface RoomInput {
  readonly horse: Horse;
  readonly k: number;
  readonly seen: PhotoReading['seen'] | undefined;
}

/** Empty unless assumed, or the smaller of two sides. */
export function roomWorking(room: Estimate, { horse, k }: Omit<RoomInput, 'seen'>, model: Model): Working[] {
  const { elbowSides: sides } = horse;
  if (sides !== undefined) {
    const sum = `the smaller of near ${short(sides.near)} and off ${short(sides.off)}`;
    return [{ symbol: 'E', sum, result: `${short(room.value)} in` }];
  }
  if (room.kind !== 'assumed') return [];
  return [{ symbol: 'E', sum: `${model['elbow-room']} x ${short(k)}`, result: `${short(room.value)} in` }];
}
