/** The camera's orientation from Exif (2.32, 4.6.2: TIFF header and first directory). */

const ORIENTATION = 0x0112;
const SHORT = 3;

/** 1 to 8; 1 when missing or senseless, as in other readers. */
export function orientationOf(tiff: Buffer): number {
  const mark = tiff.subarray(0, 4).toString('latin1');
  const little = mark === 'II*\0';
  if (!little && mark !== 'MM\0*') return 1;
  const short = (at: number): number =>
    at < 0 || at + 2 > tiff.length ? 0 : little ? tiff.readUInt16LE(at) : tiff.readUInt16BE(at);
  const long = (at: number): number =>
    at < 0 || at + 4 > tiff.length ? 0 : little ? tiff.readUInt32LE(at) : tiff.readUInt32BE(at);
  const directory = long(4);
  const count = short(directory);
  for (let i = 0; i < count; i += 1) {
    const entry = directory + 2 + 12 * i;
    if (entry + 12 > tiff.length) break;
    if (short(entry) !== ORIENTATION) continue;
    const value = short(entry + 8);
    return short(entry + 2) === SHORT && value >= 1 && value <= 8 ? value : 1;
  }
  return 1;
}
