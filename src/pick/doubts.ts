/** What looks wrong with the marks, in plain words: the order would be refused for it, or read wrongly. */
import type { Pixel, Reference } from '../order/photo-types.ts';
import { pixelsAnInch } from '../photo/camera.ts';
import { decimals } from '../units/print.ts';
import { isPoint, stepsFor } from './landmarks.ts';
import type { Picked, Points } from './state.ts';

export interface Known {
  /** Undefined until it is whole. */
  readonly reference: Reference | undefined;
  readonly distance: number | undefined;
  readonly size: Pixel;
}

/** The same bounds as those of the order's door, so that a block without doubts is read; a test holds them together. Pixels, degrees, inches. */
const bounds = {
  stick: 100,
  edge: 60,
  plumb: 100,
  lean: 20,
  room: [1, 9],
  depth: [14, 36],
  /** Pixels an inch across over those up, of a sheet seen from the front, or over their inverse. */
  aspect: 1.33,
  ring: [-3, 16],
  view: 120,
} as const;

const apart = (a: Pixel, b: Pixel): number => Math.hypot(a[0] - b[0], a[1] - b[1]);
const rough = (value: number): string => decimals(value, 1);

/** Pixels an inch as the door takes them: of a sheet by its upper and lower edge. */
function roughScale(reference: Reference): number {
  if (reference.kind === 'stick') return pixelsAnInch(reference);
  const [a, b, c, d] = reference.corners;
  return (apart(a, b) + apart(c, d)) / 2 / reference.width;
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

function referenceDoubts(reference: Reference | undefined): string[] {
  if (reference === undefined) return [];
  if (reference.kind === 'sheet') return sheetDoubts(reference);
  const long = apart(reference.from, reference.to);
  if (long >= bounds.stick) return [];
  return [
    `The measure is only ${String(Math.round(long))} pixels long: too short for a scale. Check its ends, or take a photo from nearer.`,
  ];
}

function sheetDoubts({ corners, width, height }: Extract<Reference, { kind: 'sheet' }>): string[] {
  const [a, b, c, d] = corners;
  const shortest = Math.min(apart(a, b), apart(b, c), apart(c, d), apart(d, a));
  if (shortest < bounds.edge)
    return [
      `An edge of the sheet is only ${String(Math.round(shortest))} pixels long: too short for a scale.`,
    ];
  const turn = (p: Pixel, q: Pixel, r: Pixel): number =>
    (q[0] - p[0]) * (r[1] - q[1]) - (q[1] - p[1]) * (r[0] - q[0]);
  if (Math.min(turn(a, b, c), turn(b, c, d), turn(c, d, a), turn(d, a, b)) <= 0)
    return [
      'The corners do not go round the sheet clockwise: top left, top right, bottom right, bottom left.',
    ];
  if (b[0] <= a[0] || Math.abs(b[1] - a[1]) > b[0] - a[0])
    return ['The first two corners must be the upper edge of the sheet, from left to right.'];
  const aspect = (((apart(a, b) + apart(c, d)) / (apart(b, c) + apart(d, a))) * height) / width;
  if (Math.max(aspect, 1 / aspect) <= bounds.aspect) return [];
  return ['The sheet does not look as wide and as high as it should: are its width and height swapped?'];
}

function plumbDoubts({ 'plumb-top': top, 'plumb-bottom': bottom }: Points): string[] {
  if (top === undefined || bottom === undefined) return [];
  const [x, y] = [bottom[0] - top[0], bottom[1] - top[1]];
  if (y <= 0) return ['The bottom of the plumb line is above its top: swap them.'];
  if (Math.hypot(x, y) < bounds.plumb)
    return ['The plumb line is too short to tell anything: click it higher up and lower down, or skip it.'];
  const lean = (Math.atan2(Math.abs(x), y) * 180) / Math.PI;
  if (lean <= bounds.lean) return [];
  return [
    `The plumb line leans by ${String(Math.round(lean))} degrees: it cannot be one. Check it, or skip it.`,
  ];
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

function sizeDoubts(
  points: Points,
  { reference, distance, size }: Known & { readonly reference: Reference },
): string[] {
  const scale = roughScale(reference);
  const { ring, elbow, 'girth-groove': groove, spine, underline } = points;
  const doubts: string[] = [];
  if (elbow !== undefined && groove !== undefined)
    doubts.push(...forwardDoubts({ ring, elbow, groove }, scale));
  if (spine !== undefined && underline !== undefined) {
    const depth = (underline[1] - spine[1]) / scale;
    if (outside(depth, bounds.depth))
      doubts.push(`The barrel would be ${rough(depth)} in deep; 20 to 32 is usual. ${hint}`);
  }
  if (distance !== undefined) {
    const across = Math.max(...size) / scale;
    const angle = (2 * Math.atan(across / 2 / distance) * 180) / Math.PI;
    if (angle > bounds.view) doubts.push('No camera sees that much from so near: check the camera distance.');
  }
  return doubts;
}

const hint = 'Check these marks, the ends of the measure and its length.';
const outside = (value: number, [least, most]: readonly [number, number]): boolean =>
  value < least || value > most;

function forwardDoubts(
  { ring, elbow, groove }: { ring: Pixel | undefined; elbow: Pixel; groove: Pixel },
  scale: number,
): string[] {
  const room = Math.abs(elbow[0] - groove[0]) / scale;
  const behind = ring === undefined ? 0 : ((elbow[0] - ring[0]) * Math.sign(elbow[0] - groove[0])) / scale;
  return [
    ...(outside(room, bounds.room)
      ? [`Room behind the elbow would be ${rough(room)} in; 2 to 7 is usual. ${hint}`]
      : []),
    ...(outside(behind, bounds.ring)
      ? [
          `The ring would hang ${rough(Math.abs(behind))} in ${behind < 0 ? 'ahead of' : 'behind'} the elbow. ${hint}`,
        ]
      : []),
  ];
}
