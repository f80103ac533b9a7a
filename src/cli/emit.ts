/** Writes results to standard output or a file. */
import path from 'node:path';
import { CliFault, printable } from './fault.ts';
import { realName, startOfPlain } from './files.ts';
import type { CliIo } from './io.ts';
import { writing } from './system-error.ts';

/** To standard output without `out` or with "-". */
export function emit(text: string, out: string | undefined, io: CliIo): void {
  if (out === undefined || out === '-') {
    if (text !== '') io.stdout(text);
  } else toFile(text, out, io);
}

/** The same for bytes. */
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

/** Also says that an old file was kept. */
export function tellNotWritten(out: string | undefined, io: CliIo): void {
  if (out === undefined || out === '-') return;
  const kept = io.standsAt(out) === 'file' ? ': the old file was kept' : '';
  io.stderr(`nothing to write to ${printable(out)}${kept}\n`);
}

/** Refuses to overwrite an input. */
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

/** The name that leads to this file, links followed. */
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

/** Errors: the file holds orders or a shop. */
export function guardOrders(option: string, out: string, io: CliIo): void {
  if (out === '-' || !holdsOrders(realName(path.resolve(io.cwd, out)))) return;
  throw new CliFault(`${option} would write over ${printable(out)}, which holds an order or a shop`, {
    hint: 'Give another name, or remove that file first.',
  });
}

/** YAML by name, since we never print it; JSON by its first lines. */
export function holdsOrders(file: string): boolean {
  const yaml = /\.ya?ml$/i.test(file);
  if (!yaml && !/\.(?:json|ndjson|jsonl)$/i.test(file)) return false;
  const start = startOfPlain(file);
  if (start === undefined || start.trim() === '') return false;
  return yaml || /"(?:horse|saddle)"\s*:\s*\{/.test(start);
}
