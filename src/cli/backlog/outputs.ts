/** The files that a backlog writes: whether they may be written, and where rows and faults go. */
import path from 'node:path';
import { guardInputs, guardOrders, sameFile } from '../emit.ts';
import { CliFault, printable } from '../fault.ts';
import type { CliIo } from '../io.ts';
import { writing } from '../system-error.ts';
import { journalOf } from './journal-file.ts';
import { toFile, toStream, type Output } from './output.ts';

interface Asked {
  readonly shop?: string;
  readonly out?: string;
  readonly errors?: string;
  readonly resume?: true;
}

/** Errors: a file that is read would be written over, two outputs in one file, --resume without a file to go on with. */
export function checkOutputs(
  names: readonly string[],
  { shop, out, errors, resume }: Asked,
  io: CliIo,
): void {
  guardInputs(out, [...names, shop], io);
  if (errors === '' || errors === '-') throw new CliFault('--errors needs the name of a file');
  if (errors !== undefined) {
    const journal = isFile(out) ? journalOf(out) : undefined;
    const same = sameFile(errors, [...names, shop, out, journal], io);
    if (same !== undefined) throw new CliFault(`--errors would write over ${printable(same)}`);
    guardOrders('--errors', errors, io);
  }
  if (resume === true && !isFile(out)) {
    throw new CliFault('--resume goes with --out FILE: what is finished is kept beside that file');
  }
}

/** Whether --out names a file. */
export const isFile = (out: string | undefined): out is string => out !== undefined && out !== '-';

/** Where rows go; `shown` when that is standard output. Errors: the file cannot be written. */
export function rowsTo(out: string | undefined, io: CliIo): Output & { readonly shown: boolean } {
  return isFile(out) ? { ...named(out, io), shown: false } : { ...toStream(io.stdout), shown: true };
}

/** Where faults go, if they are asked for. Errors: the file cannot be written. */
export const errorsTo = (file: string | undefined, io: CliIo): Output | undefined =>
  file === undefined ? undefined : named(file, io);

/** A file whose faults name it. */
function named(file: string, io: CliIo): Output {
  let output: Output | undefined;
  writing(file, () => {
    output = toFile(path.resolve(io.cwd, file));
  });
  const made = output as unknown as Output;
  return {
    write: (text) => {
      writing(file, () => {
        made.write(text);
      });
    },
    finish: () => {
      writing(file, made.finish);
    },
    drop: made.drop,
  };
}
