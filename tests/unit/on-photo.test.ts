/** `draw --on-photo`: orientations, formats, refusals. */
import fs from 'node:fs';
import path from 'node:path';
import { parse } from 'parse5';
import sharp from 'sharp';
import { beforeAll, describe, expect, test } from 'vitest';
import { long } from '../support/cases.ts';
import { newFolder } from '../support/folder.ts';
import { photoFile } from '../support/make-photo.ts';
import { repoText, run } from '../support/run-cli.ts';

const shipped = repoText('examples/orders/25-photo.yaml');
const original = fs.readFileSync(photoFile);

/** Degrees turned right, then mirrored or not. */
const turns: Readonly<Record<number, readonly [number, boolean]>> = {
  2: [0, true],
  3: [180, false],
  4: [180, true],
  5: [90, true],
  6: [270, false],
  7: [270, true],
  8: [90, false],
};

function folderWith(picture: Buffer, { file = 'juniper-side.jpg', order = shipped } = {}): string {
  const folder = newFolder();
  fs.mkdirSync(path.join(folder, 'photos'));
  fs.writeFileSync(path.join(folder, 'photos', file), picture);
  fs.writeFileSync(path.join(folder, 'order.yaml'), order.replace('juniper-side.jpg', file));
  return folder;
}

async function drawn(folder: string, ...more: string[]): Promise<Buffer> {
  const { code, stderr, bytes, stdout } = await run(['draw', 'order.yaml', '--on-photo', ...more], {
    cwd: folder,
  });
  expect(stderr).toBe('');
  expect(code).toBe(0);
  return bytes.length > 0 ? bytes : Buffer.from(stdout);
}

const pixelsOf = async (bytes: Buffer): Promise<{ data: Buffer; width: number; height: number }> => {
  const { data, info } = await sharp(bytes).removeAlpha().raw().toBuffer({ resolveWithObject: true });
  return { data, width: info.width, height: info.height };
};

/** Mean difference, of 255. */
async function difference(a: Buffer, b: Buffer): Promise<number> {
  const [one, two] = [await pixelsOf(a), await pixelsOf(b)];
  expect([one.width, one.height]).toEqual([two.width, two.height]);
  let sum = 0;
  for (let i = 0; i < one.data.length; i++) sum += Math.abs(one.data[i]! - two.data[i]!);
  return sum / one.data.length;
}

describe('a photo that is drawn on', () => {
  let plain: Buffer;
  beforeAll(async () => {
    plain = await drawn(folderWith(original));
  });

  test('is a JPEG under 2 MB, without anything the camera noted', async () => {
    expect(plain.length).toBeLessThan(2_000_000);
    const { format, width, exif, icc, xmp } = await sharp(plain).metadata();
    expect({ format, width, exif, icc, xmp }).toEqual({
      format: 'jpeg',
      width: 1260,
      exif: undefined,
      icc: undefined,
      xmp: undefined,
    });
    expect((await sharp(original).metadata()).exif, 'there was something to leave out').toBeDefined();
  });

  test('shows the part of the photo that it should, by another decoder and scaler', async () => {
    const { width, height } = await sharp(plain).metadata();
    expect(height).toBeGreaterThan(width);
    // The part of the photo on the page.
    const { partOf } = await import('../../src/photo/drawn/place.ts');
    const { orderIn } = await import('../support/door.ts');
    const { sizeOrder } = await import('../../src/index.ts');
    const { defaultShop } = await import('../../src/cinch/default-shop.ts');
    const part = partOf(sizeOrder(orderIn(shipped), defaultShop).facts.photo!);
    const box = { left: part.x, top: part.y, width: part.width, height: part.height };
    const high = Math.round((part.height * 1260) / part.width);
    const asShown = await sharp(original)
      .extract(box)
      .resize(1260, high, { kernel: 'linear' })
      .png()
      .toBuffer();
    // The right third has no line on it.
    const region = { left: 900, top: 20, width: 340, height: high - 40 };
    const theirs = await sharp(asShown).extract(region).png().toBuffer();
    const ours = await sharp(plain).extract(region).png().toBuffer();
    expect(await difference(theirs, ours)).toBeLessThan(2.5);
    const elsewhere = await sharp(plain)
      .extract({ ...region, left: 880 })
      .png()
      .toBuffer();
    expect(await difference(theirs, elsewhere), 'a shift would be seen').toBeGreaterThan(2.5);
  });

  // Exif 2.32: rows and columns in the scene. sharp turns the file and notes it.
  test.each(long ? [2, 3, 4, 5, 6, 7, 8] : [6])(
    'is the same when the camera was held as in orientation %i',
    async (orientation) => {
      const lossless = await sharp(original).png().toBuffer();
      // Quarter turns right, then a mirror.
      const [turn, mirrored] = turns[orientation]!;
      const turned = await sharp(lossless).rotate(turn).png().toBuffer();
      const stored = await sharp(turned)
        .flop(mirrored)
        .jpeg({ quality: 95 })
        .withMetadata({ orientation })
        .toBuffer();
      const upright = await sharp(stored).autoOrient().png().toBuffer();
      expect(await difference(upright, lossless), 'the case is what it says').toBeLessThan(2);
      expect(await difference(await drawn(folderWith(stored)), plain)).toBeLessThan(3);
    },
  );

  test('may be a PNG, a progressive JPEG, or a gray one', async () => {
    const png = folderWith(await sharp(original).png().toBuffer(), { file: 'a.png' });
    expect(await difference(await drawn(png), plain)).toBeLessThan(2);
    if (long) {
      const progressive = await sharp(original).jpeg({ progressive: true, quality: 90 }).toBuffer();
      expect(await difference(await drawn(folderWith(progressive)), plain)).toBeLessThan(3);
    }
    const gray = await drawn(folderWith(await sharp(original).greyscale().jpeg().toBuffer()));
    expect((await sharp(gray).metadata()).width).toBe(1260);
  });

  test('as PNG stays under 2 MB, whatever the photo shows', async () => {
    const noise = { mean: 128, sigma: 60, type: 'gaussian' as const };
    const wild = await sharp({
      create: { width: 1600, height: 1200, channels: 3, background: '#888', noise },
    })
      .jpeg({ quality: 98 })
      .toBuffer();
    const folder = folderWith(wild);
    const png = await drawn(folder, '--format', 'png');
    expect((await sharp(png).metadata()).format).toBe('png');
    expect(png.length).toBeLessThan(2_000_000);
    if (long) expect((await drawn(folder)).length).toBeLessThan(2_000_000);
  });

  test('as HTML needs nothing else, and a name in it stays text', async () => {
    const order = shipped.replace('name: Juniper', 'name: "<img src=x onerror=alert(1)></desc><script>"');
    const page = (await drawn(folderWith(original, { order }), '--format', 'html')).toString();
    expect(page).toContain("default-src 'none'; img-src data:; style-src 'unsafe-inline'");
    const names: string[] = [];
    const walk = (node: object): void => {
      const { tagName, childNodes } = node as { tagName?: string; childNodes?: object[] };
      if (tagName !== undefined) names.push(tagName);
      childNodes?.forEach(walk);
    };
    walk(parse(page));
    expect(names.filter((name) => ['script', 'img', 'iframe', 'object'].includes(name))).toEqual([]);
    expect(names.filter((name) => name === 'image')).toHaveLength(1);
    expect(page.match(/data:image\/jpeg;base64,/g)).toHaveLength(1);
  });

  function twoOrders(): { folder: string; all: readonly string[] } {
    const folder = folderWith(original);
    fs.writeFileSync(path.join(folder, 'other.yaml'), shipped.replace('2425', '2426'));
    fs.mkdirSync(path.join(folder, 'out'));
    return { folder, all: ['draw', 'order.yaml', 'other.yaml', '--on-photo'] };
  }

  test('several orders: a file each', async () => {
    const { folder, all } = twoOrders();
    const one = await run(all, { cwd: folder });
    expect(one.code).toBe(2);
    expect(one.stderr).toContain('holds one picture; there are 2 orders');
    expect((await run([...all, '--out-dir', 'out'], { cwd: folder })).code).toBe(0);
    expect(fs.readdirSync(path.join(folder, 'out')).sort()).toEqual(['order-2425.jpeg', 'order-2426.jpeg']);
  });

  test.runIf(long)('several orders: one page', async () => {
    const { folder, all } = twoOrders();
    const page = await run([...all, '--format', 'html'], { cwd: folder });
    expect(page.stdout.match(/<article/g)).toHaveLength(2);
  });
});

describe('what cannot be drawn on is told', () => {
  const fails = async (
    folder: string,
    ...more: string[]
  ): Promise<{ code: number; stderr: string; bytes: Buffer }> =>
    run(['draw', 'order.yaml', '--on-photo', ...more], { cwd: folder });

  test('an order without a photo block', async () => {
    const folder = folderWith(original, { order: shipped.slice(0, shipped.indexOf('\nphoto:') + 1) });
    const { code, stderr } = await fails(folder);
    expect(code).toBe(2);
    expect(stderr).toContain('order 2425 has no "photo" block');
    expect(stderr).toContain('photo --pick');
  });

  test('a picture outside of the folder, unless its folder is named', async () => {
    const outside = folderWith(original);
    const folder = folderWith(original, { order: shipped.replace('photos/juniper', '../juniper') });
    const { code, stderr } = await fails(folder);
    expect(code).toBe(3);
    expect(stderr.replace(/\s+/g, ' ')).toContain("It is outside the order file's folder;");
    const plain = folderWith(original);
    fs.rmSync(path.join(plain, 'photos'), { recursive: true });
    const named = await run(['draw', 'order.yaml', '--on-photo', '--photos-from', outside], { cwd: plain });
    expect(named.stderr).toBe('');
    expect(named.code).toBe(0);
  });

  test('a picture in printing inks is called that, not damaged', async () => {
    const inks = await sharp(original).toColourspace('cmyk').jpeg().toBuffer();
    expect((await sharp(inks).metadata()).channels).toBe(4);
    const { code, stderr } = await fails(folderWith(inks));
    expect(code).toBe(3);
    expect(stderr).toContain('this JPEG is in CMYK');
    expect(stderr).not.toContain('damaged');
  });

  test('a damaged picture: no trace of the decoder, and nothing written', async () => {
    const damaged = Buffer.from(original);
    // An impossible table of codes (T.81, annex C); the header stays readable.
    const table = damaged.indexOf(Buffer.from([0xff, 0xc4]));
    damaged.fill(0xff, table + 5, table + 2 + damaged.readUInt16BE(table + 2));
    const png = await sharp(original).png().toBuffer();
    png.fill(0x55, 200, png.length - 20);
    for (const [picture, file] of [
      [damaged, 'a.jpg'],
      [png, 'a.png'],
    ] as const) {
      const folder = folderWith(picture, { file });
      const { code, stderr } = await fails(folder, '--out', 'x.jpg');
      expect(stderr).not.toMatch(/wasm|unreachable|RuntimeError| at /);
      expect(code).toBe(3);
      expect(fs.existsSync(path.join(folder, 'x.jpg'))).toBe(false);
    }
  });

  test.each([
    [['--format', 'svg'], '--on-photo makes jpeg, png or html'],
    [['--view', 'flat'], 'leave out --view and --template'],
    [['--template'], 'leave out --view and --template'],
    [['--photos-from', 'nowhere'], '--photos-from takes a folder'],
  ])('%j', async (more, told) => {
    const { code, stderr } = await fails(folderWith(original), ...more);
    expect(code).toBe(2);
    expect(stderr).toContain(told);
  });

  test('JPEG and --photos-from without --on-photo', async () => {
    for (const more of [
      ['--format', 'jpeg'],
      ['--photos-from', '.'],
    ]) {
      const { code, stderr } = await run(['draw', 'examples/orders/25-photo.yaml', ...more]);
      expect(code).toBe(2);
      expect(stderr).toMatch(/(goes with|add) --on-photo/);
    }
  });
});
