/** `new`: a blank order to fill in. */
import type { Command } from 'commander';
import { CliFault, exit, printable, type ExitCode } from '../fault.ts';
import type { CliIo } from '../io.ts';
import type { Session } from '../program.ts';
import { typed, writeOrder } from '../write-order.ts';

interface NewOptions {
  force?: true;
}

const examples = `
  cinchwright new order.yaml`;

/** Adds the command. */
export function addNew(program: Command, session: Session): void {
  program
    .command('new')
    .summary('start an order')
    .description('Prints a blank order with notes on every line, or writes it to a file.')
    .argument('[file]', 'the file to write; without one the order is printed')
    .addHelpText('after', examples)
    .action(async (file: string | undefined, _: unknown, command: Command) => {
      session.code = await startOrder(file, command.optsWithGlobals<NewOptions>(), session.io);
    });
}

async function startOrder(file: string | undefined, options: NewOptions, io: CliIo): Promise<ExitCode> {
  const { blankOrder } = await import('../../order/blank.ts');
  if (file === '') throw new CliFault('the file name is empty');
  if (file === undefined || file === '-') {
    io.stdout(blankOrder());
    return exit.good;
  }
  const name = printable(file);
  writeOrder({ file, text: blankOrder(), force: options.force, asked: 'cinchwright new' }, io);
  io.stderr(`wrote ${name}: fill it in, then run: cinchwright size ${typed(name)}\n`);
  return exit.good;
}
