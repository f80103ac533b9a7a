/** The parser's complaints in our words. */
import type { CommanderError } from 'commander';
import { CliFault, didYouMean, printable } from './fault.ts';
import { commandNames } from './program.ts';

/** With a hint, if one helps. */
export function usageFault(error: CommanderError, argv: readonly string[]): CliFault {
  const command = argv.find((word) => commandNames.includes(word));
  const [first = '', ...rest] = error.message.replace(/^error: /, '').split('\n');
  const near = /\(Did you mean (?:one of )?(.+)\?\)/.exec(rest.join(' '))?.[1];
  const read = `Run "cinchwright ${command === undefined ? '' : `${command} `}--help" for what it takes.`;
  if (error.code === 'commander.help') return new CliFault('name a command first'); // help was just shown
  const hint = fileForCommand(error, argv) ?? oneDash(error) ?? didYouMean(near) ?? read;
  return new CliFault(printable(first.replace(/\.$/, '').replaceAll("'", '"')), { hint });
}

/** "-top" reads as several options. */
function oneDash({ code, message }: CommanderError): string | undefined {
  const word = code === 'commander.unknownOption' ? /'-([a-z][a-z-]+)'/.exec(message)?.[1] : undefined;
  return word === undefined ? undefined : `Options of more than one letter take two dashes: --${word}`;
}

function fileForCommand({ code }: CommanderError, [first]: readonly string[]): string | undefined {
  if (code !== 'commander.unknownCommand' || first === undefined || !/[./\\]|^-$/.test(first))
    return undefined;
  return `A command comes first, then the files: cinchwright size ${printable(first)}`;
}
