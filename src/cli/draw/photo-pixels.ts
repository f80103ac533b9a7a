/** Crops a photo and draws on it. */
import type { PhotoScene } from '../../photo/drawn/page.ts';
import type { Codecs } from '../../photo/pixels/codecs.ts';
import type { Raster } from '../../photo/pixels/raster.ts';
import { CliFault, exit, printable } from '../fault.ts';
import { readPhoto } from '../photo/picture.ts';
import { pngWriter } from './png-writer.ts';

/** Four bytes per pixel, twice that for a moment. */
export const drawnLimits = { bytes: 50_000_000, pixels: 60_000_000 };

/** Pixels: fills a phone, and can be enlarged twice. */
const WIDE = 1260;

/** Upright, without the camera's notes. */
export async function photoFor(
  { part }: PhotoScene,
  { file, codecs }: { file: string; codecs: Codecs },
): Promise<Raster> {
  const { cutOut, enlarged, liesOnItsSide } = await import('../../photo/pixels/raster.ts');
  const read = readPhoto(file, drawnLimits);
  const name = printable(file);
  if (!read.ok) throw new CliFault(`${name}: ${read.why}`, { code: exit.input });
  if (read.isCmyk)
    throw new CliFault(`${name}: this JPEG is in CMYK, the colors of printing inks`, {
      code: exit.input,
      hint: 'Save it as an RGB JPEG, or use the picture straight from the camera.',
    });
  const { orientation } = read;
  const [width, height] = liesOnItsSide(orientation) ? [read.height, read.width] : [read.width, read.height];
  let stored: Raster;
  try {
    stored = await codecs.decode(read.bytes, read.kind, { width, height });
  } catch {
    throw new CliFault(`${name}: cannot draw on it: it is damaged, or not from a camera`, {
      code: exit.input,
    });
  }
  return enlarged(cutOut(stored, part, { width: WIDE, orientation }), WIDE);
}

/** Many messengers take no more. */
const MOST_BYTES = 2_000_000;

/** JPEG or PNG. */
export async function rasterFile(
  { scene }: PhotoScene,
  photo: Raster,
  { codecs, format }: { codecs: Codecs; format: string },
): Promise<Uint8Array> {
  const [{ svgPixels }, { sceneSvg }, { fontFiles }, { cutOut, composed }] = await Promise.all([
    pngWriter(),
    import('../../draw/svg.ts'),
    import('../fonts.ts'),
    import('../../photo/pixels/raster.ts'),
  ]);
  const sheet = composed(photo, svgPixels(sceneSvg(scene), { fontFiles: fontFiles(), width: WIDE }));
  if (format === 'jpeg') {
    for (const quality of [82, 70, 55]) {
      const bytes = await codecs.jpeg(sheet, quality);
      if (bytes.length <= MOST_BYTES) return bytes;
    }
    return codecs.jpeg(sheet, 40);
  }
  let bytes = await codecs.png(sheet);
  for (let width = WIDE * 0.85; bytes.length > MOST_BYTES && width > 400; width *= 0.85) {
    const box = { x: 0, y: 0, width: sheet.width, height: sheet.height };
    bytes = await codecs.png(cutOut(sheet, box, { width, orientation: 1 }));
  }
  return bytes;
}
