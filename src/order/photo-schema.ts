/** The `photo` block: landmarks of a side photo and its scale. */
import * as z from 'zod/mini';
import { photoBounds } from '../numbers/photo-bounds.ts';
import { blockOf, length } from './key.ts';
import { freeText, jsonOf, plainNumber, wholeNumber, type Json, type Leaf } from './leaves.ts';
import type { Pixel, Reference } from './photo-types.ts';

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

function pair(number: Leaf<number>, expected: string) {
  return counted(number, 2, expected, (list): Pixel => [list[0] ?? 0, list[1] ?? 0]);
}

/** A list with a fixed count. */
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

// One block for both kinds: a choice would report faults against the first.
export const referenceKeys = {
  length: length({ about: 'length of the reference', ...photoBounds.referenceLength, example: '36 in' }),
  from: { read: place('one end') },
  to: { read: place('the other end') },
  width: length({ about: 'width of the sheet', ...photoBounds.sheetWidth, example: '8.5 in' }),
  height: length({ about: 'height of the sheet', ...photoBounds.sheetHeight, example: '11 in' }),
  corners: { read: corners },
};
const reference = blockOf(
  'something of known length in the picture, needed for the scale',
  referenceKeys,
  '{ length: 36 in, from: [812, 1404], to: [1533, 1399] }',
);
jsonOf.set(reference, {
  description: 'something of known length in the picture: a stick, or a flat sheet',
  oneOf: [
    { required: ['length', 'from', 'to'], not: { required: ['corners'] } },
    { required: ['width', 'height', 'corners'], not: { required: ['length'] } },
  ],
});

const always = true as const;
const plumbKeys = {
  top: { read: place('top of the string'), always, example: '[1137, 362]' },
  bottom: { read: place('bottom of the string'), always, example: '[1132, 695]' },
};

export const pictureName = freeText('name of the picture, kept next to the order file');

export const photoKeys = {
  file: { read: pictureName, always, example: 'side.jpg' },
  'image-size': { read: size, always, example: '[1600, 1200]' },
  reference: {
    read: reference,
    always,
    keys: referenceKeys,
    example: '{ length: 36 in, from: [644, 640], to: [956, 647] }',
  },
  'reference-depth': length({
    about: 'how much nearer to the camera the reference is than the near side of the barrel',
    min: -24,
    max: 24,
    example: '0 in',
  }),
  plumb: {
    read: blockOf(
      'plumb line, a string with a weight; shows how far the picture is turned',
      plumbKeys,
      '{ top: [300, 200], bottom: [305, 1500] }',
    ),
    keys: plumbKeys,
  },
  ring: {
    read: place('middle of the rigging ring, needed: the cinch hangs here'),
    always,
    example: '[728, 549]',
  },
  elbow: {
    read: place('back of the elbow, needed: the room starts here'),
    always,
    example: '[696, 673]',
  },
  'girth-groove': {
    read: place('girth groove on the underline, needed: the room ends here'),
    always,
    example: '[736, 698]',
  },
  // Spine and underline give barrel depth; the groove can replace the underline.
  spine: {
    read: place('top line above the groove; helps find the depth of the barrel'),
    example: '[741, 475]',
  },
  underline: {
    read: place('underline of the chest at the girth, unless the groove marks it'),
    example: '[736, 698]',
  },
  fork: { read: place('front of the fork; helps find the set-back'), example: '[725, 431]' },
  cantle: {
    read: place('front of the cantle; with the fork, gives the bar span'),
    example: '[830, 440]',
  },
  'camera-distance': length({
    about: 'camera to the near side of the barrel',
    ...photoBounds.cameraDistance,
    example: '12 ft',
  }),
};

const written = blockOf('landmarks of a side photo', photoKeys);

export const photo = z.pipe(
  written,
  z.transform(({ girthGroove: groove, reference, ...marks }: z.output<typeof written>) => ({
    ...marks,
    groove,
    reference: referenceOf(reference),
  })),
);

/** Already checked for completeness. */
function referenceOf({ length, from, to, width, height, corners }: z.output<typeof reference>): Reference {
  if (width !== undefined && height !== undefined && corners !== undefined) {
    return { kind: 'sheet', width, height, corners };
  }
  return { kind: 'stick', length: length ?? 0, from: from ?? [0, 0], to: to ?? [0, 0] };
}
