/** What the parser of the command line complains about, in the words of this program. */
import type { CommanderError } from 'commander';
import { CliFault, didYouMean, printable } from './fault.ts';
import { commandNames } from './program.ts';

/** A complaint of the parser becomes a fault with a hint and where to read on. */
export function usageFault(error: CommanderError, argv: readonly string[]): CliFault {
  const command = argv.find((word) => commandNames.includes(word));
  const [first = '', ...rest] = error.message.replace(/^error: /, '').split('\n');
  const near = /\(Did you mean (?:one of )?(.+)\?\)/.exec(rest.join(' '))?.[1];
  const read = `Run "cinchwright ${command === undefined ? '' : `${command} `}--help" for what it takes.`;
  if (error.code === 'commander.help') return new CliFault('name a command first'); // the help has just been shown
  const hint = fileForCommand(error, argv) ?? oneDash(error) ?? didYouMean(near) ?? read;
  return new CliFault(printable(first.replace(/\.$/, '').replaceAll("'", '"')), { hint });
}

/** "-top" is read as several options of one letter each. */
function oneDash({ code, message }: CommanderError): string | undefined {
  const word = code === 'commander.unknownOption' ? /'-([a-z][a-z-]+)'/.exec(message)?.[1] : undefined;
  return word === undefined ? undefined : `Options of more than one letter take two dashes: --${word}`;
}

/** A file name where the command should stand is a common slip. */
function fileForCommand({ code }: CommanderError, [first]: readonly string[]): string | undefined {
  if (code !== 'commander.unknownCommand' || first === undefined || !/[./\\]|^-$/.test(first))
    return undefined;
  return `A command comes first, then the files: cinchwright size ${printable(first)}`;
}
