/** How each uncertain input moves the geometry, to first order. */
import type { Model } from '../numbers/numbers.ts';
import type { Estimate } from './estimate.ts';
import type { Girth } from './girth-by-ring.ts';
import type { Ring } from './ring.ts';
import type { Room } from './room.ts';

/** Independent inputs. */
type InputName =
  | 'heart-girth'
  | 'elbow-room'
  | 'ring-position'
  | 'saddle-place'
  | 'ring-height'
  | 'ring-drop'
  | 'rib-push'
  | 'elbow-opening'
  | 'strand-pitch';

/** What one sd of one input moves, inches unless said. */
export interface SpreadRow {
  readonly input: InputName;
  readonly room: number;
  readonly ringX: number;
  readonly ringStation: number;
  /** At the push station. */
  readonly push: number;
  readonly k: number;
  /** Share of the width. */
  readonly width: number;
  /** Inches per inch, above the elbow. */
  readonly opening: number;
}

export type Spread = readonly SpreadRow[];

interface Inputs {
  readonly girth: Girth;
  readonly room: Room;
  readonly ring: Ring;
  readonly push: Estimate;
}

function row(input: InputName, moved: Partial<SpreadRow>): SpreadRow {
  const { room = 0, ringX = 0, ringStation = 0, push = 0, k = 0, width = 0, opening = 0 } = moved;
  return { input, room, ringX, ringStation, push, k, width, opening };
}

type ByGirth = Pick<SpreadRow, 'room' | 'ringX' | 'ringStation' | 'k'>;

/** Already multiplied by each input's sd. */
export function spreadOf({ girth, room, ring, push }: Inputs, model: Model): Spread {
  // Push and its station grow together, so the slope stays.
  const byGirth = (inches: number): ByGirth => {
    const perK = inches / model['average-girth'];
    const roomByGirth = room.perGirth * inches;
    return {
      room: roomByGirth,
      ringX: roomByGirth - model['ring-behind-elbow'] * perK - ring.setBackPerGirth * inches,
      ringStation: ring.stationPerGirth * inches,
      k: perK,
    };
  };
  const { own, station, drop } = girth.moved;
  const byTape = byGirth(station);
  const rows = [
    row('heart-girth', byGirth(own)),
    // The ring is placed from the elbow.
    row('elbow-room', { room: room.sd, ringX: room.sd }),
    row('ring-position', { ringX: ring.setBack.sd }),
    // A tape on a rack does not show where the saddle sits; a photo does.
    row('saddle-place', { ringX: ring.setBack.kind === 'photo' ? 0 : model['ring-behind-elbow-sd'] }),
    // Also moves a girth estimated from it.
    row('ring-height', { ...byTape, ringStation: byTape.ringStation + ring.station.sd }),
    row('rib-push', { push: push.sd }),
    row('elbow-opening', { opening: model['opening-above-sd'] }),
    row('strand-pitch', { width: model['strand-pitch-sd'] / model['strand-pitch'] }),
  ];
  return drop === 0 ? rows : [...rows, row('ring-drop', byGirth(drop))];
}
