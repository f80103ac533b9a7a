/** Overwrites only files that carry our name or our caution. */
import fs from 'node:fs';
import path from 'node:path';
import type { Command } from 'commander';
import { holdsOrders } from './emit.ts';
import { CliFault, printable } from './fault.ts';
import { readEnd, readUpTo, realName } from './files.ts';
import type { CliIo } from './io.ts';

/** In all our text; a table has its first column. */
const ours = /cinchwright|sizing aid, not|^\{"order"|^\ufeff?(?:order|rule|file|name|part|number),/i;

/** Checked at both ends of a large file. */
const ENDS = 64 * 1024;

/** Errors: the file is not ours, without --force. */
export function guardOut(command: Command, io: CliIo): void {
  const { out, force } = command.optsWithGlobals<{ out?: unknown; force?: true }>();
  if (typeof out !== 'string' || out === '' || out === '-' || force === true) return;
  const file = realName(path.resolve(io.cwd, out));
  // Orders and shops have their own error.
  if (io.standsAt(out) !== 'file' || holdsOrders(file) || isOurs(file)) return;
  throw new CliFault(`${printable(out)} already exists, and cinchwright did not write it`, {
    hint: 'Give another name, or add --force to write over it.',
  });
}

function isOurs(file: string): boolean {
  try {
    // A device; some never end.
    if (!fs.statSync(file).isFile()) return true;
    const start = readUpTo(file, ENDS);
    if (start.length === 0 || isPicture(start)) return true;
    return [start, readEnd(file, ENDS)].some((part) => ours.test(part.toString('latin1')));
  } catch {
    return true; // writing will say why
  }
}

/** Pixels carry no name, and pictures are redrawn often. */
const isPicture = (bytes: Buffer): boolean =>
  bytes.subarray(1, 4).toString('latin1') === 'PNG' || (bytes[0] === 0xff && bytes[1] === 0xd8);
