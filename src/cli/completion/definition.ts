/** What can be completed, read from the parser. */
import type { Argument, Command, Option } from 'commander';
import type { WordReader } from '../options.ts';
import { version } from '../version.ts';

export type Takes =
  { readonly kind: 'words'; readonly words: readonly string[] } | { readonly kind: 'yaml' | 'file' | 'text' };

export interface OptionEntry {
  readonly flags: readonly string[];
  readonly about: string;
  /** undefined for a flag, or a value after "=". */
  readonly takes: Takes | undefined;
  /** As in help. */
  readonly value: string;
}

export interface ArgumentEntry {
  readonly name: string;
  readonly about: string;
  readonly many: boolean;
  readonly takes: Takes;
}

export interface CommandEntry {
  readonly name: string;
  readonly about: string;
  readonly options: readonly OptionEntry[];
  readonly arguments: readonly ArgumentEntry[];
}

export interface Definition {
  readonly program: string;
  readonly version: string;
  readonly options: readonly OptionEntry[];
  readonly commands: readonly CommandEntry[];
}

const yamlOptions = ['--shop', '--promise', '--backlog', '--orders', '--save'];

type Known = Readonly<Record<string, readonly string[]>>;

/** `known` adds words the parser lacks. */
export const definitionOf = (program: Command, known: Known): Definition => ({
  program: program.name(),
  version,
  options: optionsOf(program),
  commands: program
    .createHelp()
    .visibleCommands(program)
    .map((command) => ({
      name: command.name(),
      about: command.summary(),
      options: optionsOf(command),
      arguments: command.registeredArguments.map((argument) => argumentOf(argument, known)),
    })),
});

/** They take the next word in any command. */
export const valueFlags = ({ options, commands }: Definition): ReadonlySet<string> =>
  new Set(
    [...options, ...commands.flatMap((command) => command.options)].flatMap(({ flags, takes }) =>
      takes === undefined ? [] : flags,
    ),
  );

function optionsOf(command: Command): OptionEntry[] {
  const help = command.createHelp();
  return [...help.visibleOptions(command), ...help.visibleGlobalOptions(command)].map((option) => ({
    flags: [option.short, option.long].filter((flag) => flag !== undefined),
    about: option.description,
    takes: option.required ? takesOf(option) : undefined,
    value: valueName(option),
  }));
}

const valueName = ({ flags }: Option): string => /[<[]([^>\]]+?)(?:\.\.\.)?[>\]]/.exec(flags)?.[1] ?? '';

function takesOf(option: Option): Takes {
  const words = wordsOf(option);
  if (words !== undefined) return { kind: 'words', words };
  if (yamlOptions.includes(option.long ?? '')) return { kind: 'yaml' };
  return { kind: isFile(valueName(option)) ? 'file' : 'text' };
}

function argumentOf(argument: Argument, known: Known): ArgumentEntry {
  const name = argument.name();
  const words = wordsOf(argument) ?? known[name];
  const takes: Takes =
    words === undefined ? { kind: isFile(name) ? 'yaml' : 'text' } : { kind: 'words', words };
  return { name, about: argument.description, many: argument.variadic, takes };
}

const isFile = (name: string): boolean => /file|folder|path/i.test(name);

function wordsOf({ argChoices, parseArg }: Option | Argument): readonly string[] | undefined {
  return argChoices ?? (parseArg as Partial<WordReader> | undefined)?.words;
}
