/** Results go to standard output, or into a file whole. */
import path from 'node:path';
import { CliFault, printable } from './fault.ts';
import type { CliIo } from './io.ts';
import { writing } from './system-error.ts';

/** Prints, or writes to the file of --out. */
export function emit(text: string, out: string | undefined, io: CliIo): void {
  if (out === undefined || out === '-') {
    if (text !== '') io.stdout(text);
  } else toFile(text, out, io);
}

/** The same of what is no text. */
export function emitBytes(bytes: Uint8Array, out: string | undefined, io: CliIo): void {
  if (out === undefined || out === '-') io.stdoutBytes(bytes);
  else toFile(bytes, out, io);
}

function toFile(content: string | Uint8Array, out: string, io: CliIo): void {
  writing(out, () => {
    io.replaceFile(out, content);
  });
  io.stderr(`wrote ${printable(out)}\n`);
}

/** Says, where nothing was emitted, that the file of --out was not written, and that an older one is still there. */
export function tellNotWritten(out: string | undefined, io: CliIo): void {
  if (out === undefined || out === '-') return;
  const kept = io.standsAt(out) === 'file' ? ': the old file was kept' : '';
  io.stderr(`nothing to write to ${printable(out)}${kept}\n`);
}

/** A slip of the fingers must not replace an order by its own result. */
export function guardInputs(
  out: string | undefined,
  inputs: readonly (string | undefined)[],
  io: CliIo,
): void {
  if (out === '') throw new CliFault('--out needs the name of a file');
  if (out === undefined) return;
  const target = path.resolve(io.cwd, out);
  const same = inputs.find(
    (name) => name !== undefined && name !== '-' && path.resolve(io.cwd, name) === target,
  );
  if (same !== undefined) throw new CliFault(`--out would write over ${printable(same)}, which is read`);
}
