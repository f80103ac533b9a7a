/** The program as it is started from a shell, or by itself as one of several workers. */
import { workerWord } from './backlog/pool.ts';
import { exit } from './fault.ts';
import { thisMachine } from './machine.ts';
import { runCli } from './run.ts';

async function main(argv: readonly string[]): Promise<void> {
  if (argv[0] === workerWord && (await (await import('./backlog/worker.ts')).serve())) return;
  const code = await runCli(argv, thisMachine());
  // Somebody who has said stop does not want to wait for what is still being read.
  if (code === exit.stopped) process.exit(code);
  process.exitCode = code;
}

void main(process.argv.slice(2));
