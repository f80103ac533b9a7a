/** The completion script for bash, 3.2 and newer. */
import { valueFlags, type CommandEntry, type Definition, type Takes } from './definition.ts';
import { quoted } from './quote.ts';

/** The whole script. */
export function bashScript(definition: Definition): string {
  const { program, version, options, commands } = definition;
  const name = `_${program}`;
  const flags = [...valueFlags(definition)].join('|');
  return `# Completes ${program} ${version} in bash. Written by: ${program} completion bash
${helpers(name)}
${name}() {
  local word=\${COMP_WORDS[COMP_CWORD]} option='' command='' count=0 rest='' join='' given i
  COMPREPLY=()
  # Bash cuts "--format=json" in three: a "=" belongs to the option before it.
  for ((i = 1; i < COMP_CWORD; i++)); do
    given=\${COMP_WORDS[i]}
    if [[ $given == = ]]; then option=\${option:-=}; continue; fi
    if [[ -n $option ]]; then option=''; continue; fi
    if [[ -z $rest ]]; then
      case $given in
        --) rest=yes; continue ;;
        ${flags}) option=$given; continue ;;
        -?*) continue ;;
      esac
    fi
    if [[ -z $command ]]; then command=$given; else count=$((count + 1)); fi
  done
  if [[ $word == = ]]; then option=\${option:-=}; word=''; fi
  if [[ -z $option$rest && $word == --*=* ]]; then option=\${word%%=*}; join=$option=; word=\${word#*=}; fi
  # The word comes as it was typed, quotes and all.
  word=\${word#[\\"\\']}
  word=\${word//\\\\/}
  if [[ -n $option ]]; then
    case "$command $option" in
${valuesOf(name, definition)}
    esac
    if [[ -n $join ]]; then COMPREPLY=("\${COMPREPLY[@]/#/$join}"); fi
    return
  fi
  case $command in
${branch(name, { name: "''", options }, `${name}_words ${quoted(commands.map((command) => command.name).join(' '))}`)}
${commands.map((command) => branch(name, command, argumentsOf(name, command))).join('\n')}
  esac
}

# Names of files get their slash and their quotes from bash; older ones cannot be told in time.
if type compopt > /dev/null 2>&1; then
  complete -F ${name} ${program}
else
  complete -o filenames -F ${name} ${program}
fi
`;
}
function valuesOf(name: string, { options, commands }: Definition): string {
  const places = new Map<string, string[]>();
  for (const command of [{ name: '', options }, ...commands]) {
    for (const { flags, takes } of command.options) {
      if (takes === undefined) continue;
      const what = offer(name, takes);
      places.set(what, [...(places.get(what) ?? []), ...flags.map((flag) => `"${command.name} ${flag}"`)]);
    }
  }
  return [...places].map(([what, patterns]) => `      ${patterns.join('|')}) ${what} ;;`).join('\n');
}

const helpers = (name: string): string => `
${name}_reply() {
  local line
  while IFS= read -r line; do COMPREPLY+=("$line"); done
}

${name}_words() {
  ${name}_reply < <(compgen -W "$1" -- "$word")
}

${name}_files() {
  compopt -o filenames 2> /dev/null
  ${name}_reply < <(compgen -f -- "$word")
}

${name}_yaml() {
  compopt -o filenames 2> /dev/null
  ${name}_reply < <(compgen -f -X '!*.y*ml' -- "$word")
  ${name}_reply < <(compgen -d -- "$word")
}
`;

function branch(
  name: string,
  { name: command, options }: Pick<CommandEntry, 'name' | 'options'>,
  others: string,
): string {
  const flags = options.flatMap((option) => option.flags).join(' ');
  return `    ${command})
      if [[ -z $rest && $word == -* ]]; then ${name}_words ${quoted(flags)}
      else ${others}; fi ;;`;
}

function argumentsOf(name: string, { arguments: all }: CommandEntry): string {
  const places = all.map(({ many, takes }, i) => `${many ? '*' : String(i)}) ${offer(name, takes)} ;;`);
  return places.length === 0 ? ':' : `case $count in ${places.join(' ')} esac`;
}

function offer(name: string, takes: Takes): string {
  switch (takes.kind) {
    case 'words':
      return `${name}_words ${quoted(takes.words.join(' '))}`;
    case 'yaml':
      return `${name}_yaml`;
    case 'file':
      return `${name}_files`;
    case 'text':
      return ':';
  }
}
