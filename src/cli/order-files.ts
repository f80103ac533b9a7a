/** Turns files, folders and patterns into order files. */
import { CliFault, exit, printable } from './fault.ts';
import { namesOf } from './input.ts';
import type { CliIo } from './io.ts';
import { sourcesOf } from './sources.ts';

/** Each once. Errors: nothing to read, no order file. */
export async function orderFiles(
  names: readonly string[],
  io: CliIo,
  command: string,
): Promise<readonly string[]> {
  const named = namesOf(names, io, command);
  const sources = await sourcesOf(named, { cwd: io.cwd, without: new Set() });
  const [first] = sources;
  if (first?.fault !== undefined && sources.every(({ fault }) => fault !== undefined)) {
    throw new CliFault(`${printable(first.label)}: ${first.fault}`, { code: exit.input });
  }
  const seen = new Set<string>();
  return sources.flatMap(({ label, path: file, fault }) => {
    const at = file ?? (fault === undefined ? '-' : label);
    if (seen.has(at)) return [];
    seen.add(at);
    // Reading an unreadable source says why.
    return [at === '-' ? '-' : label];
  });
}
