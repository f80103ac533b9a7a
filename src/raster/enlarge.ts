/** Enlarges a small picture so that letters over it are sharp. */
import type { Raster } from './raster.ts';

/** To so many pixels wide, bilinear. */
export function enlarged(raster: Raster, wanted: number): Raster {
  const width = Math.max(raster.width, Math.round(wanted));
  const height = Math.max(1, Math.round((raster.height * width) / raster.width));
  const data = new Uint8Array(4 * width * height);
  const columns = Array.from({ length: width }, (_, x) => between(x, width, raster.width));
  for (let y = 0; y < height; y++) {
    const row = between(y, height, raster.height);
    const [top, bottom] = [row.low * raster.width, row.high * raster.width];
    for (let x = 0; x < width; x++) {
      const { low, high, part } = columns[x] ?? { low: 0, high: 0, part: 0 };
      const to = 4 * (y * width + x);
      for (let i = 0; i < 3; i++) {
        const at = (pixel: number): number => raster.data[4 * pixel + i] ?? 0;
        const above = at(top + low) + part * (at(top + high) - at(top + low));
        const below = at(bottom + low) + part * (at(bottom + high) - at(bottom + low));
        data[to + i] = Math.round(above + row.part * (below - above));
      }
      data[to + 3] = 255;
    }
  }
  return { width, height, data };
}

/** The two source pixels around a target pixel's center, and the share of the second. */
function between(at: number, of: number, from: number): { low: number; high: number; part: number } {
  const place = Math.min(from - 1, Math.max(0, ((at + 0.5) * from) / of - 0.5));
  const low = Math.floor(place);
  return { low, high: Math.min(from - 1, low + 1), part: place - low };
}
