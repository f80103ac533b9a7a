/** An order file is written where none stands; over one only by force. */
import { CliFault, printable } from './fault.ts';
import type { CliIo } from './io.ts';
import { systemCode, writing } from './system-error.ts';

export interface NewFile {
  readonly file: string;
  readonly text: string;
  readonly force: boolean | undefined;
  /** What stands before a file's name on the command line: "cinchwright new". */
  readonly asked: string;
}

/** Writes it whole. Errors: the name is a folder's, there is a file already, the system refuses. */
export function writeOrder({ file, text, force, asked }: NewFile, io: CliIo): void {
  if (io.standsAt(file) === 'directory') throw folderFault(file, asked);
  writing(file, () => {
    if (force === true) io.replaceFile(file, text);
    else createOnly(file, text, io);
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

function createOnly(file: string, text: string, io: CliIo): void {
  try {
    io.createFile(file, text);
  } catch (error) {
    if (systemCode(error) !== 'EEXIST') throw error;
    throw new CliFault(`${printable(file)} exists already: nothing was written`, {
      hint: 'Choose another name, or add --force to start it afresh.',
    });
  }
}
