/** `backlog`: many orders in one go, one row an order. */
import { Option, type Command } from 'commander';
import { word, outOption, shopOption, unitsOption } from '../options.ts';
import { backlogFormats as formats } from '../backlog/formats.ts';
import type { BacklogOptions } from '../backlog/start.ts';
import { exit, type ExitCode } from '../fault.ts';
import type { Session } from '../program.ts';
import { widthFor } from '../screen.ts';

interface Asked extends Omit<BacklogOptions, 'columns'> {
  readonly columns?: string;
}

const examples = `
Paths are files, folders (all files in them that end in .yaml, .yml, .json,
.ndjson or .jsonl), patterns such as "orders/**/*.yaml", and "-" for standard
input: YAML documents, or one JSON order a line. Rows stand in the order of the
input, folders by name.

A row is printed as soon as its order is read. With --out, a file that was there
stays as it is until all rows are; a run that is stopped leaves nothing else.

Examples:
  cinchwright backlog orders/
  cinchwright backlog orders/ --format csv --out sizes.csv --errors faults.csv
  cinchwright backlog orders/ --columns order,verdict,style,strands,chance
  cinchwright backlog - --format ndjson < orders.ndjson
  cinchwright backlog --columns help`;

/** Adds the command. */
export function addBacklog(program: Command, session: Session): void {
  program
    .command('backlog')
    .summary('size many orders into one table')
    .description('Sizes many orders and prints one row an order: the best spec, or why there is none.')
    .argument('[paths...]', 'order files, folders with them, patterns, or "-"')
    .addOption(
      new Option('--format <name>', `print as ${formats.join(', ')}`)
        .default('table', 'table')
        .argParser(word('--format', formats)),
    )
    .option('--columns <names>', 'which columns, in which order: a,b,c ("help" lists them)')
    .addOption(unitsOption())
    .addOption(shopOption())
    .addOption(outOption())
    .option('--errors <file>', 'write all faults to a CSV table, to send back')
    .addHelpText('after', examples)
    .action(async (names: string[], _: unknown, command: Command) => {
      session.code = await run(names, command.optsWithGlobals(), session);
    });
}

async function run(names: readonly string[], asked: Asked, { io }: Session): Promise<ExitCode> {
  if (asked.columns === 'help') {
    io.stdout((await import('../../report/backlog-words.ts')).columnsText(widthFor(io)));
    return exit.good;
  }
  const { columnsAsked } = await import('../backlog/printers.ts');
  const columns = asked.columns === undefined ? undefined : columnsAsked(asked.columns);
  return (await import('../backlog/start.ts')).backlog(names, { ...asked, columns }, io);
}
