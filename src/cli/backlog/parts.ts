/** The bytes of something that is named, part after part. */
import fs from 'node:fs';
import type { CliIo } from '../io.ts';
import type { Source } from '../sources.ts';

const PART = 65_536;
/** One for all files: what is read is copied before the next is. */
const scratch = Buffer.allocUnsafeSlow(PART);

/** Parts of a file, a pipe or standard input, each to be used before the next is asked for. Throws the system's error. */
export function partsOf({ path, plain }: Source, io: CliIo): AsyncIterable<Buffer> {
  if (path === undefined) return io.stdinParts();
  return plain ? filePartsOf(path) : fs.createReadStream(path);
}

/** A stream of Node's for each of a thousand small files takes longer than reading them. */
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
