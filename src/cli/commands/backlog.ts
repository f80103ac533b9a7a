/** `backlog`: many orders, one row each. */
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
Paths are files, folders, patterns such as "orders/**/*.yaml", or "-": YAML
documents, or one JSON order per line. A row is printed as soon as its order is
read; with --out the old file stays until all rows are written.

  cinchwright backlog orders/ --out sizes.csv --errors faults.csv
  cinchwright backlog orders/ --columns order,verdict,style,strands,chance
  cinchwright backlog - --format ndjson < orders.ndjson`;

/** Adds the command. */
export function addBacklog(program: Command, session: Session): void {
  program
    .command('backlog')
    .summary('size a whole folder, one row per order')
    .description('Sizes many orders, one row each: our pick, or why there is none.')
    .argument('[paths...]', 'order files, folders with them, patterns, or "-"')
    .addOption(
      new Option('--format <name>', `${formats.join(', ')} (default table)`)
        .default('table', 'table')
        .argParser(word('--format', formats)),
    )
    .option('--columns <names>', 'which columns, in which order: a,b,c ("help" lists them)')
    .addOption(unitsOption())
    .addOption(shopOption())
    .addOption(outOption())
    .option('--errors <file>', 'write all errors to a CSV table, to send back')
    .addHelpText('after', examples)
    .action(async (names: string[], _: unknown, command: Command) => {
      session.code = await run(names, command.optsWithGlobals(), session);
    });
}

async function run(names: readonly string[], asked: Asked, { io }: Session): Promise<ExitCode> {
  if (asked.columns === 'help') {
    io.stdout((await import('../../words/backlog-words.ts')).columnsText(widthFor(io)));
    return exit.good;
  }
  const { columnsAsked } = await import('../backlog/printers.ts');
  const columns = asked.columns === undefined ? undefined : columnsAsked(asked.columns);
  return (await import('../backlog/start.ts')).backlog(names, { ...asked, columns }, io);
}
