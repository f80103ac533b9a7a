/** The program and its commands. */
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
import { guardOut } from './guard-out.ts';
import { helpText } from './help-text.ts';
import type { CliIo } from './io.ts';
import { colorFor, widthFor } from './screen.ts';
import { version } from './version.ts';

export interface Session {
  readonly io: CliIo;
  code: ExitCode;
}

type Add = (program: Command, session: Session) => void;

const commands = new Map<string, Add>([
  ['size', addSize],
  ['check', addCheck],
  ['photo', addPhoto],
  ['ask', addAsk],
  ['backlog', addBacklog],
  ['quote', addQuote],
  ['ticket', addTicket],
  ['materials', addMaterials],
  ['schedule', addSchedule],
  ['learn', addLearn],
  ['draw', addDraw],
  ['rules', addRules],
  ['new', addNew],
  ['schema', addSchema],
  ['completion', addCompletion],
  ['help', addHelp],
]);

export const commandNames: readonly string[] = [...commands.keys()];

/** These tell of all commands. */
const telling = ['completion', 'help'];

const after = `
Exit codes
  0    done
  1    no cinch passes for some order, or a checked cinch is ruled out
  2    bad command line
  3    bad input file; the others are still done
  130  stopped by Ctrl-C`;

/** Prints to the session's machine. With `asked`, only that command: the others cost a millisecond of every start. */
export function buildProgram(session: Session, asked = ''): Command {
  const { io } = session;
  const program = new Command('cinchwright')
    .description('Sizes mohair western cinches from order files. Short list: cinchwright')
    .version(version, '-v, --version', 'print the version')
    .option('--no-color', 'no colors')
    .option('--force', 'write over any file')
    .helpOption('-h, --help', 'show this help')
    .usage('<command> [options]')
    .helpCommand(false)
    .addHelpText('after', after)
    .configureHelp({ formatHelp: helpText, showGlobalOptions: true })
    .configureOutput({
      writeOut: io.stdout,
      writeErr: io.stderr,
      getOutHelpWidth: () => widthFor(io),
      getErrHelpWidth: () => widthFor(io),
      getOutHasColors: () => false,
      getErrHasColors: () => false,
      outputError: () => undefined, // see run.ts
    })
    .exitOverride()
    .hook('preAction', async (_, command) => {
      formatByEnding(command);
      guardOut(command, io);
      const { color } = command.optsWithGlobals<{ color: boolean }>();
      if (!colorFor(io, color) && !colorFor(io, color, 'stderr')) return;
      await (await import('../pages/pen.ts')).loadColors();
    });
  const own = telling.includes(asked) ? undefined : commands.get(asked);
  for (const add of own === undefined ? commands.values() : [own]) add(program, session);
  return program;
}
