/** One run: arguments in, exit code out. */
import { CommanderError } from 'commander';
import { CliFault, exit, printable, type ExitCode } from './fault.ts';
import { shortHelp } from './help-text.ts';
import type { CliIo } from './io.ts';
import { ReaderGone } from './machine.ts';
import { usageFault } from './usage-fault.ts';
import { buildProgram, type Session } from './program.ts';
import { systemWords } from './system-error.ts';
import { version } from './version.ts';

/** Never throws. */
export async function runCli(argv: readonly string[], io: CliIo): Promise<ExitCode> {
  const session: Session = { io, code: exit.good };
  try {
    if (argv.length === 0) io.stdout(shortHelp);
    else await buildProgram(session, argv[0]).parseAsync(argv, { from: 'user' });
    return session.code;
  } catch (error) {
    return report(error, argv, io);
  }
}

function report(error: unknown, argv: readonly string[], io: CliIo): ExitCode {
  if (error instanceof ReaderGone) return exit.good;
  if (error instanceof CommanderError && error.exitCode === 0) return exit.good; // help or version was printed
  const fault = error instanceof CommanderError ? usageFault(error, argv) : error;
  try {
    io.stderr(`cinchwright: ${words(fault)}\n`);
  } catch {
    // Nobody listens; the exit code still counts.
  }
  return fault instanceof CliFault ? fault.code : exit.input;
}

function words(error: unknown): string {
  if (error instanceof CliFault)
    return error.hint === undefined ? error.message : `${error.message}\n${error.hint}`;
  const system = systemWords(error);
  if (system !== undefined) return `cannot go on: ${system}`;
  const what = printable(error instanceof Error ? error.message : String(error)).slice(0, 200);
  return `this is a bug in cinchwright (${what}); please report it, with the order file and the version: ${version}`;
}
