/** Whether a string on a photo can be a plumb line. */
import type { Point } from './homography.ts';

/** Worded for orders and the page for marks; undefined when nothing is wrong. */
export function plumbFault(
  [top, bottom]: readonly [Point, Point],
  { leastPixels, mostLean }: { readonly leastPixels: number; readonly mostLean: number },
): { readonly expected: string; readonly hint: string } | undefined {
  const [x, y] = [bottom[0] - top[0], bottom[1] - top[1]];
  if (y <= 0)
    return {
      expected: 'a bottom below the top',
      hint: 'its bottom is above its top; pixels count down from the top',
    };
  const long = Math.hypot(x, y);
  if (long < leastPixels)
    return {
      expected: `a string at least ${String(leastPixels)} pixels long`,
      hint: `it is ${String(Math.round(long))} pixels long: mark it higher up and lower down`,
    };
  const lean = (Math.atan2(Math.abs(x), y) * 180) / Math.PI;
  if (lean <= mostLean) return undefined;
  return {
    expected: `a string that hangs within ${String(mostLean)} degrees of upright`,
    hint: `it leans by ${String(Math.round(lean))} degrees`,
  };
}
