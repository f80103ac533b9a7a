/** How the uncertain inputs move the geometry: the first-order part of every spread. */
import type { Model } from '../numbers/numbers.ts';
import type { Estimate } from './estimate.ts';
import type { Girth } from './girth-by-ring.ts';
import type { Ring } from './ring.ts';
import type { Room } from './room.ts';

/** The independent inputs that can be wrong. */
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

/** How one input moves the geometry, for one sd of it. */
export interface SpreadRow {
  readonly input: InputName;
  /** Inches of elbow room. */
  readonly room: number;
  /** Inches of ring offset `x_ring`. */
  readonly ringX: number;
  /** Inches of ring station. */
  readonly ringStation: number;
  /** Inches of forward push at the push station. */
  readonly push: number;
  /** Size factor: moves the corners of the elbow line. */
  readonly k: number;
  /** Share of the cinch's width. */
  readonly width: number;
  /** Opening of the elbow line above the elbow, inches an inch. */
  readonly opening: number;
}

export type Spread = readonly SpreadRow[];

interface Inputs {
  readonly girth: Girth;
  readonly room: Room;
  readonly ring: Ring;
  readonly push: Estimate;
}

/** What one input moves; what is not named stays where it is. */
function row(input: InputName, moved: Partial<SpreadRow>): SpreadRow {
  const { room = 0, ringX = 0, ringStation = 0, push = 0, k = 0, width = 0, opening = 0 } = moved;
  return { input, room, ringX, ringStation, push, k, width, opening };
}

type ByGirth = Pick<SpreadRow, 'room' | 'ringX' | 'ringStation' | 'k'>;

/** One row an input, already multiplied by the input's sd. */
export function spreadOf({ girth, room, ring, push }: Inputs, model: Model): Spread {
  // The push and the station it is given at grow together, so the centre line keeps its slope.
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
    // The ring is placed from the elbow, so a wrong room carries the ring with it.
    row('elbow-room', { room: room.sd, ringX: room.sd }),
    row('ring-position', { ringX: ring.setBack.sd }),
    // A set-back measured on a rack does not say where the saddle sits on the horse; a photo of the two shows it.
    row('saddle-place', { ringX: ring.setBack.kind === 'photo' ? 0 : model['ring-behind-elbow-sd'] }),
    // A tape at the rings that is off puts them wrong, and with them a girth that leans on it.
    row('ring-height', { ...byTape, ringStation: byTape.ringStation + ring.station.sd }),
    row('rib-push', { push: push.sd }),
    row('elbow-opening', { opening: model['opening-above-sd'] }),
    row('strand-pitch', { width: model['strand-pitch-sd'] / model['strand-pitch'] }),
  ];
  return drop === 0 ? rows : [...rows, row('ring-drop', byGirth(drop))];
}
