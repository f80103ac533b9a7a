/** What looks wrong with the stick or sheet, and with the plumb line. */
import type { Pixel, Reference } from '../order/photo-types.ts';
import { photoBounds as bounds } from '../sources/photo-bounds.ts';
import { apart, doubtful, refused, type Doubt } from './doubt.ts';
import type { Points } from './state.ts';

/** Pixels an inch across over those up, of a sheet seen from the front, or over their inverse [choice]. */
const mostAspect = 1.33;

/** Doubts about the reference. */
export function referenceDoubts(reference: Reference | undefined): Doubt[] {
  if (reference === undefined) return [];
  if (reference.kind === 'sheet') return sheetDoubts(reference);
  const long = apart(reference.from, reference.to);
  if (long >= bounds.leastPixels) return [];
  return [
    refused(
      `The measure is only ${String(Math.round(long))} pixels long: too short for a scale. Check its ends, or take a photo from nearer.`,
    ),
  ];
}

function sheetDoubts({ corners, width, height }: Extract<Reference, { kind: 'sheet' }>): Doubt[] {
  const [a, b, c, d] = corners;
  const shortest = Math.min(apart(a, b), apart(b, c), apart(c, d), apart(d, a));
  if (shortest < bounds.leastEdge)
    return [
      refused(
        `An edge of the sheet is only ${String(Math.round(shortest))} pixels long: too short for a scale.`,
      ),
    ];
  const turn = (p: Pixel, q: Pixel, r: Pixel): number =>
    (q[0] - p[0]) * (r[1] - q[1]) - (q[1] - p[1]) * (r[0] - q[0]);
  if (Math.min(turn(a, b, c), turn(b, c, d), turn(c, d, a), turn(d, a, b)) <= 0)
    return [
      refused(
        'The corners do not go round the sheet clockwise: top left, top right, bottom right, bottom left.',
      ),
    ];
  if (b[0] <= a[0] || Math.abs(b[1] - a[1]) > b[0] - a[0])
    return [refused('The first two corners must be the upper edge of the sheet, from left to right.')];
  const aspect = (((apart(a, b) + apart(c, d)) / (apart(b, c) + apart(d, a))) * height) / width;
  if (Math.max(aspect, 1 / aspect) <= mostAspect) return [];
  return [
    doubtful('The sheet does not look as wide and as high as it should: are its width and height swapped?'),
  ];
}

/** Doubts about the plumb line. */
export function plumbDoubts({ 'plumb-top': top, 'plumb-bottom': bottom }: Points): Doubt[] {
  if (top === undefined || bottom === undefined) return [];
  const [x, y] = [bottom[0] - top[0], bottom[1] - top[1]];
  if (y <= 0) return [refused('The bottom of the plumb line is above its top: swap them.')];
  if (Math.hypot(x, y) < bounds.leastPixels)
    return [
      refused('The plumb line is too short to tell anything: click it higher up and lower down, or skip it.'),
    ];
  const lean = (Math.atan2(Math.abs(x), y) * 180) / Math.PI;
  if (lean <= bounds.mostLean) return [];
  return [
    refused(
      `The plumb line leans by ${String(Math.round(lean))} degrees: it cannot be one. Check it, or skip it.`,
    ),
  ];
}
