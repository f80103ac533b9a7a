/** What looks wrong with the marks, in plain words. */
import { apart } from '../math/sheet-corners.ts';
import type { Pixel, Reference } from '../order/photo-types.ts';
import { doubtful, type Doubt } from './doubt.ts';
import { plumbDoubts, referenceDoubts } from './doubts-measure.ts';
import { orderDoubts, swapDoubts } from './doubts-order.ts';
import { sizeDoubts } from './doubts-sizes.ts';
import { isPoint, stepsFor } from './landmarks.ts';
import type { Picked } from './state.ts';

export interface Known {
  /** undefined until complete. */
  readonly reference: Reference | undefined;
  readonly distance: number | undefined;
  readonly size: Pixel;
}

/** Refusals first. Each says what to do. */
export function doubtsOf(now: Picked, known: Known): Doubt[] {
  const { points } = now;
  const { reference } = known;
  const first = [
    ...referenceDoubts(reference),
    ...plumbDoubts(points),
    ...orderDoubts(points),
    ...samePlaces(now),
    ...swapDoubts(points),
  ];
  const isRefused = first.some((doubt) => doubt.refused);
  // Avoids reporting a misplaced mark twice.
  const all =
    isRefused || reference === undefined ? first : [...sizeDoubts(points, { ...known, reference }), ...first];
  return [...all.filter((doubt) => doubt.refused), ...all.filter((doubt) => !doubt.refused)];
}

function samePlaces(now: Picked): Doubt[] {
  const named = stepsFor(now.kind).flatMap(({ id, name }) => {
    const at = isPoint(id) ? now.points[id] : undefined;
    return at === undefined ? [] : [{ id, name, at }];
  });
  return named.flatMap(({ id, name, at }, i) =>
    named
      .slice(i + 1)
      // The underline may be marked at the groove itself.
      .filter((other) => !(id === 'girth-groove' && other.id === 'underline'))
      .filter((other) => apart(other.at, at) < 2)
      .map((other) => doubtful(`The marks for ${name} and ${other.name} are in the same place: move one.`)),
  );
}
