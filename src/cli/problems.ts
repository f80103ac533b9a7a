/** Reports all problems of files on standard error. */
import type { Problem } from '../yaml/problem.ts';
import { exit, printable, type ExitCode } from './fault.ts';
import type { Entry } from './input.ts';
import type { CliIo } from './io.ts';
import { widthFor } from './screen.ts';

/** With place and hint. */
export async function problemsOnStderr(
  problems: readonly Problem[],
  io: CliIo,
  color: boolean,
): Promise<void> {
  const { problemsText } = await import('../words/problems.ts');
  io.stderr(problemsText(problems, { color, width: widthFor(io) }));
}

/** Also returns the exit code. */
export async function tellFaults(entries: readonly Entry[], io: CliIo, color: boolean): Promise<ExitCode> {
  let code: ExitCode = exit.good;
  for (const entry of entries) {
    if (entry.ok) continue;
    code = exit.input;
    if (entry.unreadable === undefined) await problemsOnStderr(entry.problems, io, color);
    else io.stderr(`cinchwright: cannot read ${printable(entry.file)}: ${entry.unreadable}\n`);
  }
  tellTwice(entries, io);
  return code;
}

/** Two orders with one number look alike on paper. */
function tellTwice(entries: readonly Entry[], io: CliIo): void {
  const places = new Map<string, string[]>();
  for (const entry of entries) {
    if (!entry.ok) continue;
    const own = places.get(entry.order.order) ?? [];
    places.set(entry.order.order, [...own, `${entry.file}:${String(entry.line)}`]);
  }
  for (const [order, found] of places) {
    if (found.length < 2) continue;
    io.stderr(`cinchwright: order ${printable(order)} is in ${found.map(printable).join(' and ')}\n`);
  }
}
