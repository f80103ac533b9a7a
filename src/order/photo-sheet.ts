/** Four corners of a flat sheet on a photo: whether they can be those of one seen from the front. */
import { photoBounds } from '../sources/photo-bounds.ts';
import { apart, pixelIn } from './photo-tree.ts';
import type { Pixel } from './photo-types.ts';
import type { Block } from './tree.ts';

type Corners = readonly [Pixel, Pixel, Pixel, Pixel];

const { leastEdge } = photoBounds;

/** The corners of a reference block, if there are four that can be read. */
export function cornersAt({ corners }: Block): Corners | undefined {
  if (!Array.isArray(corners) || corners.length !== 4) return undefined;
  const read = corners.map(pixelIn);
  return read.includes(undefined) ? undefined : (read as unknown as Corners);
}

/** Pixels of the upper and lower edge together, halved. */
export const widthOf = ([a, b, c, d]: Corners): number => (apart(a, b) + apart(c, d)) / 2;

/** What is wrong with the corners, if anything; `told` puts it in its place. */
export function cornerFaults<P>(
  corners: Corners | undefined,
  told: (words: { expected: string; hint?: string }) => P,
): P[] {
  if (corners === undefined) return [];
  const edges = corners.map((corner, i) => apart(corner, corners[(i + 1) % 4] ?? corner));
  const shortest = Math.min(...edges);
  if (shortest < leastEdge) {
    const hint = `the shortest is ${String(Math.round(shortest))} pixels long: too short for a scale`;
    return [told({ expected: `a sheet whose edges are at least ${String(leastEdge)} pixels long`, hint })];
  }
  const turns = corners.map((corner, i) => turn(corner, corners[(i + 1) % 4], corners[(i + 2) % 4]));
  if (turns.every((sense) => sense > 0)) return firstCorner(corners, told);
  if (turns.every((sense) => sense < 0)) {
    return [
      told({
        expected: 'corners clockwise as seen, from the top left',
        hint: 'they run the other way round',
      }),
    ];
  }
  return [
    told({
      expected: 'corners in turn round the sheet, none within the others',
      hint: 'the edges cross, or a corner is dented in',
    }),
  ];
}

/** Above zero for a turn clockwise as seen, since pixels count downward. */
function turn(a: Pixel, b: Pixel = a, c: Pixel = a): number {
  return (b[0] - a[0]) * (c[1] - b[1]) - (b[1] - a[1]) * (c[0] - b[0]);
}

/** The first edge is the upper one: it runs to the right, nearer to level than to upright. */
function firstCorner<P>(corners: Corners, told: (words: { expected: string; hint?: string }) => P): P[] {
  const [a, b] = corners;
  const isUpper = b[0] > a[0] && Math.abs(b[1] - a[1]) <= b[0] - a[0];
  return isUpper
    ? []
    : [
        told({
          expected: 'the top left corner of the sheet first',
          hint: 'the first two are its upper edge',
        }),
      ];
}
