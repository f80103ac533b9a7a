/** Writes an order file; replaces one only with --force. */
import { CliFault, printable } from './fault.ts';
import type { CliIo } from './io.ts';
import { writing } from './system-error.ts';

export interface NewFile {
  readonly file: string;
  readonly text: string;
  readonly force: boolean | undefined;
  /** Such as "cinchwright new". */
  readonly asked: string;
}

/** Errors: a folder, an existing file, the system. */
export function writeOrder({ text, ...place }: NewFile, io: CliIo): void {
  guardNew(place, io);
  writing(place.file, () => {
    io.replaceFile(place.file, text);
  });
}

/** Errors: a folder; a file, without --force. */
export function guardNew({ file, force, asked }: Omit<NewFile, 'text'>, io: CliIo): void {
  const stands = io.standsAt(file);
  if (stands === 'directory') throw folderFault(file, asked);
  if (stands === 'nothing' || force === true) return;
  throw new CliFault(`${printable(file)} already exists: nothing was written`, {
    hint: 'Choose another name, or add --force to replace it.',
  });
}

/** Quoted for a command line, if needed. */
export const typed = (name: string): string => (/^[\w./-]+$/.test(name) ? name : `"${name}"`);

/** --force does not replace a folder. */
function folderFault(file: string, asked: string): CliFault {
  const inside = `${printable(file).replace(/\/+$/, '')}/order.yaml`;
  return new CliFault(`${printable(file)} is a folder, not a file: nothing was written`, {
    hint: `Name a file in it, for example: ${asked} ${typed(inside)}`,
  });
}
