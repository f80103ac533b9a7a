/** From the flattened side of the horse to its cropped photo. */
import { angleToStation } from '../../math/ellipse.ts';
import type { Facts } from '../../horse/facts.ts';
import { sideToPixel } from '../read/lengths.ts';
import type { Box } from '../pixels/raster.ts';
import type { PhotoReading } from '../read/reading.ts';
import type { Place, Point, Shape } from '../../draw/scene.ts';

/** Around the landmarks, in barrel depths [choice]. */
const around = { side: 0.42, above: 0.12, below: 0.22 };
/** Greatest height over width, for phones [choice]. */
const highest = 0.82;

/** The part around the girth, whole pixels. */
export function partOf({ photo, stand, guess }: PhotoReading): Box {
  const [wide, high] = photo.imageSize;
  const { groove, underline = groove } = photo;
  const inch = stand.camera.focal / stand.camera.distance;
  const spine = photo.spine ?? [groove[0], Math.max(0, groove[1] - 2 * guess.ellipse.halfDepth * inch)];
  const marks = [photo.ring, photo.elbow, groove, spine, underline];
  const depth = Math.abs(underline[1] - spine[1]);
  const [xs, ys] = [marks.map(([x]) => x), marks.map(([, y]) => y)];
  const top = Math.max(0, Math.floor(Math.min(...ys) - around.above * depth));
  const bottom = Math.min(high, Math.ceil(Math.max(...ys) + around.below * depth));
  const left = Math.min(...xs) - around.side * depth;
  const right = Math.max(...xs) + around.side * depth;
  const spare = Math.max(0, (bottom - top) / highest - (right - left)) / 2;
  const from = Math.max(0, Math.floor(left - spare));
  const to = Math.min(wide, Math.ceil(right + spare));
  return { x: from, y: top, width: to - from, height: bottom - top };
}

/** Maps inches forward of the groove and up the skin to points; the crop is `width` points wide. */
export function placeOnPhoto(
  reading: PhotoReading,
  { barrel }: Facts,
  shown: { part: Box; width: number },
): Place {
  const { part, width } = shown;
  const factor = width / part.width;
  const least = lowestSeen(reading, barrel);
  return ([forward, station]) => {
    const [x, y] = sideToPixel(reading, barrel.ellipse, { forward, station: Math.max(least, station) });
    return [(x - part.x) * factor, (y - part.y) * factor];
  };
}

/** The lowest station the camera sees, where its line of sight touches the barrel. */
export function lowestSeen({ stand }: PhotoReading, { ellipse }: Facts['barrel']): number {
  const { halfWidth } = ellipse;
  return angleToStation(ellipse, Math.asin(halfWidth / (stand.camera.distance + halfWidth)));
}

/** Inches; straight lines curve on a photo. */
const PIECE = 0.5;

/** Maps a shape in inches to the photo, in short pieces. */
export function bent(shape: Shape, place: Place): Shape {
  if (shape.kind === 'line') return { ...shape, points: inPieces(shape.points).map(place) };
  if (shape.kind !== 'area') return shape;
  const closed = [...shape.points, ...shape.points.slice(0, 1)];
  return { ...shape, points: inPieces(closed).slice(0, -1).map(place) };
}

function inPieces(points: readonly Point[]): Point[] {
  return points.flatMap(([x, s], i): Point[] => {
    const next = points[i + 1];
    if (next === undefined) return [[x, s]];
    const count = Math.max(1, Math.ceil(Math.hypot(next[0] - x, next[1] - s) / PIECE));
    return Array.from({ length: count }, (_, at): Point => [
      x + ((next[0] - x) * at) / count,
      s + ((next[1] - s) * at) / count,
    ]);
  });
}
