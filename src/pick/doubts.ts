/** What looks wrong with the marks, in plain words: the order would be refused for it, or read wrongly. */
import type { Pixel, Reference } from '../order/photo-types.ts';
import { apart } from './doubt-bounds.ts';
import { plumbDoubts, referenceDoubts } from './doubts-measure.ts';
import { sizeDoubts } from './doubts-sizes.ts';
import { isPoint, stepsFor } from './landmarks.ts';
import type { Picked, Points } from './state.ts';

export interface Known {
  /** Undefined until it is whole. */
  readonly reference: Reference | undefined;
  readonly distance: number | undefined;
  readonly size: Pixel;
}

/** All doubts about what is there so far. Every one says what to do. */
export function doubtsOf(now: Picked, known: Known): string[] {
  const { points } = now;
  const { reference } = known;
  const first = [
    ...samePlaces(now),
    ...referenceDoubts(reference),
    ...plumbDoubts(points),
    ...orderDoubts(points),
  ];
  if (first.length > 0 || reference === undefined) return first;
  return sizeDoubts(points, { ...known, reference });
}

function samePlaces(now: Picked): string[] {
  const named = stepsFor(now.kind).flatMap(({ id, name }) => {
    const at = isPoint(id) ? now.points[id] : undefined;
    return at === undefined ? [] : [{ id, name, at }];
  });
  return named.flatMap(({ id, name, at }, i) =>
    named
      .slice(i + 1)
      // Where the barrel is narrowest its underline may well be marked twice.
      .filter((other) => !(id === 'girth-groove' && other.id === 'underline'))
      .filter((other) => apart(other.at, at) < 2)
      .map((other) => `The marks of ${name} and ${other.name} are in the same place: move one of them.`),
  );
}

/** Above and below, before and behind. */
function orderDoubts(points: Points): string[] {
  const { ring, elbow, 'girth-groove': groove, spine, underline, fork, cantle } = points;
  const doubts: string[] = [];
  const above = (high: Pixel | undefined, low: Pixel | undefined, told: string): void => {
    if (high !== undefined && low !== undefined && high[1] >= low[1]) doubts.push(told);
  };
  above(spine, underline, 'The top line must be above the underline.');
  above(spine, ring, 'The ring is above the top line of the back: check both.');
  above(ring, underline, 'The ring is below the underline: check both.');
  above(ring, groove, 'The ring is below the girth groove: check both.');
  above(spine, groove, 'The girth groove is above the top line: it belongs on the underline.');
  above(spine, elbow, 'The elbow is above the top line of the back: check both.');
  if (elbow === undefined || groove === undefined) return doubts;
  const facing = Math.sign(elbow[0] - groove[0]);
  if (facing === 0) return [...doubts, 'The elbow is straight above the girth groove: it lies ahead of it.'];
  const way = facing > 0 ? 'right' : 'left';
  const swapped = `Elbow and girth groove say that the horse looks to the ${way}: are two marks swapped?`;
  if (fork !== undefined && cantle !== undefined && (fork[0] - cantle[0]) * facing <= 0) doubts.push(swapped);
  if (fork === undefined && cantle !== undefined && (elbow[0] - cantle[0]) * facing <= 0)
    doubts.push(swapped);
  return doubts;
}
