/** Files and folders named on the command line become a list of order files, each once. */
import fs from 'node:fs';
import path from 'node:path';
import { byText } from '../units/by-text.ts';
import { CliFault, exit, printable } from './fault.ts';
import { namesOf } from './input.ts';
import type { CliIo } from './io.ts';
import { systemWords } from './system-error.ts';

const orderFile = /\.(?:ya?ml|json)$/i;

/**
 * The files named, and of folders those in them and in the folders inside that end in .yaml, .yml or .json; hidden ones
 * are left out, and a file that is named twice is read once. Errors: nothing to read from, a folder without any.
 */
export function orderFiles(names: readonly string[], io: CliIo, command: string): readonly string[] {
  const found = namesOf(names, io, command).flatMap((name) =>
    name !== '-' && io.standsAt(name) === 'directory' ? filesIn(name, io) : [name],
  );
  const seen = new Set<string>();
  return found.filter((name) => {
    const at = name === '-' ? name : path.resolve(io.cwd, name);
    return !seen.has(at) && seen.add(at).size > 0;
  });
}

function filesIn(folder: string, io: CliIo): string[] {
  try {
    const entries = fs.readdirSync(path.resolve(io.cwd, folder), { recursive: true, encoding: 'utf8' });
    const files = entries
      .filter((name) => orderFile.test(name) && !name.split(path.sep).some((part) => part.startsWith('.')))
      .map((name) => path.join(folder, name))
      .filter((name) => io.standsAt(name) === 'file');
    if (files.length > 0) return files.sort(byText);
  } catch (error) {
    const why = systemWords(error);
    if (why === undefined) throw error;
    throw new CliFault(`cannot read the folder ${printable(folder)}: ${why}`, { code: exit.input });
  }
  throw new CliFault(`there are no order files in ${printable(folder)}`, {
    code: exit.input,
    hint: 'Order files end in .yaml, .yml or .json.',
  });
}
