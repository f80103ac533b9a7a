/** docs/cinchwright.1: the manual page, from the program's help. */
import { commandNames } from '../../../src/cli/program.ts';
import { version } from '../../../src/cli/version.ts';
import { cautions } from '../../../src/numbers/cautions.ts';
import { run } from '../run-cli.ts';

/** Such as an option. */
interface Item {
  readonly term: string;
  readonly text: string;
}

/** In man macros. */
export async function manPage(): Promise<string> {
  const top = partsOf(await helpOf(['--help']));
  const sections: string[] = [];
  for (const name of commandNames) sections.push(await commandSection(name));
  return [
    `.TH CINCHWRIGHT 1 "" "cinchwright ${version}" "User Commands"`,
    '.SH NAME',
    'cinchwright \\- finds the mohair cinch that suits a horse, a saddle and the work',
    '.SH SYNOPSIS',
    '.B cinchwright',
    '.I command',
    '[\\fIoptions\\fR] [\\fIfiles\\fR ...]',
    '.SH DESCRIPTION',
    ...plain(top.about),
    ...plain('Data goes to standard output, messages to standard error.'),
    ...top.rest.flatMap(block).map((line) => (line === 'Exit codes' ? '.SH EXIT STATUS' : line)),
    '.SH COMMANDS',
    ...sections,
    '.SH ENVIRONMENT',
    ...list([{ term: 'NO_COLOR', text: 'Set to anything, it keeps colors out of what is printed.' }]),
    '.SH CAUTIONS',
    ...cautions.flatMap(plain),
    '',
  ].join('\n');
}

async function helpOf(args: readonly string[]): Promise<string> {
  const { code, stdout } = await run(args);
  if (code !== 0) throw new Error(`cinchwright ${args.join(' ')} ended with ${code}`);
  return stdout;
}

async function commandSection(name: string): Promise<string> {
  const { usage, about, rest } = partsOf(await helpOf([name, '--help']));
  return [`.SS ${escaped(usage)}`, ...plain(about), ...rest.flatMap(block)].join('\n');
}

interface Parts {
  readonly usage: string;
  readonly about: string;
  /** Paragraphs after it. */
  readonly rest: readonly string[];
}

/** The help's paragraphs: usage and what it is for, then lists, examples and plain ones. */
function partsOf(help: string): Parts {
  const [head = '', ...rest] = help.trimEnd().split(/\n\n+/);
  const [usage = '', ...about] = head.split('\n');
  return { usage: usage.replace(/^Usage: cinchwright /, ''), about: about.join(' '), rest };
}

/** What stands two columns in is a list, or examples line by line; the rest is text. */
function block(paragraph: string): string[] {
  const lines = paragraph.replace(/^\n/, '').split('\n');
  if (!lines.some((line) => line.startsWith('  '))) return plain(paragraph);
  if (lines.some((line) => /^ {2,}(cinchwright|eval) |^Install:/.test(line)))
    return ['.PP', ...verbatim(lines)];
  const heads = lines.filter((line) => !line.startsWith(' '));
  return [...heads.flatMap(plain), ...list(itemsOf(lines.filter((line) => line.startsWith(' '))))];
}

/** Terms start two columns in; deeper text continues them. */
function itemsOf(lines: readonly string[]): Item[] {
  const items: Item[] = [];
  for (const line of lines) {
    const found = /^ {2}(\S.*?)(?: {2,}(.*))?$/.exec(line);
    if (found !== null) items.push({ term: found[1] ?? '', text: found[2] ?? '' });
    else {
      const { term, text } = items.pop() ?? { term: '', text: '' };
      items.push({ term, text: `${text} ${line.trim()}`.trim() });
    }
  }
  return items;
}

const list = (items: readonly Item[]): string[] =>
  items.flatMap(({ term, text }) => ['.TP', `.B ${escaped(term)}`, escaped(text)]);

const plain = (text: string): string[] => ['.PP', escaped(text.replace(/\s+/g, ' '))];

const verbatim = (lines: readonly string[]): string[] => ['.nf', ...lines.map(escaped), '.fi'];

/** No line may begin with a control character. */
const escaped = (text: string): string =>
  text
    .replaceAll('\\', '\\e')
    .replaceAll('-', '\\-')
    .replace(/^(?=[.'])/, '\\&');
