/** Reads bytes in chunks. */
import fs from 'node:fs';
import type { CliIo } from '../io.ts';
import type { Source } from '../sources.ts';

const PART = 65_536;
/** Shared by all reads. */
const scratch = Buffer.allocUnsafeSlow(PART);

/** Use each chunk before the next. Throws the system's error. */
export function partsOf({ path, plain }: Source, io: CliIo): AsyncIterable<Buffer> {
  if (path === undefined) return io.stdinParts();
  return plain ? filePartsOf(path) : fs.createReadStream(path);
}

/** Node's streams are slow for a thousand small files. */
// eslint-disable-next-line @typescript-eslint/require-await -- a disk does not keep one waiting, a pipe does
async function* filePartsOf(path: string): AsyncGenerator<Buffer> {
  const handle = fs.openSync(path, 'r');
  try {
    for (;;) {
      const length = fs.readSync(handle, scratch, 0, PART, null);
      if (length === 0) return;
      yield scratch.subarray(0, length);
    }
  } finally {
    fs.closeSync(handle);
  }
}
