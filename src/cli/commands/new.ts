/** `new`: a blank order, or questions on a terminal. */
import type { Command } from 'commander';
import { CliFault, exit, printable, type ExitCode } from '../fault.ts';
import type { CliIo } from '../io.ts';
import { shopOption } from '../options.ts';
import type { Session } from '../program.ts';
import { colorFor } from '../screen.ts';
import { shopOf } from '../shop.ts';
import { typed, writeOrder } from '../write-order.ts';

interface NewOptions {
  force?: true;
  blank?: true;
  shop?: string;
  color: boolean;
}

const examples = `
On a terminal it asks one question at a time and prints the answer. Ctrl-C
keeps your answers. Without a file the blank order is printed.

  cinchwright new order.yaml
  cinchwright new order.yaml --blank`;

/** Adds the command. */
export function addNew(program: Command, session: Session): void {
  program
    .command('new')
    .summary('start an order')
    .description('Asks for an order and writes it, or writes a blank one with notes on every line.')
    .argument('[file]', 'the file to write (default: print it)')
    .option('--blank', 'write the blank order, ask nothing')
    .addOption(shopOption())
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
  const { force, color } = options;
  const terminal = options.blank === true ? undefined : terminalOf(io);
  if (terminal !== undefined) {
    const shop = await shopOf(options.shop, io, colorFor(io, color, 'stderr'));
    const { interview } = await import('../asking/interview.ts');
    return interview({ file, force, shop, shopFile: options.shop, color, terminal }, io);
  }
  const name = printable(file);
  writeOrder({ file, text: blankOrder(), force, asked: 'cinchwright new' }, io);
  io.stderr(`wrote ${name}: fill it in, then run: cinchwright size ${typed(name)}\n`);
  return exit.good;
}

/** A terminal that can redraw lines. */
const terminalOf = ({ terminal, stdinIsTerminal, stdoutIsTerminal, env }: CliIo): typeof terminal =>
  stdinIsTerminal && stdoutIsTerminal && env['TERM'] !== 'dumb' ? terminal : undefined;
