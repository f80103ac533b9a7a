/** How far a point of the cinch is from the elbow line. */
import type { ElbowLine } from '../horse/elbow-line.ts';

export interface ElbowGap {
  readonly distance: number;
  readonly elbowX: number;
  readonly elbowS: number;
}

/** Indexes into the elbow line. */
const MIDLINE = 0;
const ARMPIT = 2;
const ELBOW = 4;
const TOP = 6;

/** Negative over the line: the overlap along x, so it is continuous at zero. */
export function elbowGap(x: number, s: number, line: ElbowLine): ElbowGap {
  const room = line[ARMPIT] as number;
  const below = s < (line[ARMPIT + 1] as number);
  if (!below && s <= (line[ELBOW + 1] as number)) return { distance: room - x, elbowX: room, elbowS: s };
  const corner = below ? ARMPIT : ELBOW;
  const far = below ? MIDLINE : TOP;
  const cornerS = line[corner + 1] as number;
  const ux = (line[far] as number) - room;
  const us = (line[far + 1] as number) - cornerS;
  const levelX = room + (ux * (s - cornerS)) / us;
  if (x >= levelX) return { distance: levelX - x, elbowX: levelX, elbowS: s };
  const along = ((x - room) * ux + (s - cornerS) * us) / (ux * ux + us * us);
  const t = Math.max(0, Math.min(1, along));
  const elbowX = room + t * ux;
  const elbowS = cornerS + t * us;
  return { distance: Math.hypot(x - elbowX, s - elbowS), elbowX, elbowS };
}
