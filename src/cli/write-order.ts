/** An order file is written where none stands; over one only by force. */
import { CliFault, printable } from './fault.ts';
import type { CliIo } from './io.ts';
import { writing } from './system-error.ts';

export interface NewFile {
  readonly file: string;
  readonly text: string;
  readonly force: boolean | undefined;
  /** What stands before a file's name on the command line: "cinchwright new". */
  readonly asked: string;
}

/** Writes it whole. Errors: the name is a folder's, there is a file already, the system refuses. */
export function writeOrder({ text, ...place }: NewFile, io: CliIo): void {
  guardNew(place, io);
  writing(place.file, () => {
    io.replaceFile(place.file, text);
  });
}

/** Errors: no order can be started there. */
export function guardNew({ file, force, asked }: Omit<NewFile, 'text'>, io: CliIo): void {
  const stands = io.standsAt(file);
  if (stands === 'directory') throw folderFault(file, asked);
  if (stands === 'nothing' || force === true) return;
  throw new CliFault(`${printable(file)} already exists: nothing was written`, {
    hint: 'Choose another name, or add --force to replace it.',
  });
}

/** A name as it is typed in a command. */
export const typed = (name: string): string => (/^[\w./-]+$/.test(name) ? name : `"${name}"`);

/** No --force makes a file of a folder. */
function folderFault(file: string, asked: string): CliFault {
  const inside = `${printable(file).replace(/\/+$/, '')}/order.yaml`;
  return new CliFault(`${printable(file)} is a folder, not a file: nothing was written`, {
    hint: `Name a file in it, for example: ${asked} ${typed(inside)}`,
  });
}
