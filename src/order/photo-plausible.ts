/** Finds impossible photo landmarks: outside, too small, out of order. */
import { plumbFault } from '../math/plumb.ts';
import { apart, cornerFault } from '../math/sheet-corners.ts';
import { photoBounds } from '../numbers/photo-bounds.ts';
import type { Across } from './across.ts';
import { cornersAt } from './photo-sheet.ts';
import { sizeFaults } from './photo-sizes.ts';
import { fault, landmarks, photoPath, pixelAt, type Landmark, type Path } from './photo-tree.ts';
import type { Problem } from '../yaml/problem.ts';
import { isBlock, treeAt } from '../yaml/tree.ts';

const { leastPixels } = photoBounds;

/** None without a photo block. */
export function photoFaults(loaded: Across): Problem[] {
  if (!isBlock(treeAt(loaded.tree, photoPath))) return [];
  const outside = outsideFaults(loaded);
  const shape = [...referenceFaults(loaded), ...plumbFaults(loaded)];
  // Avoids reporting a misplaced mark twice.
  const order = outside.length > 0 ? [] : orderFaults(loaded);
  const rest = outside.length + shape.length + order.length > 0 ? [] : sizeFaults(loaded);
  return [...outside, ...shape, ...order, ...rest];
}

const places: readonly Path[] = [
  ...landmarks.map((name) => [name]),
  ...[0, 1, 2, 3].map((at) => ['reference', 'corners', at]),
  ['reference', 'from'],
  ['reference', 'to'],
  ['plumb', 'top'],
  ['plumb', 'bottom'],
];

function outsideFaults(loaded: Across): Problem[] {
  const size = pixelAt(loaded, ['image-size']);
  if (size === undefined) return [];
  const [width, height] = size;
  return places.flatMap((path) => {
    const at = pixelAt(loaded, path);
    if (at === undefined || (at[0] <= width && at[1] <= height)) return [];
    const turned =
      at[0] <= height && at[1] <= width ? { hint: 'is image-size for the picture on its side?' } : {};
    return [
      fault(loaded, path, {
        expected: `a place in the picture, at most [${String(width)}, ${String(height)}]`,
        ...turned,
      }),
    ];
  });
}

/** One kind, complete and large enough. */
function referenceFaults(loaded: Across): Problem[] {
  const reference = treeAt(loaded.tree, [...photoPath, 'reference']);
  if (!isBlock(reference)) return [];
  const has = (keys: readonly string[]): string[] => keys.filter((key) => Object.hasOwn(reference, key));
  const stick = has(['length', 'from', 'to']);
  const sheet = has(['width', 'height', 'corners']);
  const expected = 'length, from and to of a stick, or width, height and corners of a flat sheet';
  if (stick.length > 0 && sheet.length > 0)
    return [fault(loaded, ['reference'], { expected, hint: 'one of the two, not both' })];
  if (stick.length !== 3 && sheet.length !== 3) return [fault(loaded, ['reference'], { expected })];
  if (sheet.length === 3) {
    const corners = cornersAt(reference);
    const words = corners === undefined ? undefined : cornerFault(corners, photoBounds);
    return words === undefined ? [] : [fault(loaded, ['reference', 'corners'], words)];
  }
  const [from, to] = [pixelAt(loaded, ['reference', 'from']), pixelAt(loaded, ['reference', 'to'])];
  if (from === undefined || to === undefined || apart(from, to) >= leastPixels) return [];
  const hint = `it is ${String(Math.round(apart(from, to)))} pixels long: too short for a scale`;
  return [
    fault(loaded, ['reference', 'to'], {
      expected: `a reference at least ${String(leastPixels)} pixels long`,
      hint,
    }),
  ];
}

function plumbFaults(loaded: Across): Problem[] {
  const [top, bottom] = [pixelAt(loaded, ['plumb', 'top']), pixelAt(loaded, ['plumb', 'bottom'])];
  const words = top && bottom && plumbFault([top, bottom], photoBounds);
  return words === undefined ? [] : [fault(loaded, ['plumb', 'bottom'], words)];
}

function orderFaults(loaded: Across): Problem[] {
  const stands = (name: Landmark, way: 'above' | 'below', other: Landmark): Problem[] => {
    const [here, there] = [pixelAt(loaded, [name]), pixelAt(loaded, [other])];
    const down = here && there && (here[1] - there[1]) * (way === 'below' ? 1 : -1);
    if (down === undefined || down > 0) return [];
    const expected = `a place ${way} the ${other}: pixels count down from the top`;
    return [fault(loaded, [name], { expected })];
  };
  const upright = stands('underline', 'below', 'spine');
  if (upright.length > 0) return upright;
  const high = stands('ring', 'above', 'underline');
  return [
    ...high,
    ...stands('ring', 'below', 'spine'),
    ...stands('girth-groove', 'below', 'spine'),
    ...stands('elbow', 'below', 'spine'),
    ...(high.length > 0 ? [] : stands('ring', 'above', 'girth-groove')),
    ...facingFaults(loaded),
  ];
}

/** Elbow ahead of groove and fork ahead of cantle must agree. */
function facingFaults(loaded: Across): Problem[] {
  const [elbow, groove] = [pixelAt(loaded, ['elbow']), pixelAt(loaded, ['girth-groove'])];
  const [fork, cantle] = [pixelAt(loaded, ['fork']), pixelAt(loaded, ['cantle'])];
  if (elbow === undefined || groove === undefined) return [];
  const facing = Math.sign(elbow[0] - groove[0]);
  if (facing === 0)
    return [
      fault(loaded, ['elbow'], {
        expected: 'a place ahead of the girth groove: this one is straight above it',
      }),
    ];
  const way = facing > 0 ? 'right' : 'left';
  const hint = `by elbow and girth-groove the horse faces ${way}: are two places swapped?`;
  if (fork !== undefined && cantle !== undefined && (fork[0] - cantle[0]) * facing <= 0) {
    return [fault(loaded, ['fork'], { expected: 'a fork ahead of the cantle', hint })];
  }
  if (fork === undefined && cantle !== undefined && (elbow[0] - cantle[0]) * facing <= 0) {
    return [fault(loaded, ['cantle'], { expected: 'a cantle behind the elbow', hint })];
  }
  return [];
}
