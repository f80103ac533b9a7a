/** Where a backlog's rows and errors go. */
import path from 'node:path';
import { guardInputs, guardOrders, sameFile } from '../emit.ts';
import { CliFault, printable } from '../fault.ts';
import type { CliIo } from '../io.ts';
import { writing } from '../system-error.ts';
import { toFile, toStream, type Output } from './output.ts';

interface Asked {
  readonly shop?: string;
  readonly out?: string;
  readonly errors?: string;
}

/** Errors: an overwritten input, two outputs in one file. */
export function checkOutputs(names: readonly string[], { shop, out, errors }: Asked, io: CliIo): void {
  guardInputs(out, [...names, shop], io);
  if (errors === '' || errors === '-') throw new CliFault('--errors needs the name of a file');
  if (errors !== undefined) {
    const same = sameFile(errors, [...names, shop, out], io);
    if (same !== undefined) throw new CliFault(`--errors would write over ${printable(same)}`);
    guardOrders('--errors', errors, io);
  }
}

/** `out` names a file. */
export const isFile = (out: string | undefined): out is string => out !== undefined && out !== '-';

/** `shown` on standard output. */
export function rowsTo(out: string | undefined, io: CliIo): Output & { readonly shown: boolean } {
  return isFile(out) ? { ...named(out, io), shown: false } : { ...toStream(io.stdout), shown: true };
}

/** undefined without a name. */
export const errorsTo = (file: string | undefined, io: CliIo): Output | undefined =>
  file === undefined ? undefined : named(file, io);

/** Created with the first error. */
function named(file: string, io: CliIo): Output {
  let made: Output | undefined;
  const output = (): Output => (made ??= toFile(path.resolve(io.cwd, file)));
  return {
    write: (text) => {
      writing(file, () => {
        output().write(text);
      });
    },
    finish: () => {
      writing(file, () => {
        output().finish();
      });
    },
    drop: () => made?.drop(),
  };
}
