/** `help`: the help of the program or of one command. */
import type { Command } from 'commander';
import { nearestWord } from '../../units/nearest.ts';
import { CliFault, didYouMean, printable } from '../fault.ts';

/** The parser's own ignores a wrong name. */
export function addHelp(program: Command): void {
  program
    .command('help')
    .summary('show the help of a command')
    .description('Shows the help of a command, or of the whole program.')
    .argument('[command]', 'the command')
    .action((name: string | undefined) => {
      (name === undefined ? program : commandOf(name, program)).outputHelp();
    });
}

function commandOf(name: string, { commands }: Command): Command {
  const found = commands.find((command) => command.name() === name);
  if (found !== undefined) return found;
  const names = commands.map((command) => command.name());
  const hint = didYouMean(nearestWord(name, names)) ?? `There are: ${names.join(', ')}.`;
  throw new CliFault(`there is no command called "${printable(name)}"`, { hint });
}
