/** Pixels of a picture: cropped, made smaller or larger, under a drawing. */

export interface Raster {
  readonly width: number;
  readonly height: number;
  /** RGBA, rows from the top. */
  readonly data: Uint8Array | Uint8ClampedArray;
}

/** Whole pixels of the upright picture. */
export interface Box {
  readonly x: number;
  readonly y: number;
  readonly width: number;
  readonly height: number;
}

/** As in Exif (2.32, 4.6.5); 1 is upright. */
export type Orientation = 1 | 2 | 3 | 4 | 5 | 6 | 7 | 8;

/** Whether width and height are swapped. */
export const liesOnItsSide = (orientation: Orientation): boolean => orientation >= 5;

/** Through stored pixels, for the upright picture. */
interface Walk {
  readonly start: number;
  readonly right: number;
  readonly down: number;
}

function walkOf({ width: w, height: h }: Raster, orientation: Orientation): Walk {
  const last = w * h - 1;
  const walks: Readonly<Record<Orientation, Walk>> = {
    1: { start: 0, right: 1, down: w },
    2: { start: w - 1, right: -1, down: w },
    3: { start: last, right: -1, down: -w },
    4: { start: last - (w - 1), right: 1, down: -w },
    5: { start: 0, right: w, down: 1 },
    6: { start: last - (w - 1), right: -w, down: 1 },
    7: { start: last, right: -w, down: -1 },
    8: { start: w - 1, right: w, down: -1 },
  };
  return walks[orientation];
}

/** A box of the upright picture, shrunk to `width` by averaging; never enlarged. */
export function cutOut(raster: Raster, box: Box, to: { width: number; orientation: Orientation }): Raster {
  const width = Math.max(1, Math.min(box.width, Math.round(to.width)));
  const height = Math.max(1, Math.round((box.height * width) / box.width));
  const walk = walkOf(raster, to.orientation);
  const data = new Uint8Array(4 * width * height);
  const sums = new Float64Array(3 * width);
  const counts = new Float64Array(width);
  const columns = Int32Array.from({ length: box.width }, (_, x) => Math.floor((x * width) / box.width));
  let row = 0;
  for (let y = 0; y < box.height; y++) {
    const target = Math.min(height - 1, Math.floor((y * height) / box.height));
    if (target !== row) {
      put(data, row, { sums, counts });
      row = target;
    }
    let at = walk.start + (box.y + y) * walk.down + box.x * walk.right;
    for (let x = 0; x < box.width; x++) {
      addPixel(raster.data, at, { sums, counts, column: columns[x] ?? 0 });
      at += walk.right;
    }
  }
  put(data, row, { sums, counts });
  return { width, height, data };
}

interface Sums {
  readonly sums: Float64Array;
  readonly counts: Float64Array;
}

/** Transparency goes on white. */
function addPixel(
  data: Raster['data'],
  at: number,
  { sums, counts, column }: Sums & { column: number },
): void {
  const alpha = (data[4 * at + 3] ?? 255) / 255;
  const white = 255 * (1 - alpha);
  for (let i = 0; i < 3; i++)
    sums[3 * column + i] = (sums[3 * column + i] ?? 0) + alpha * (data[4 * at + i] ?? 0) + white;
  counts[column] = (counts[column] ?? 0) + 1;
}

function put(data: Uint8Array, row: number, { sums, counts }: Sums): void {
  const width = counts.length;
  for (let x = 0; x < width; x++) {
    const count = counts[x] ?? 1;
    const at = 4 * (row * width + x);
    for (let i = 0; i < 3; i++) data[at + i] = Math.round((sums[3 * x + i] ?? 0) / Math.max(1, count));
    data[at + 3] = 255;
  }
  sums.fill(0);
  counts.fill(0);
}

/** That many pixels wide, bilinear; sharpens letters drawn over it. */
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

/** The source pixels beside a target pixel's center; `part` is the second's share. */
function between(at: number, of: number, from: number): { low: number; high: number; part: number } {
  const place = Math.min(from - 1, Math.max(0, ((at + 0.5) * from) / of - 0.5));
  const low = Math.floor(place);
  return { low, high: Math.min(from - 1, low + 1), part: place - low };
}

/** The photo at the top left of a white sheet, under a drawing of its size with premultiplied colors. */
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
