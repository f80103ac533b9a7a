/** The corners of a flat sheet in the photo block. */
import { apart, type Corners } from '../math/sheet-corners.ts';
import { pixelIn } from './photo-tree.ts';
import type { Block } from '../yaml/tree.ts';

/** undefined unless four can be read. */
export function cornersAt({ corners }: Block): Corners | undefined {
  if (!Array.isArray(corners) || corners.length !== 4) return undefined;
  const read = corners.map(pixelIn);
  return read.includes(undefined) ? undefined : (read as unknown as Corners);
}

/** Mean of upper and lower edge, in pixels. */
export const widthOf = ([a, b, c, d]: Corners): number => (apart(a, b) + apart(c, d)) / 2;
