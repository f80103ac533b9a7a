/** Size and orientation of pictures against sharp; damaged files. */
import fs from 'node:fs';
import path from 'node:path';
import sharp from 'sharp';
import { describe, expect, test } from 'vitest';
import { besideOrder, readPhoto } from '../../src/cli/photo/picture.ts';
import { seededRandom } from '../../src/math/random.ts';
import { pictureLimits, pictureOf } from '../../src/photo/pixels/picture.ts';
import { ownFolder } from '../support/own-folder.ts';

const folder = ownFolder();

type Kind = 'jpeg' | 'progressive' | 'png';

/** 6 wide and 4 high as stored. */
async function made(kind: Kind, orientation?: number): Promise<Buffer> {
  const plain = sharp({ create: { width: 6, height: 4, channels: 3, background: '#7a5230' } });
  const held = orientation === undefined ? plain : plain.withMetadata({ orientation });
  if (kind === 'png') return held.png().toBuffer();
  return held.jpeg({ progressive: kind === 'progressive' }).toBuffer();
}

const kinds: readonly Kind[] = ['jpeg', 'progressive', 'png'];
const orientations = [1, 2, 3, 4, 5, 6, 7, 8];

describe.each(kinds)('%s', (kind) => {
  test.each(orientations)('orientation %i: upright size as sharp turns it', async (orientation) => {
    const bytes = await made(kind, orientation);
    const { info } = await sharp(bytes).rotate().toBuffer({ resolveWithObject: true });
    const read = pictureOf(bytes);
    expect(read).toMatchObject({
      ok: true,
      kind: kind === 'png' ? 'png' : 'jpeg',
      width: info.width,
      height: info.height,
      orientation,
    });
    expect([info.width, info.height]).toEqual(orientation >= 5 ? [4, 6] : [6, 4]);
  });

  test('without Exif it stands upright', async () => {
    expect(pictureOf(await made(kind))).toMatchObject({ ok: true, width: 6, height: 4, orientation: 1 });
  });

  test('cut off anywhere it is told, never taken and never thrown over', async () => {
    const bytes = await made(kind, 6);
    for (let length = 0; length < bytes.length; length += 1) {
      expect([length, pictureOf(bytes.subarray(0, length)).ok]).toEqual([length, false]);
    }
    expect(pictureOf(bytes.subarray(0, bytes.length - 1))).toMatchObject({
      why: 'the picture is cut off: its end is missing',
    });
  });

  test('damaged anywhere nothing is thrown', async () => {
    const bytes = await made(kind, 6);
    const random = seededRandom(5);
    for (let run = 0; run < 3_000; run += 1) {
      const damaged = Buffer.from(bytes);
      for (let i = 0; i < 3; i += 1)
        damaged[Math.floor(random.uniform() * bytes.length)] = Math.floor(random.uniform() * 256);
      const read = pictureOf(damaged);
      if (!read.ok) continue;
      expect(read.width * read.height).toBeGreaterThan(0);
      expect(orientations).toContain(read.orientation);
    }
  });

  test('what is added behind the end does no harm', async () => {
    expect(pictureOf(Buffer.concat([await made(kind, 3), Buffer.from('more')]))).toMatchObject({
      ok: true,
      orientation: 3,
    });
  });
});

describe('refused, with the reason', () => {
  test.each([
    ['nothing', Buffer.alloc(0), 'it is empty'],
    ['a text', Buffer.from('order: 1'), 'it is neither a JPEG nor a PNG'],
    ['a GIF', Buffer.from('GIF89a\u0001\0\u0001\0'), 'it is neither a JPEG nor a PNG'],
    ['a JPEG without a frame', Buffer.from([0xff, 0xd8, 0xff, 0xd9]), 'it is not a whole JPEG'],
    [
      'a JPEG that goes astray',
      Buffer.from([0xff, 0xd8, 0xff, 0xe0, 0, 2, 1, 1, 1]),
      'it is not a whole JPEG',
    ],
  ])('%s', (_, bytes, why) => {
    const read = pictureOf(bytes);
    expect(read.ok ? '' : read.why).toContain(why);
  });

  test('too large, too many pixels', async () => {
    const bytes = await made('jpeg');
    expect(pictureOf(bytes, { ...pictureLimits, bytes: bytes.length - 1 })).toMatchObject({ ok: false });
    expect(pictureOf(bytes, { ...pictureLimits, pixels: 23 })).toMatchObject({
      ok: false,
      why: expect.stringContaining('too many pixels') as string,
    });
    expect(pictureOf(bytes, { bytes: bytes.length, pixels: 24 })).toMatchObject({ ok: true });
  });

  test('a size of millions that a few bytes claim is not taken', async () => {
    const bytes = await made('png');
    bytes.writeUInt32BE(2_000_000_000, 16);
    expect(pictureOf(bytes)).toMatchObject({ ok: false });
  });

  test('a folder, a pipe, nothing there', () => {
    expect(readPhoto(folder)).toMatchObject({ ok: false, why: 'it is not a plain file' });
    expect(readPhoto('/dev/zero')).toMatchObject({ ok: false, why: 'it is not a plain file' });
    expect(readPhoto(path.join(folder, 'none.jpg'))).toMatchObject({
      ok: false,
      why: 'there is no such file',
    });
  });

  test('a file is read no further than the limit', () => {
    const file = path.join(folder, 'huge.jpg');
    fs.writeFileSync(file, Buffer.alloc(3000, 0xff));
    expect(readPhoto(file, { bytes: 2000, pixels: 1e6 })).toMatchObject({
      ok: false,
      why: expect.stringContaining('too large') as string,
    });
  });
});

describe('where a picture may lie', () => {
  test('beside the order and below, and nowhere else', () => {
    const home = path.join(folder, 'orders');
    fs.mkdirSync(path.join(home, 'photos'), { recursive: true });
    fs.writeFileSync(path.join(home, 'photos', 'a.jpg'), '');
    fs.writeFileSync(path.join(folder, 'outside.jpg'), '');
    fs.symlinkSync(path.join(folder, 'outside.jpg'), path.join(home, 'link.jpg'));
    fs.symlinkSync(folder, path.join(home, 'up'));
    fs.symlinkSync('photos/a.jpg', path.join(home, 'within.jpg'));
    const at = (file: string) => besideOrder(file, home);
    expect(at('photos/a.jpg')).toEqual({ is: 'there', path: path.join(home, 'photos', 'a.jpg') });
    expect(at('./photos/../photos/a.jpg')).toMatchObject({ is: 'there' });
    expect(at('within.jpg')).toMatchObject({ is: 'there' });
    expect(at('..picture.jpg')).toEqual({ is: 'absent' });
    expect(at('photos/none.jpg')).toEqual({ is: 'absent' });
    for (const file of [
      '../outside.jpg',
      'photos/../../outside.jpg',
      path.join(folder, 'outside.jpg'),
      '/etc/passwd',
      'C:\\photos\\a.jpg',
      'link.jpg',
      'up/outside.jpg',
      '.',
      '..',
    ]) {
      expect([file, at(file).is]).toEqual([file, 'fault']);
    }
  });

  test('the folder of the orders may itself be a link', () => {
    const real = path.join(folder, 'real');
    fs.mkdirSync(real);
    fs.writeFileSync(path.join(real, 'a.jpg'), '');
    fs.symlinkSync(real, path.join(folder, 'linked'));
    expect(besideOrder('a.jpg', path.join(folder, 'linked'))).toEqual({
      is: 'there',
      path: path.join(real, 'a.jpg'),
    });
  });
});
