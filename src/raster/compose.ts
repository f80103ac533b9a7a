/** Lays a drawing over a picture. */
import type { Raster } from './raster.ts';

/** The picture goes at the top left of a white sheet; the drawing has the sheet's size and premultiplied colors. */
export function composed(photo: Raster, drawing: Raster): Raster {
  const { width, height } = drawing;
  const data = new Uint8Array(4 * width * height).fill(255);
  for (let y = 0; y < Math.min(height, photo.height); y++) {
    const wide = 4 * Math.min(width, photo.width);
    data.set(photo.data.subarray(4 * y * photo.width, 4 * y * photo.width + wide), 4 * y * width);
  }
  for (let at = 0; at < data.length; at += 4) {
    const alpha = drawing.data[at + 3] ?? 0;
    if (alpha === 0) continue;
    for (let i = 0; i < 3; i++) {
      const under = ((data[at + i] ?? 0) * (255 - alpha)) / 255;
      data[at + i] = Math.min(255, Math.round((drawing.data[at + i] ?? 0) + under));
    }
  }
  return { width, height, data };
}
