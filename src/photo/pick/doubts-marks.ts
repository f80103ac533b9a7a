/** What looks wrong with where the marks are. */
import { plumbFault } from '../../math/plumb.ts';
import { apart, cornerFault } from '../../math/sheet-corners.ts';
import type { Pixel, Reference } from '../../order/photo-types.ts';
import { photoBounds as bounds } from '../../numbers/photo-bounds.ts';
import { isPoint, stepsFor } from './landmarks.ts';
import type { Picked, Points } from './state.ts';

export type Told = 'room' | 'depth' | 'ring';

export interface Doubt {
  /** What is wrong and what to do. */
  readonly text: string;
  /** Whether the order would be refused. */
  readonly refused: boolean;
  /** The length it reports: nothing else repeats it. */
  readonly tells?: Told;
}

/** The order would be refused. */
export const refused = (text: string, tells?: Told): Doubt => ({
  text,
  refused: true,
  ...(tells === undefined ? {} : { tells }),
});

/** The order would be read. */
export const doubtful = (text: string): Doubt => ({ text, refused: false });

/** All but those on sizes. */
export function markDoubts(now: Picked, reference: Reference | undefined): Doubt[] {
  const { points } = now;
  return [
    ...referenceDoubts(reference),
    ...plumbDoubts(points),
    ...orderDoubts(points),
    ...samePlaces(now),
    ...swapDoubts(points),
  ];
}

/** Horizontal over vertical scale of a sheet, or its inverse [choice]. */
const mostAspect = 1.33;

/** On the stick or sheet. */
export function referenceDoubts(reference: Reference | undefined): Doubt[] {
  if (reference === undefined) return [];
  if (reference.kind === 'sheet') return sheetDoubts(reference);
  const long = apart(reference.from, reference.to);
  if (long >= bounds.leastPixels) return [];
  return [
    refused(
      `The measure is only ${String(Math.round(long))} pixels long: too short for a scale. Check its ends, or take a closer photo.`,
    ),
  ];
}

function sheetDoubts({ corners, width, height }: Extract<Reference, { kind: 'sheet' }>): Doubt[] {
  const wrong = cornerFault(corners, bounds);
  if (wrong !== undefined)
    return [refused(`The corners of the sheet: ${wrong.hint}. Expected: ${wrong.expected}.`)];
  const [a, b, c, d] = corners;
  const aspect = (((apart(a, b) + apart(c, d)) / (apart(b, c) + apart(d, a))) * height) / width;
  if (Math.max(aspect, 1 / aspect) <= mostAspect) return [];
  return [doubtful('The sheet has the wrong shape: are its width and height swapped?')];
}

function plumbDoubts({ 'plumb-top': top, 'plumb-bottom': bottom }: Points): Doubt[] {
  const wrong = top && bottom && plumbFault([top, bottom], bounds);
  return wrong === undefined
    ? []
    : [refused(`The plumb line: ${wrong.hint}. Expected: ${wrong.expected}. Check it, or skip it.`)];
}

/** Above and below, ahead and behind. */
function orderDoubts(points: Points): Doubt[] {
  const { ring, elbow, 'girth-groove': groove, spine, underline } = points;
  const doubts: Doubt[] = [];
  const above = (high: Pixel | undefined, low: Pixel | undefined, told: string): void => {
    if (high !== undefined && low !== undefined && high[1] >= low[1]) doubts.push(refused(told));
  };
  above(spine, underline, 'The top line must be above the underline: are the two swapped?');
  // The rest lies between these two: one report is enough.
  if (doubts.length > 0) return doubts;
  above(spine, ring, 'The ring is above the top line of the back: check both.');
  above(ring, underline, 'The ring is below the underline: check both.');
  above(ring, groove, 'The ring is below the girth groove: check both.');
  above(spine, groove, 'The girth groove is above the top line: it belongs on the underline.');
  above(spine, elbow, 'The elbow is above the top line of the back: check both.');
  if (elbow === undefined || groove === undefined) return doubts;
  return [...doubts, ...facingDoubts(points, elbow, groove)];
}

function facingDoubts({ fork, cantle }: Points, elbow: Pixel, groove: Pixel): Doubt[] {
  const facing = Math.sign(elbow[0] - groove[0]);
  if (facing === 0)
    return [refused('The elbow is straight above the girth groove, not ahead of it. Check both.')];
  const way = facing > 0 ? 'right' : 'left';
  const swapped = `By elbow and girth groove the horse faces ${way}: are two marks swapped?`;
  const front = fork ?? elbow;
  return cantle !== undefined && (front[0] - cantle[0]) * facing <= 0 ? [refused(swapped)] : [];
}

function swapDoubts({ ring, elbow, 'girth-groove': groove, spine, underline }: Points): Doubt[] {
  const doubts: Doubt[] = [];
  if (ring !== undefined && elbow !== undefined && ring[1] > elbow[1])
    doubts.push(doubtful('The ring is lower than the elbow: are the two swapped?'));
  if (elbow === undefined || groove === undefined || spine === undefined || underline === undefined)
    return doubts;
  const nearElbow = ([x]: Pixel): boolean => Math.abs(x - elbow[0]) < Math.abs(x - groove[0]);
  if (nearElbow(spine) && nearElbow(underline))
    doubts.push(
      doubtful(
        'Top line and underline are marked at the elbow, not at the girth groove: are elbow and groove swapped?',
      ),
    );
  return doubts;
}

function samePlaces(now: Picked): Doubt[] {
  const named = stepsFor(now.kind).flatMap(({ id, name }) => {
    const at = isPoint(id) ? now.points[id] : undefined;
    return at === undefined ? [] : [{ id, name, at }];
  });
  return named.flatMap(({ id, name, at }, i) =>
    named
      .slice(i + 1)
      // The underline may be at the groove.
      .filter((other) => !(id === 'girth-groove' && other.id === 'underline'))
      .filter((other) => apart(other.at, at) < 2)
      .map((other) => doubtful(`The marks for ${name} and ${other.name} are in the same place: move one.`)),
  );
}
