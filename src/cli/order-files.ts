/** Files, folders and patterns named on the command line become a list of order files, each once. */
import { CliFault, exit, printable } from './fault.ts';
import { namesOf } from './input.ts';
import type { CliIo } from './io.ts';
import { sourcesOf } from './sources.ts';

/**
 * The names of the files, as `sourcesOf` finds them; a file that is named twice is read once.
 * Errors: nothing to read from, a folder or a pattern without any order file.
 */
export async function orderFiles(
  names: readonly string[],
  io: CliIo,
  command: string,
): Promise<readonly string[]> {
  const named = namesOf(names, io, command);
  const seen = new Set<string>();
  const found: string[] = [];
  for (const { label, path: file, fault } of await sourcesOf(named, { cwd: io.cwd, without: new Set() })) {
    if (fault !== undefined) throw new CliFault(`${printable(label)}: ${fault}`, { code: exit.input });
    const at = file ?? '-';
    if (seen.has(at)) continue;
    seen.add(at);
    found.push(file === undefined ? '-' : label);
  }
  return found;
}
