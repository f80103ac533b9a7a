/** JPEG and PNG from parts that may be missing, doubled, mis-sized or damaged; and Exif. */
import { pictureLimits, pictureOf } from '../../../src/photo/pixels/picture.ts';
import type { Random } from '../../../src/math/random.ts';
import { happens, pick, whole } from '../../support/draw.ts';
import { damagedBytes } from '../damage/damage.ts';
import { steers } from '../hold-output.ts';
import { kept } from '../seeds.ts';
import { hold, type Standing, type Target } from '../target.ts';

const two = (value: number): Buffer => Buffer.from([(value >> 8) & 255, value & 255]);
const four = (value: number): Buffer => Buffer.concat([two(value >>> 16), two(value & 65535)]);

/** Its length is right or nearly so. */
function segment(marker: number, body: Buffer, chance: Random): Buffer {
  const length = happens(chance, 0.93)
    ? body.length + 2
    : pick(chance, [0, 1, 2, body.length, body.length + 3, 65535]);
  return Buffer.concat([Buffer.from([0xff, marker]), two(length), body]);
}

function tiff(chance: Random): Buffer {
  const little = happens(chance, 0.5);
  const count = pick(chance, [0, 1, 1, 1, 2, 9, 65535]);
  const start = pick(chance, [8, 8, 8, 8, 0, 7, 26, 65535, 0xffffffff]);
  const entries = Array.from({ length: Math.min(count, 9) }, () => [
    ...[two(pick(chance, [0x0112, 0x0112, 0x010e, 0xffff])), two(pick(chance, [3, 3, 3, 4, 0]))],
    ...[four(pick(chance, [1, 1, 0, 0xffffffff])), two(pick(chance, [1, 3, 6, 8, 0, 9, 65535])), two(0)],
  ]).flat();
  const parts = [
    Buffer.from(little ? 'II' : 'MM'),
    two(pick(chance, [42, 42, 42, 43])),
    four(start),
    two(count),
    ...entries,
  ];
  const turned = little ? parts.map((part, i) => (i === 0 ? part : Buffer.from(part).reverse())) : parts;
  return Buffer.concat([...turned, Buffer.from([0, 0, 0, 0])]);
}

function jpeg(chance: Random): Buffer {
  const exif = (): Buffer =>
    segment(
      0xe1,
      Buffer.concat([Buffer.from(pick(chance, ['Exif\0\0', 'Exif\0\0', 'http:'])), tiff(chance)]),
      chance,
    );
  const side = (): Buffer => two(pick(chance, [1, 16, 640, 1600, 0, 65535]));
  const frame = (): Buffer =>
    segment(
      pick(chance, [0xc0, 0xc0, 0xc2, 0xc4, 0xcf]),
      Buffer.concat([Buffer.from([8]), side(), side(), Buffer.from([1, 1, 17, 0])]),
      chance,
    );
  const other = (): Buffer =>
    segment(
      pick(chance, [0xdb, 0xfe, 0xe0, 0x01, 0xd0, 0xff, 0x00, 0xd8]),
      Buffer.alloc(whole(chance, 0, 70), 0xff),
      chance,
    );
  const scan = (): Buffer =>
    Buffer.concat([
      segment(0xda, Buffer.from([1, 1, 0, 0, 63, 0]), chance),
      Buffer.from([1, 2, 0xff, 0, 0xff, 0xd0, 3]),
    ]);
  const parts = [exif, frame, scan].map((part) => part());
  for (let times = whole(chance, 0, 4); times > 0; times -= 1) {
    parts.splice(
      whole(chance, 0, parts.length),
      happens(chance, 0.2) ? 1 : 0,
      pick(chance, [exif, frame, other, other, scan])(),
    );
  }
  const end = happens(chance, 0.9) ? Buffer.from([0xff, 0xd9]) : Buffer.alloc(0);
  return Buffer.concat([Buffer.from([0xff, 0xd8]), ...parts, end]);
}

function png(chance: Random): Buffer {
  const chunk = (name: string, body: Buffer): Buffer =>
    Buffer.concat([
      four(happens(chance, 0.95) ? body.length : pick(chance, [0, 0x7fffffff, 0xffffffff, body.length + 1])),
      Buffer.from(name),
      body,
      four(0),
    ]);
  const side = (): Buffer => four(pick(chance, [1, 16, 640, 1600, 0, 0x7fffffff, 0xffffffff]));
  const head = (): Buffer => chunk('IHDR', Buffer.concat([side(), side(), Buffer.from([8, 2, 0, 0, 0])]));
  const other = (): Buffer =>
    pick(chance, [
      () => chunk('eXIf', tiff(chance)),
      () => chunk('tEXt', Buffer.from('a\0b')),
      () => chunk('I\0HD', Buffer.alloc(3)),
      head,
    ])();
  const parts = [head(), chunk('IDAT', Buffer.from([1, 2, 3])), chunk('IEND', Buffer.alloc(0))];
  for (let times = whole(chance, 0, 4); times > 0; times -= 1)
    parts.splice(whole(chance, 0, parts.length), happens(chance, 0.2) ? 1 : 0, other());
  return Buffer.concat([Buffer.from([0x89, 0x50, 0x4e, 0x47, 0x0d, 0x0a, 0x1a, 0x0a]), ...parts]);
}

function look(input: Buffer): Standing {
  const read = pictureOf(input);
  if (!read.ok) {
    hold(read.why !== '' && !steers.test(read.why), () => `cannot be read: ${JSON.stringify(read.why)}`);
    return 'faulty';
  }
  const { width, height, orientation } = read;
  const sized = [width, height].every((side) => Number.isInteger(side) && side > 0);
  hold(
    sized && width * height <= pictureLimits.pixels,
    () => `a size of ${String(width)} by ${String(height)}`,
  );
  hold(
    Number.isInteger(orientation) && orientation >= 1 && orientation <= 8,
    () => `an orientation of ${String(orientation)}`,
  );
  return 'good';
}

const order = kept('examples/orders/25-photo.yaml')
  .toString('utf8')
  .replace('photos/juniper-side.jpg', 'p.jpg');
const lines = [
  ['photo', 'o.yaml'],
  ['photo', 'o.yaml', '--format', 'json'],
  ['photo', '--pick', 'p.jpg', '--out', '-'],
  ['draw', 'o.yaml', '--on-photo', '--format', 'html'],
];

export function picturesTarget(): Target {
  const photo = kept('examples/orders/photos/juniper-side.jpg');
  return {
    name: 'pictures',
    file: 'p.jpg',
    beside: { 'o.yaml': Buffer.from(order) },
    seeds: [photo],
    change: (parents, chance) => {
      const kind = whole(chance, 0, 9);
      if (kind <= 3) return jpeg(chance);
      if (kind <= 6) return png(chance);
      return damagedBytes(kind === 7 ? photo : pick(chance, parents), chance);
    },
    look,
    lines: (_, __, chance) => (happens(chance, 0.04) ? [pick(chance, lines)] : []),
  };
}
