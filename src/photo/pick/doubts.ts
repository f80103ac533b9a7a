/** What looks wrong with the marks and the sizes they give. */
import { apart } from '../../math/sheet-corners.ts';
import { defaultModel as model } from '../../numbers/numbers.ts';
import { photoBounds as bounds } from '../../numbers/photo-bounds.ts';
import type { Pixel, Reference } from '../../order/photo-types.ts';
import { decimals } from '../../units/print.ts';
import { pixelsAnInch } from '../read/camera.ts';
import type { PhotoReading, Seen } from '../read/reading.ts';
import { doubtful, markDoubts, refused, type Doubt } from './doubts-marks.ts';
import type { Picked, Points } from './state.ts';

interface Known {
  readonly reference: Reference | undefined;
  readonly distance: number | undefined;
  readonly size: Pixel;
}

/** Refusals first. */
export function doubtsOf(now: Picked, known: Known): Doubt[] {
  const { points } = now;
  const { reference } = known;
  const first = markDoubts(now, reference);
  const isRefused = first.some((doubt) => doubt.refused);
  // A misplaced mark is reported once.
  const all =
    isRefused || reference === undefined ? first : [...sizeDoubts(points, { ...known, reference }), ...first];
  return [...all.filter((doubt) => doubt.refused), ...all.filter((doubt) => !doubt.refused)];
}

/** As the order does: a sheet by its upper and lower edge. */
function roughScale(reference: Reference): number {
  if (reference.kind === 'stick') return pixelsAnInch(reference);
  const [a, b, c, d] = reference.corners;
  return (apart(a, b) + apart(c, d)) / 2 / reference.width;
}

function sizeDoubts(
  points: Points,
  { reference, distance, size }: Known & { readonly reference: Reference },
): Doubt[] {
  const scale = roughScale(reference);
  const { ring, elbow, 'girth-groove': groove, spine, underline } = points;
  const doubts: Doubt[] = [];
  if (elbow !== undefined && groove !== undefined)
    doubts.push(...forwardDoubts({ ring, elbow, groove }, scale));
  const low = underline ?? groove;
  if (spine !== undefined && low !== undefined) {
    const depth = (low[1] - spine[1]) / scale;
    if (outside(depth, bounds.barrelDepth))
      doubts.push(
        refused(
          `The barrel comes out ${rough(depth)} in deep; it should be ${span(bounds.barrelDepth)}. ${hint}`,
          'depth',
        ),
      );
  }
  if (distance !== undefined) {
    const across = Math.max(...size) / scale;
    const angle = (2 * Math.atan(across / 2 / distance) * 180) / Math.PI;
    if (angle > bounds.widestView)
      doubts.push(refused('No camera sees that much from so close: check the camera distance.'));
  }
  return doubts;
}

const hint = 'Check these marks, the ends of the measure and its length.';

interface Range {
  readonly min: number;
  readonly max: number;
}
const outside = (value: number, { min, max }: Range): boolean => value < min || value > max;
const span = ({ min, max }: Range): string => `${String(min)} to ${String(max)} in`;
const rough = (value: number): string => decimals(value, 1);

function forwardDoubts(
  { ring, elbow, groove }: { ring: Pixel | undefined; elbow: Pixel; groove: Pixel },
  scale: number,
): Doubt[] {
  const room = Math.abs(elbow[0] - groove[0]) / scale;
  const behind = ring === undefined ? 0 : ((elbow[0] - ring[0]) * Math.sign(elbow[0] - groove[0])) / scale;
  const swapped = ring !== undefined && ring[1] > elbow[1] ? 'Are ring and elbow swapped?' : hint;
  return [
    ...(outside(room, bounds.elbowRoom)
      ? [
          refused(
            `Room behind the elbow comes out at ${rough(room)} in; it should be ${span(bounds.elbowRoom)}. ${swapped}`,
            'room',
          ),
        ]
      : []),
    ...(outside(behind, bounds.ringBehind)
      ? [
          refused(
            `The ring comes out ${rough(Math.abs(behind))} in ${behind < 0 ? 'ahead of' : 'behind'} the elbow. ${swapped}`,
            'ring',
          ),
        ]
      : []),
  ];
}

/** As in the order's remarks; a test compares them. */
const TELLING = 2;

/** Possible but unusual, for a horse of average girth. */
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
