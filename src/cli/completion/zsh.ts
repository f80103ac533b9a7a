/** The completion script for zsh. */
import type { ArgumentEntry, CommandEntry, Definition, OptionEntry, Takes } from './definition.ts';
import { quoted } from './quote.ts';

/** For a file zsh finds, or a running shell. */
export function zshScript({ program, version, options, commands }: Definition): string {
  const name = `_${program}`;
  return `#compdef ${program}
# Completes ${program} ${version} in zsh. Written by: ${program} completion zsh

${name}_yaml() {
  _files -g '*.(yaml|yml)'
}

${name}_commands() {
  local -a commands=(
${commands.map((command) => `    ${quoted(`${command.name}:${command.about}`)}`).join('\n')}
  )
  _describe -t commands command commands
}

${name}() {
  local curcontext=$curcontext state
  local -a line
  _arguments -C \\
${specs([...options.flatMap((option) => optionSpecs(name, option)), `1:command:${name}_commands`, '*::argument:->arguments'])}
  [[ $state == arguments ]] || return
  curcontext=\${curcontext%:*}-$line[1]:
  case $line[1] in
${commands.map((command) => branch(name, command)).join('\n')}
  esac
}

if [[ \${funcstack[1]-} == ${name} ]]; then
  ${name} "$@"
elif (( \${+functions[compdef]} )); then
  compdef ${name} ${program}
fi
`;
}

const branch = (name: string, { name: command, options, arguments: all }: CommandEntry): string =>
  `    ${command})
      _arguments \\
${specs([
  ...options.flatMap((option) => optionSpecs(name, option)),
  ...all.map((argument, i) => argumentSpec(name, argument, i + 1)),
])} ;;`;

const specs = (all: readonly string[]): string => all.map((spec) => `        ${quoted(spec)}`).join(' \\\n');

/** "(-h --help)-h[about]", one per flag. */
function optionSpecs(name: string, { flags, about, takes, value }: OptionEntry): string[] {
  const text = `[${about.replace(/[[\]\\]/g, '\\$&')}]`;
  const others = flags.length > 1 ? `(${flags.join(' ')})` : '';
  const rest = takes === undefined ? text : `=${text}:${plain(value)}:${action(name, takes)}`;
  return flags.map((flag) => `${others}${flag}${rest}`);
}

const argumentSpec = (name: string, { name: about, many, takes }: ArgumentEntry, place: number): string =>
  `${many ? '*' : String(place)}:${plain(about)}:${action(name, takes)}`;

/** Colons separate parts. */
const plain = (text: string): string => text.replace(/[:\\]/g, '\\$&');

function action(name: string, takes: Takes): string {
  switch (takes.kind) {
    case 'words':
      return `(${takes.words.join(' ')})`;
    case 'yaml':
      return `${name}_yaml`;
    case 'file':
      return '_files';
    case 'text':
      return ' ';
  }
}
