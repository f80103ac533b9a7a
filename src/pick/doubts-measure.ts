/** What looks wrong with the stick, sheet or plumb line. */
import { plumbFault } from '../math/plumb.ts';
import { apart, cornerFault } from '../math/sheet-corners.ts';
import type { Reference } from '../order/photo-types.ts';
import { photoBounds as bounds } from '../numbers/photo-bounds.ts';
import { doubtful, refused, type Doubt } from './doubt.ts';
import type { Points } from './state.ts';

/** Horizontal over vertical scale of a sheet seen from the front, or its inverse [choice]. */
const mostAspect = 1.33;

/** Doubts about the reference. */
export function referenceDoubts(reference: Reference | undefined): Doubt[] {
  if (reference === undefined) return [];
  if (reference.kind === 'sheet') return sheetDoubts(reference);
  const long = apart(reference.from, reference.to);
  if (long >= bounds.leastPixels) return [];
  return [
    refused(
      `The measure is only ${String(Math.round(long))} pixels long: too short for a scale. Check its ends, or take a closer photo.`,
    ),
  ];
}

function sheetDoubts({ corners, width, height }: Extract<Reference, { kind: 'sheet' }>): Doubt[] {
  const wrong = cornerFault(corners, bounds);
  if (wrong !== undefined)
    return [refused(`The corners of the sheet: ${wrong.hint}. Expected: ${wrong.expected}.`)];
  const [a, b, c, d] = corners;
  const aspect = (((apart(a, b) + apart(c, d)) / (apart(b, c) + apart(d, a))) * height) / width;
  if (Math.max(aspect, 1 / aspect) <= mostAspect) return [];
  return [doubtful('The sheet has the wrong shape: are its width and height swapped?')];
}

/** Doubts about the plumb line. */
export function plumbDoubts({ 'plumb-top': top, 'plumb-bottom': bottom }: Points): Doubt[] {
  const wrong = top && bottom && plumbFault([top, bottom], bounds);
  return wrong === undefined
    ? []
    : [refused(`The plumb line: ${wrong.hint}. Expected: ${wrong.expected}. Check it, or skip it.`)];
}
