/** Lengths that no horse has. */
import type { Pixel, Reference } from '../order/photo-types.ts';
import { pixelsAnInch } from '../photo/camera.ts';
import { apart, bounds, rough } from './doubt-bounds.ts';
import type { Known } from './doubts.ts';
import type { Points } from './state.ts';

/** Pixels an inch as the door takes them: of a sheet by its upper and lower edge. */
function roughScale(reference: Reference): number {
  if (reference.kind === 'stick') return pixelsAnInch(reference);
  const [a, b, c, d] = reference.corners;
  return (apart(a, b) + apart(c, d)) / 2 / reference.width;
}

/** Doubts about room, ring, depth and distance, by the reference. */
export function sizeDoubts(
  points: Points,
  { reference, distance, size }: Known & { readonly reference: Reference },
): string[] {
  const scale = roughScale(reference);
  const { ring, elbow, 'girth-groove': groove, spine, underline } = points;
  const doubts: string[] = [];
  if (elbow !== undefined && groove !== undefined)
    doubts.push(...forwardDoubts({ ring, elbow, groove }, scale));
  if (spine !== undefined && underline !== undefined) {
    const depth = (underline[1] - spine[1]) / scale;
    if (outside(depth, bounds.depth))
      doubts.push(`The barrel would be ${rough(depth)} in deep; 20 to 32 is usual. ${hint}`);
  }
  if (distance !== undefined) {
    const across = Math.max(...size) / scale;
    const angle = (2 * Math.atan(across / 2 / distance) * 180) / Math.PI;
    if (angle > bounds.view) doubts.push('No camera sees that much from so near: check the camera distance.');
  }
  return doubts;
}

const hint = 'Check these marks, the ends of the measure and its length.';
const outside = (value: number, [least, most]: readonly [number, number]): boolean =>
  value < least || value > most;

function forwardDoubts(
  { ring, elbow, groove }: { ring: Pixel | undefined; elbow: Pixel; groove: Pixel },
  scale: number,
): string[] {
  const room = Math.abs(elbow[0] - groove[0]) / scale;
  const behind = ring === undefined ? 0 : ((elbow[0] - ring[0]) * Math.sign(elbow[0] - groove[0])) / scale;
  return [
    ...(outside(room, bounds.room)
      ? [`Room behind the elbow would be ${rough(room)} in; 2 to 7 is usual. ${hint}`]
      : []),
    ...(outside(behind, bounds.ring)
      ? [
          `The ring would hang ${rough(Math.abs(behind))} in ${behind < 0 ? 'ahead of' : 'behind'} the elbow. ${hint}`,
        ]
      : []),
  ];
}
