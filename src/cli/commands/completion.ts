/** `completion`: completes commands, options and order files in a shell. */
import { Argument, type Command } from 'commander';
import type { Definition } from '../completion/definition.ts';
import { exit, type ExitCode } from '../fault.ts';
import { word } from '../options.ts';
import type { Session } from '../program.ts';

const shells = ['bash', 'zsh', 'fish'] as const;
type Shell = (typeof shells)[number];

const install = `
Install:
  bash  add this line to ~/.bashrc:
          eval "$(cinchwright completion bash)"
  zsh   write it where zsh looks for completions:
          mkdir -p ~/.zfunc
          cinchwright completion zsh > ~/.zfunc/_cinchwright
        and have these lines in ~/.zshrc:
          fpath=(~/.zfunc $fpath)
          autoload -Uz compinit && compinit
  fish  write it where fish looks for completions:
          mkdir -p ~/.config/fish/completions
          cd ~/.config/fish/completions
          cinchwright completion fish > cinchwright.fish
Then start a new shell. After an update of cinchwright write the files again.`;

/** Adds the command. */
export function addCompletion(program: Command, session: Session): void {
  program
    .command('completion')
    .summary('print a script that completes commands in your shell')
    .description(
      'Prints a script that lets the Tab key of a shell complete commands, options and order files.',
    )
    .addArgument(new Argument('<shell>', 'bash, zsh or fish').argParser(word('completion', shells)))
    .addHelpText('after', install)
    .action(async (shell: Shell) => {
      session.code = await printScript(shell, program, session);
    });
}

async function printScript(shell: Shell, program: Command, { io }: Session): Promise<ExitCode> {
  const { definitionOf } = await import('../completion/definition.ts');
  const { rules } = await import('../../rules/registry.ts');
  const words = { command: program.commands.map((command) => command.name()), id: rules.map(({ id }) => id) };
  io.stdout(await printers[shell](definitionOf(program, words)));
  return exit.good;
}

type Printer = (definition: Definition) => Promise<string>;

const printers: Record<Shell, Printer> = {
  bash: async (definition) => (await import('../completion/bash.ts')).bashScript(definition),
  zsh: async (definition) => (await import('../completion/zsh.ts')).zshScript(definition),
  fish: async (definition) => (await import('../completion/fish.ts')).fishScript(definition),
};
