/** Results go to standard output, or into a file whole. */
import path from 'node:path';
import { CliFault, printable } from './fault.ts';
import { realName, startOfPlain } from './files.ts';
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
  guardOrders('--out', out, io);
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

/** A slip of the fingers must not replace an order, neither the one that is read nor another. */
export function guardInputs(
  out: string | undefined,
  inputs: readonly (string | undefined)[],
  io: CliIo,
): void {
  if (out === '') throw new CliFault('--out needs the name of a file');
  if (out === undefined) return;
  const same = sameFile(out, inputs, io);
  if (same !== undefined)
    throw new CliFault(`--out would write over ${printable(same)}, an input of this command`);
  guardOrders('--out', out, io);
}

/** The first of some names, if any, that leads to the same file, be it by a link. */
export function sameFile(
  file: string,
  names: readonly (string | undefined)[],
  { cwd }: Pick<CliIo, 'cwd'>,
): string | undefined {
  const target = realName(path.resolve(cwd, file));
  return names.find(
    (name) => name !== undefined && name !== '-' && realName(path.resolve(cwd, name)) === target,
  );
}

/** Errors: there is a file of that name already, and it holds orders or a shop. */
export function guardOrders(option: string, out: string, io: CliIo): void {
  if (out === '-' || !holdsOrders(realName(path.resolve(io.cwd, out)))) return;
  throw new CliFault(`${option} would write over ${printable(out)}, which holds an order or a shop`, {
    hint: 'Give another name, or remove that file first.',
  });
}

/** By its name where it is YAML, since nothing is printed as that; by its first lines where it is JSON. */
export function holdsOrders(file: string): boolean {
  const yaml = /\.ya?ml$/i.test(file);
  if (!yaml && !/\.(?:json|ndjson|jsonl)$/i.test(file)) return false;
  const start = startOfPlain(file);
  if (start === undefined || start.trim() === '') return false;
  return yaml || /"(?:horse|saddle)"\s*:\s*\{/.test(start);
}
