/** The completion script for fish, 3.0 and newer. */
import {
  valueFlags,
  type ArgumentEntry,
  type Definition,
  type OptionEntry,
  type Takes,
} from './definition.ts';
import { fishQuoted } from './quote.ts';

/** The whole script. */
export function fishScript(definition: Definition): string {
  const { program, version, options, commands } = definition;
  const at = (command: string, most: string): string =>
    `complete -c ${program} -n ${fishQuoted(`__${program}_at ${most} ${command}`)}`;
  const lines = [
    ...options.map((option) => `${at('', '0')} ${optionPart(program, option)}`),
    ...commands.map(({ name, about }) => `${at('', '0')} -a ${name} -d ${fishQuoted(about)}`),
    ...commands.flatMap(({ name, options: own, arguments: all }) => [
      '',
      ...own.map((option) => `${at(name, 'any')} ${optionPart(program, option)}`),
      ...all.flatMap((argument, i) =>
        argumentPart(program, argument).map((part) => `${at(name, placeOf(argument, i))} ${part}`),
      ),
    ]),
  ];
  return `# Completes ${program} ${version} in fish. Written by: ${program} completion fish
${helpers(program, [...valueFlags(definition)])}
complete -c ${program} -f
${lines.map((line) => line.trimEnd()).join('\n')}
`;
}

/** Counts arguments; finds YAML files. */
const helpers = (program: string, flags: readonly string[]): string => `
# True when so many arguments (or any number) stand behind the command named, or behind none.
function __${program}_at -a count command
    set -l words
    set -l skip no
    for word in (commandline -opc)[2..-1]
        if test $skip = yes
            set skip no
            continue
        end
        switch $word
            case ${flags.join(' ')}
                set skip yes
            case '-?*'
            case '*'
                set words $words $word
        end
    end
    test "$words[1]" = "$command"; or return 1
    test $count = any; and return 0
    test (count $words[2..-1]) = $count
end

function __${program}_yaml
    __fish_complete_path (string replace -r '^--[a-z-]+=' '' -- (commandline -ct)) | string match -r '^[^\\t]*(?:\\.ya?ml|/)(?:\\t.*)?$'
end
`;

const placeOf = ({ many }: ArgumentEntry, i: number): string => (many ? 'any' : String(i));

function optionPart(program: string, { flags, about, takes }: OptionEntry): string {
  const names = flags.map((flag) => (flag.startsWith('--') ? `-l ${flag.slice(2)}` : `-s ${flag.slice(1)}`));
  return [...names, valuePart(program, takes), `-d ${fishQuoted(about)}`]
    .filter((part) => part !== '')
    .join(' ');
}

function valuePart(program: string, takes: Takes | undefined): string {
  switch (takes?.kind) {
    case undefined:
      return '';
    case 'words':
      return `-x -a ${fishQuoted(takes.words.join(' '))}`;
    case 'yaml':
      return `-x -a '(__${program}_yaml)'`;
    case 'file':
      return '-r -F';
    case 'text':
      return '-x';
  }
}

function argumentPart(program: string, { takes }: ArgumentEntry): string[] {
  if (takes.kind === 'words') return [`-a ${fishQuoted(takes.words.join(' '))}`];
  return takes.kind === 'yaml' ? [`-a '(__${program}_yaml)'`] : [];
}
