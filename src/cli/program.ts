/** The commands and what the program says about itself. */
import { Command } from 'commander';
import { formatByEnding } from './by-ending.ts';
import { addAsk } from './commands/ask.ts';
import { addBacklog } from './commands/backlog.ts';
import { addCheck } from './commands/check.ts';
import { addCompletion } from './commands/completion.ts';
import { addDraw } from './commands/draw.ts';
import { addHelp } from './commands/help.ts';
import { addLearn } from './commands/learn.ts';
import { addMaterials } from './commands/materials.ts';
import { addNew } from './commands/new.ts';
import { addPhoto } from './commands/photo.ts';
import { addQuote } from './commands/quote.ts';
import { addRules } from './commands/rules.ts';
import { addSchedule } from './commands/schedule.ts';
import { addSchema } from './commands/schema.ts';
import { addSize } from './commands/size.ts';
import { addTicket } from './commands/ticket.ts';
import type { ExitCode } from './fault.ts';
import type { CliIo } from './io.ts';
import { colorFor, widthFor } from './screen.ts';
import { version } from './version.ts';

/** One run: the machine, and the exit code as far as it is known. */
export interface Session {
  readonly io: CliIo;
  code: ExitCode;
}

const adders = [
  addSize,
  addCheck,
  addPhoto,
  addAsk,
  addBacklog,
  addQuote,
  addTicket,
  addMaterials,
  addSchedule,
  addLearn,
  addDraw,
  addRules,
  addNew,
  addSchema,
  addCompletion,
  addHelp,
];

export const commandNames: readonly string[] = [
  'size',
  'check',
  'photo',
  'ask',
  'backlog',
  'quote',
  'ticket',
  'materials',
  'schedule',
  'learn',
  'draw',
  'rules',
  'new',
  'schema',
  'completion',
  'help',
];

const after = `
Exit codes:
  0  all good
  1  at least one order has no spec that passes its hard rules,
     or a cinch that was checked does not pass
  2  the command line is wrong
  3  an input file cannot be read or is invalid (the rest are still done)
  130  stopped before the end, by Ctrl-C or the like

Examples:
  cinchwright new order.yaml          start an order
  cinchwright size order.yaml         which cinch, and why
  cinchwright check order.yaml        judge the cinch in use or asked for
  cinchwright photo order.yaml        what its side photo gives
  cinchwright ask order.yaml          what to ask the customer
  cinchwright backlog orders/         a whole folder, one row an order
  cinchwright quote order.yaml        what it costs, and when it can be ready
  cinchwright ticket order.yaml       the paper for the bench
  cinchwright materials orders/       what to pull, buy and cut
  cinchwright schedule orders/        what is done when, and what is late
  cinchwright learn outcomes.yaml     what came of earlier cinches
  cinchwright draw order.yaml --out cinch.svg
                                      the cinch on the horse, to scale
  cinchwright size --help             everything "size" can do`;

/** The whole command line, ready to parse; what it prints goes to the session's machine. */
export function buildProgram(session: Session): Command {
  const { io } = session;
  const program = new Command('cinchwright')
    .description('Finds the mohair cinch that suits a horse, a saddle and the work, from an order file.')
    .version(version, '-v, --version', 'print the version')
    .option('--no-color', 'print without colors')
    .helpOption('-h, --help', 'show this help')
    .usage('<command> [options]')
    .helpCommand(false)
    .addHelpText('after', after)
    .configureHelp({
      showGlobalOptions: true,
      subcommandTerm: (command) =>
        `${command.name()} ${command.usage().replace(/^\[options\] ?/, '')}`.trim(),
    })
    .configureOutput({
      writeOut: io.stdout,
      writeErr: io.stderr,
      getOutHelpWidth: () => widthFor(io),
      getErrHelpWidth: () => widthFor(io),
      getOutHasColors: () => false,
      getErrHasColors: () => false,
      outputError: () => undefined, // said in one place for all: run.ts
    })
    .exitOverride()
    .hook('preAction', async (_, command) => {
      formatByEnding(command);
      const { color } = command.optsWithGlobals<{ color: boolean }>();
      if (!colorFor(io, color) && !colorFor(io, color, 'stderr')) return;
      await (await import('../report/pen.ts')).loadColors();
    });
  for (const add of adders) add(program, session);
  return program;
}
