/** docs/commands.md: the help of the program and of every command, as the program prints it. */
import { commandNames } from '../../../src/cli/program.ts';
import { document } from '../../../src/report/markdown.ts';
import { run } from '../run-cli.ts';

/** Text of docs/commands.md. */
export async function commandsDoc(): Promise<string> {
  const sections: string[] = [];
  for (const name of commandNames) sections.push(`## ${name}`, await helpBlock([name, '--help']));
  return document([
    '# Commands',
    'What the program says about itself. Lengths in files and options always carry their unit; data goes to standard output, messages to standard error.',
    await helpBlock(['--help']),
    ...sections,
  ]);
}

async function helpBlock(args: readonly string[]): Promise<string> {
  const { code, stdout } = await run(args);
  if (code !== 0) throw new Error(`cinchwright ${args.join(' ')} ended with ${code}`);
  return ['```console', `$ cinchwright ${args.join(' ')}`, stdout.trimEnd(), '```'].join('\n');
}
