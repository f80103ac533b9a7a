/** What would make a side photo surer, one step at a time. */
import { readLandmarks, type PhotoReading, type SeenName } from '../photo/read/reading.ts';
import type { Photo } from '../order/photo-types.ts';
import type { Model } from '../numbers/numbers.ts';
import type { Facts } from './facts.ts';

/** A step for the next picture, and the spreads it leaves, inches. */
export interface Surer {
  readonly what:
    | 'a plumb line'
    | 'a camera distance that was paced'
    | 'a reference at a depth known to a quarter inch'
    | 'a line of sight square to the horse'
    | 'clicks with the picture enlarged';
  readonly sd: Readonly<Partial<Record<SeenName, number>>>;
}

interface Better {
  readonly what: Surer['what'];
  readonly open: (photo: Photo) => boolean;
  readonly photo?: (photo: Photo, model: Model) => Partial<Photo>;
  readonly model?: (model: Model) => Partial<Model>;
}

const ways: readonly Better[] = [
  {
    what: 'a plumb line',
    open: ({ plumb }) => plumb === undefined,
    model: (model) => ({ 'photo-roll-sd': model['photo-plumb-sd'] }),
  },
  {
    what: 'a camera distance that was paced',
    open: ({ cameraDistance }) => cameraDistance === undefined,
    photo: (_, model) => ({ cameraDistance: model['photo-distance'] }),
  },
  {
    what: 'a reference at a depth known to a quarter inch',
    open: () => true,
    model: () => ({ 'photo-reference-depth-sd': 0.25 }),
  },
  {
    what: 'a line of sight square to the horse',
    open: () => true,
    // Half: a helper looks along the horse and directs the camera.
    model: (model) => ({ 'photo-yaw-sd': model['photo-yaw-sd'] / 2 }),
  },
  {
    what: 'clicks with the picture enlarged',
    open: () => true,
    model: (model) => ({ 'photo-click-sd': model['photo-click-sd'] / 2 }),
  },
];

/** Steps still open. */
export function surerPhoto({ photo: reading, model }: Facts): Surer[] {
  if (reading === undefined) return [];
  return ways
    .filter(({ open }) => open(reading.photo))
    .map(({ what, photo, model: change }) => {
      const better = { ...reading.photo, ...photo?.(reading.photo, model) };
      const { seen } = readLandmarks(better, reading.guess, { ...model, ...change?.(model) });
      return { what, sd: spreads(seen) };
    });
}

function spreads(seen: PhotoReading['seen']): Surer['sd'] {
  return Object.fromEntries(
    Object.entries(seen).flatMap(([name, entry]) => (entry === undefined ? [] : [[name, entry.sd]])),
  );
}
