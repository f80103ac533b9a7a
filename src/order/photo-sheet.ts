/** The corners of a flat sheet as they stand in the photo block. */
import { apart, type Corners } from '../math/sheet-corners.ts';
import { pixelIn } from './photo-tree.ts';
import type { Block } from '../yaml/tree.ts';

/** The corners of a reference block, if there are four that can be read. */
export function cornersAt({ corners }: Block): Corners | undefined {
  if (!Array.isArray(corners) || corners.length !== 4) return undefined;
  const read = corners.map(pixelIn);
  return read.includes(undefined) ? undefined : (read as unknown as Corners);
}

/** Pixels of the upper and lower edge together, halved. */
export const widthOf = ([a, b, c, d]: Corners): number => (apart(a, b) + apart(c, d)) / 2;
