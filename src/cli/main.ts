/** The program as a shell starts it. */
import { thisMachine } from './machine.ts';
import { runCli } from './run.ts';

void runCli(process.argv.slice(2), thisMachine()).then((code) => {
  process.exitCode = code;
});
