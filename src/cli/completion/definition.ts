/** What there is to complete, read off the parser of the command line itself, so that it is never out of step with it. */
import type { Argument, Command, Option } from 'commander';
import type { WordReader } from '../options.ts';
import { version } from '../version.ts';

/** What may stand in a place: one of some words, an order or shop file, any file, or something nobody can guess. */
export type Takes =
  { readonly kind: 'words'; readonly words: readonly string[] } | { readonly kind: 'yaml' | 'file' | 'text' };

export interface OptionEntry {
  /** "-h", "--help". */
  readonly flags: readonly string[];
  readonly about: string;
  /** What the next word must be; undefined for an option that stands alone, or whose value has to be joined by "=". */
  readonly takes: Takes | undefined;
  /** Name of the value, as the help gives it. */
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
  /** Options that may stand before the command. */
  readonly options: readonly OptionEntry[];
  readonly commands: readonly CommandEntry[];
}

/** Options with a file that is written in YAML; every other file of an option may be of any kind. */
const yamlOptions = ['--shop', '--promise', '--backlog', '--orders', '--save'];

/** Words of an argument that its definition does not tell, by the argument's name. */
type Known = Readonly<Record<string, readonly string[]>>;

/** All commands, options and arguments that the help shows. */
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

/** Every flag that takes the next word as its value; if it does in one command, it does in all. */
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

/** The few words that an option or an argument takes. */
function wordsOf({ argChoices, parseArg }: Option | Argument): readonly string[] | undefined {
  return argChoices ?? (parseArg as Partial<WordReader> | undefined)?.words;
}
