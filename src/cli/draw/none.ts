/** Says which orders have no picture. */
import { exit, printable, type ExitCode } from '../fault.ts';
import type { CliIo } from '../io.ts';
import type { Made } from './pictures.ts';

/** With reasons. */
export function tellNone(made: readonly Made[], io: CliIo): ExitCode {
  for (const { order, none } of made) {
    if (none !== undefined) io.stderr(`cinchwright: order ${printable(order)}: ${none}\n`);
  }
  return made.some(({ none, refused }) => none !== undefined || refused) ? exit.noSpec : exit.good;
}
