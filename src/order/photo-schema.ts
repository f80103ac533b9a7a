/** What the `photo` block of an order may say: where the landmarks of a side photo lie, and what gives the scale. */
import * as z from 'zod/mini';
import { photoBounds } from '../numbers/photo-bounds.ts';
import { block, freeText, jsonOf, plainNumber, wholeNumber, type Json, type Leaf } from './leaves.ts';
import { measure, ranges } from './measure.ts';
import type { Photo, Pixel, Reference } from './photo-types.ts';

const maybe = z.optional;

const sides = photoBounds.imageSide;

const place = (about: string) =>
  pair(
    plainNumber({ min: 0, max: sides.max, about: 'pixels' }),
    `${about}, as [from the left, from the top] in pixels`,
  );
const size = pair(
  wholeNumber({ ...sides, about: 'pixels' }),
  'width and height of the upright picture in pixels, such as [4032, 3024]',
);

/** Two numbers in brackets. */
function pair(number: Leaf<number>, expected: string) {
  return counted(number, 2, expected, (list): Pixel => [list[0] ?? 0, list[1] ?? 0]);
}

/** A list of so many entries, neither more nor fewer. */
function counted<T, U>(
  ...[entry, count, expected, turn]: [z.ZodMiniType<T>, number, string, (list: readonly T[]) => U]
) {
  const list = z.array(entry, expected);
  const json: Json = { description: expected, minItems: count, maxItems: count };
  jsonOf.set(list, json);
  const schema = z.pipe(
    list,
    z.transform((entries: T[], context): U => {
      if (entries.length === count) return turn(entries);
      const hint = `there ${entries.length === 1 ? 'is 1 entry' : `are ${String(entries.length)} entries`}`;
      context.issues.push({ code: 'custom', input: entries, message: expected, params: { hint } });
      return z.NEVER;
    }),
  );
  jsonOf.set(schema, json);
  return schema;
}

const corners = counted(
  place('corner'),
  4,
  'four corners, clockwise from the top left of the sheet, as [[x, y], [x, y], [x, y], [x, y]] in pixels',
  (list): readonly [Pixel, Pixel, Pixel, Pixel] => list as unknown as readonly [Pixel, Pixel, Pixel, Pixel],
);

// One block for both kinds: of a choice of two, faults of the second would be told as if the first were meant.
const reference = block(
  'a thing of known length in the picture, needed: it gives the scale',
  {
    length: maybe(measure(ranges.referenceLength)),
    from: maybe(place('one end')),
    to: maybe(place('the other end')),
    width: maybe(measure(ranges.sheetWidth)),
    height: maybe(measure(ranges.sheetHeight)),
    corners: maybe(corners),
  },
  '{ length: 36 in, from: [812, 1404], to: [1533, 1399] }',
);
jsonOf.set(reference, {
  description: 'a thing of known length in the picture: a stick, or a flat sheet',
  oneOf: [
    { required: ['length', 'from', 'to'], not: { required: ['corners'] } },
    { required: ['width', 'height', 'corners'], not: { required: ['length'] } },
  ],
});

export const pictureName = freeText('name of the picture, beside the order file');

export const photo = block('landmarks of a side photo', {
  file: pictureName,
  'image-size': size,
  reference,
  'reference-depth': maybe(measure(ranges.referenceDepth)),
  plumb: maybe(
    block(
      'the plumb line, a string with a weight, which tells how far the picture is turned',
      { top: place('top of the string'), bottom: place('bottom of the string') },
      '{ top: [300, 200], bottom: [305, 1500] }',
    ),
  ),
  ring: place('middle of the rigging ring, needed: it tells where the cinch hangs'),
  elbow: place('back of the elbow, needed: the room is counted from it'),
  'girth-groove': place('girth groove on the underline, needed: the room is counted to it'),
  spine: maybe(place('top line above the groove, which helps to tell the depth of the barrel')),
  underline: maybe(place('underline of the chest at the girth, where it is not marked as the groove')),
  fork: maybe(place('front of the fork, which helps to tell the set-back')),
  cantle: maybe(place('front of the cantle, which with the fork tells the bar span')),
  'camera-distance': maybe(measure(ranges.cameraDistance)),
});

type WrittenPhoto = z.output<typeof photo>;

/** From keys as written to the names inside the program; the door has seen to it that the reference is whole. */
export function photoOf(written: WrittenPhoto | undefined): Photo | undefined {
  if (written === undefined) return undefined;
  const { file, plumb, ring, elbow, spine, underline, fork, cantle } = written;
  return {
    file,
    imageSize: written['image-size'],
    reference: referenceOf(written.reference),
    referenceDepth: written['reference-depth'],
    plumb,
    ring,
    elbow,
    groove: written['girth-groove'],
    spine,
    underline,
    fork,
    cantle,
    cameraDistance: written['camera-distance'],
  };
}

function referenceOf({ length, from, to, width, height, corners }: WrittenPhoto['reference']): Reference {
  if (width !== undefined && height !== undefined && corners !== undefined) {
    return { kind: 'sheet', width, height, corners };
  }
  return { kind: 'stick', length: length ?? 0, from: from ?? [0, 0], to: to ?? [0, 0] };
}
