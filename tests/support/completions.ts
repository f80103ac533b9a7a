/** What real shells offer at a line's end with our completion script. */
import { said } from './shells.ts';
import { wordsOf } from './words-of.ts';

export interface Asked {
  readonly script: string;
  readonly cwd: string;
  readonly lines: readonly string[];
}

/** Sorted, folders without their slash. */
export type Offers = readonly (readonly string[])[];

const tidy = (text: string): string[] =>
  [...new Set(text.split('\n').filter((offer) => offer !== ''))]
    .map((offer) => offer.replace(/\/$/, ''))
    .sort();

function told(program: string, args: readonly string[], cwd: string): string {
  const { code, stdout, stderr } = said(program, args, { cwd });
  if (code !== 0 || stderr !== '') throw new Error(`${program} ended with ${String(code)}: ${stderr}`);
  return stdout;
}

const ask = `source "$1"; shift
COMP_WORDS=("$@"); COMP_CWORD=$(($# - 1))
_cinchwright
printf '%s\\n' "\${COMPREPLY[@]}"`;

/** Bash splits words at "=" as on a terminal (COMP_WORDBREAKS). */
export const bashOffers = ({ script, cwd, lines }: Asked): Offers =>
  lines.map((line) => {
    const words = wordsOf(line).flatMap((word) => word.split(/(?<==)|(?==)/));
    if (line.endsWith(' ')) words.push('');
    return tidy(told('bash', ['--norc', '-c', ask, 'bash', script, ...words], cwd));
  });

const fishAsk = `source $argv[1]
for line in $argv[2..-1]
    complete -C $line | string replace -r '\\t.*' ''
    echo :next:
end`;

export const fishOffers = ({ script, cwd, lines }: Asked): Offers =>
  told('fish', ['--no-config', '-c', fishAsk, script, ...lines], cwd)
    .split(':next:\n')
    .slice(0, lines.length)
    .map(tidy);

/** Zsh completes only on a terminal: it gets one, and writes down its offers. */
const zshAsk = `zmodload zsh/zpty
script=$1; shift
zpty -b shell zsh -f -i
zpty -w shell "PROMPT=; unsetopt beep; LISTMAX=100000; autoload -Uz compinit && compinit -u -D; source \${(q)script}"
zpty -w shell 'compadd() {
  local -a offers
  if [[ \${@[1,(i)(-|--)]} == *-(O|A|D)\\ * ]]; then builtin compadd "$@"; return; fi
  builtin compadd -O offers "$@"
  (( $#offers )) && print -rl -- \${(Q)offers} >> .offers
  builtin compadd "$@"
}'
# Only when its editor has started does the shell read a Tab as a Tab.
zpty -w shell 'zle-line-init() { print -n at""mark }; zle -N zle-line-init'
for line in "$@"; do
  zpty -r shell text '*atmark*'
  zpty -w -n shell "$line"$'\\t\\x15'"print -r -- :next: >> .offers"$'\\n'
done
zpty -r shell text '*atmark*'
zpty -d shell
cat .offers; rm .offers`;

export const zshOffers = ({ script, cwd, lines }: Asked): Offers =>
  told('zsh', ['-f', '-c', zshAsk, 'zsh', script, ...lines], cwd)
    .split(':next:\n')
    .slice(0, lines.length)
    .map(tidy);
