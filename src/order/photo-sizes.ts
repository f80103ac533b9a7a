/** Checks a photo's sizes against what horses have. */
import { apart } from '../math/sheet-corners.ts';
import { bodyBounds } from '../numbers/body-bounds.ts';
import { photoBounds } from '../numbers/photo-bounds.ts';
import type { Inches } from '../units/length.ts';
import { decimals } from '../units/print.ts';
import type { Across } from './across.ts';
import { barrelDepth, horseKeys } from './keys/horse.ts';
import { photoKeys, referenceKeys } from './photo-schema.ts';
import { within, type LengthRange } from './measure.ts';
import { cornersAt, widthOf } from './photo-sheet.ts';
import { fault, inchesAt, photoPath, pixelAt, type Landmark, type Path } from './photo-tree.ts';
import type { Pixel } from './photo-types.ts';
import type { Problem } from '../yaml/problem.ts';
import { isBlock, treeAt } from '../yaml/tree.ts';

/** Over height at the withers [choice: half is usual]. */
const depthOverHeight = { min: 0.3, max: 0.65 };
const { depthOverGirth } = bodyBounds;
const { widestView, ringBehind } = photoBounds;

/** Needs marks in the right order. */
export function sizeFaults(loaded: Across): Problem[] {
  const scale = pixelsAnInch(loaded);
  const at = (name: Landmark): Pixel | undefined => pixelAt(loaded, [name]);
  const [elbow, groove, spine] = [at('elbow'), at('girth-groove'), at('spine')];
  if (scale === undefined || !elbow || !groove) return [];
  const low = at('underline') ?? groove;
  const depth = spine && (low[1] - spine[1]) / scale;
  const room = Math.abs(elbow[0] - groove[0]) / scale;
  return [
    ...sizeFault(loaded, {
      path: ['elbow'],
      range: horseKeys['elbow-room'],
      inches: room,
      hint: swapHint(loaded),
    }),
    ...(depth === undefined
      ? []
      : within(depth, barrelDepth.depth)
        ? depthAgainstTape(loaded, depth)
        : sizeFault(loaded, { path: ['spine'], range: barrelDepth.depth, inches: depth })),
    ...ringFault(loaded, scale),
    ...viewFault(loaded, scale),
  ];
}

const about = (inches: Inches): string => `${decimals(inches, 1)} in`;
const offScale = 'is the length of the reference right, and are its ends marked right?';

function swapHint(loaded: Across): string | undefined {
  const [ring, elbow] = [pixelAt(loaded, ['ring']), pixelAt(loaded, ['elbow'])];
  return ring && elbow && ring[1] > elbow[1] ? 'are ring and elbow swapped?' : undefined;
}

function sizeFault(
  loaded: Across,
  {
    path,
    range,
    inches,
    hint,
  }: { path: Path; range: LengthRange; inches: Inches; hint?: string | undefined },
): Problem[] {
  if (within(inches, range)) return [];
  const expected = `${range.about} from ${about(range.min)} to ${about(range.max)}; the reference makes it ${about(inches)}`;
  return [fault(loaded, path, { expected, hint: hint ?? offScale })];
}

/** Taped girth or height. */
function depthAgainstTape(loaded: Across, depth: Inches): Problem[] {
  const girth = inchesAt(loaded, ['horse', 'heart-girth'], horseKeys['heart-girth']);
  const height = inchesAt(loaded, ['horse', 'height'], horseKeys.height);
  const [whole, bounds, name] =
    girth !== undefined
      ? ([girth, depthOverGirth, 'heart girth'] as const)
      : ([height, depthOverHeight, 'height'] as const);
  if (whole === undefined || within(depth / whole, bounds)) return [];
  // Within what any horse may have.
  const [least, most] = [
    about(Math.max(bounds.min * whole, barrelDepth.depth.min)),
    about(Math.min(bounds.max * whole, barrelDepth.depth.max)),
  ];
  const expected = `spine and underline ${least} to ${most} apart, for a ${name} of ${about(whole)}; the reference puts them ${about(depth)} apart`;
  return [fault(loaded, ['spine'], { expected, hint: offScale })];
}

/** Too far from the elbow for a cinch to hang there. */
function ringFault(loaded: Across, scale: number): Problem[] {
  const [ring, elbow, groove] = [
    pixelAt(loaded, ['ring']),
    pixelAt(loaded, ['elbow']),
    pixelAt(loaded, ['girth-groove']),
  ];
  if (!ring || !elbow || !groove) return [];
  const behind = ((elbow[0] - ring[0]) * Math.sign(elbow[0] - groove[0])) / scale;
  if (within(behind, ringBehind)) return [];
  const expected = `a ring from ${about(-ringBehind.min)} ahead of the elbow to ${about(ringBehind.max)} behind it; the reference puts it ${about(Math.abs(behind))} ${behind < 0 ? 'ahead' : 'behind'}`;
  return [
    fault(loaded, ['ring'], { expected, hint: swapHint(loaded) ?? 'are elbow and girth-groove swapped?' }),
  ];
}

/** Whether a lens sees that much from that distance. */
function viewFault(loaded: Across, scale: number): Problem[] {
  const distance = inchesAt(loaded, [...photoPath, 'camera-distance'], photoKeys['camera-distance']);
  const size = pixelAt(loaded, ['image-size']);
  if (distance === undefined || size === undefined) return [];
  const across = Math.max(...size) / scale;
  const angle = (2 * Math.atan(across / 2 / distance) * 180) / Math.PI;
  if (angle <= widestView) return [];
  const expected = `a camera farther away: the picture is ${about(across)} wide at the horse`;
  return [
    fault(loaded, ['camera-distance'], {
      expected,
      hint: `no lens sees ${String(Math.round(angle))} degrees wide`,
    }),
  ];
}

/** By the reference alone. */
function pixelsAnInch(loaded: Across): number | undefined {
  const reference = treeAt(loaded.tree, [...photoPath, 'reference']);
  const inches = (key: string, range: LengthRange) =>
    inchesAt(loaded, [...photoPath, 'reference', key], range);
  const length = inches('length', referenceKeys.length);
  const [from, to] = [pixelAt(loaded, ['reference', 'from']), pixelAt(loaded, ['reference', 'to'])];
  if (length !== undefined && from && to) return apart(from, to) / length;
  const [width, corners] = [
    inches('width', referenceKeys.width),
    isBlock(reference) ? cornersAt(reference) : undefined,
  ];
  return width === undefined || corners === undefined ? undefined : widthOf(corners) / width;
}
