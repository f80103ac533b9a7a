/** Files, folders and patterns named on the command line become a list of order files, each once. */
import { CliFault, exit, printable } from './fault.ts';
import { namesOf } from './input.ts';
import type { CliIo } from './io.ts';
import { sourcesOf } from './sources.ts';

/**
 * The names of the files, as `sourcesOf` finds them; a file that is named twice is read once.
 * Errors: nothing to read from, or only folders and patterns without any order file.
 */
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
    // Where others can be read, one that cannot costs itself only: reading it will say why.
    return [at === '-' ? '-' : label];
  });
}
