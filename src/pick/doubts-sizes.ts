/** Sizes no horse has. */
import { apart } from '../math/sheet-corners.ts';
import type { Pixel, Reference } from '../order/photo-types.ts';
import { pixelsAnInch } from '../photo/camera.ts';
import { photoBounds as bounds } from '../numbers/photo-bounds.ts';
import { decimals } from '../units/print.ts';
import { refused, type Doubt } from './doubt.ts';
import type { Known } from './doubts.ts';
import type { Points } from './state.ts';

/** As the order computes it: a sheet by its upper and lower edge. */
function roughScale(reference: Reference): number {
  if (reference.kind === 'stick') return pixelsAnInch(reference);
  const [a, b, c, d] = reference.corners;
  return (apart(a, b) + apart(c, d)) / 2 / reference.width;
}

/** By the reference alone, as the order does. */
export function sizeDoubts(
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
