/** Room: forward distance from the girth groove to the back of the elbow. */
import type { Horse } from '../order/types.ts';
import type { Model } from '../sources/numbers.ts';
import { type Estimate, type Working, short } from './estimate.ts';

/** Elbow room E in inches; `k` is the size factor. */
export function roomOf(horse: Horse, k: number, model: Model): Estimate {
  const sd = model['elbow-room-sd'];
  if (horse.elbowRoom === undefined) {
    return {
      value: model['elbow-room'] * k,
      sd,
      kind: 'assumed',
      basis: 'about a hand behind the elbow, scaled by the girth',
    };
  }
  return {
    value: horse.elbowRoom,
    sd: Math.min(sd, model['elbow-room-taped-sd']),
    kind: 'measured',
    basis: 'measured',
  };
}

/** How an assumed room came about; a measured one needs no working. */
export function roomWorking(room: Estimate, k: number, model: Model): Working[] {
  if (room.kind === 'measured') return [];
  return [{ symbol: 'E', sum: `${model['elbow-room']} x ${short(k)}`, result: `${short(room.value)} in` }];
}
