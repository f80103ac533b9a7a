/** The demo photo is what its script draws, marks included. */
import fs from 'node:fs';
import sharp from 'sharp';
import { expect, test } from 'vitest';
import { demo, type Pixel } from '../support/camera.ts';
import { demoDrawing } from '../support/demo-drawing.ts';
import { rasterOf } from '../support/jpeg.ts';
import { demoPhoto, photoFile } from '../support/make-photo.ts';

test('npm run make-photo gives the shipped bytes, under 300 KB', async () => {
  const bytes = fs.readFileSync(photoFile);
  expect((await demoPhoto()).equals(bytes)).toBe(true);
  expect(bytes.length).toBeLessThan(300_000);
});

test('the file says that the horse is invented, in its note and in the picture', async () => {
  const { exif, orientation, width, height } = await sharp(fs.readFileSync(photoFile)).metadata();
  expect(exif?.toString('latin1')).toContain('invented horse');
  expect({ orientation, width, height }).toEqual({ orientation: 1, width: 1600, height: 1200 });
  expect(demoDrawing()).toContain('the horse is invented');
});

test('stick, string and ring are drawn where the order marks them', () => {
  const { data, width } = rasterOf(demoDrawing());
  const at = ([x, y]: Pixel): number[] => {
    const from = 4 * (Math.round(y) * width + Math.round(x));
    return [data[from]!, data[from + 1]!, data[from + 2]!];
  };
  const isRed = ([r = 0, g = 0, b = 0]: number[]): boolean => r > 170 && g < 80 && b < 60;
  const { from, to, ring } = demo.clicks;
  const along = (share: number): Pixel => [
    from[0] + share * (to[0] - from[0]),
    from[1] + share * (to[1] - from[1]),
  ];
  expect(isRed(at(along(0.02)))).toBe(true);
  expect(isRed(at(along(-0.02)))).toBe(false);
  const isWhite = ([r = 0, g = 0, b = 0]: number[]): boolean => Math.min(r, g, b) > 200;
  expect(isWhite(at(along(0.98)))).toBe(true);
  expect(isWhite(at(along(1.02)))).toBe(false);
  const { top, bottom } = demo.clicks;
  expect(isWhite(at([(top[0] + bottom[0]) / 2, (top[1] + bottom[1]) / 2]))).toBe(true);
  // A light rim, leather within it.
  const light = [0, 1, 2, 3].filter((turn) => {
    const [dx, dy] = [Math.cos((turn * Math.PI) / 2), Math.sin((turn * Math.PI) / 2)];
    return [9, 10, 11, 12, 13].some((far) => isWhite(at([ring[0] + far * dx, ring[1] + far * dy])));
  });
  expect(light).toHaveLength(4);
  expect(isWhite(at(ring))).toBe(false);
});
