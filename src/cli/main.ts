/** The program as it is started from a shell. */
import { thisMachine } from './machine.ts';
import { runCli } from './run.ts';

void runCli(process.argv.slice(2), thisMachine()).then((code) => {
  process.exitCode = code;
});
