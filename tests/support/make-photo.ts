/** `npm run make-photo` draws the demo photo; a test compares the bytes. */
import fs from 'node:fs';
import { demoDrawing } from './demo-drawing.ts';
import { exifOf, jpegOf, rasterOf } from './jpeg.ts';

export const photoFile = new URL('../../examples/orders/photos/juniper-side.jpg', import.meta.url);

export async function demoPhoto(): Promise<Buffer> {
  const exif = exifOf(1, 'Synthetic picture of an invented horse, drawn by tests/support/make-photo.ts');
  return jpegOf(rasterOf(demoDrawing()), { quality: 80, exif });
}

if (
  process.argv[1] !== undefined &&
  import.meta.url.endsWith('make-photo.ts') &&
  process.argv[1].endsWith('make-photo.ts')
) {
  fs.mkdirSync(new URL('.', photoFile), { recursive: true });
  fs.writeFileSync(photoFile, await demoPhoto());
}
