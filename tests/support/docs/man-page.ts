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
    '.SH OPTIONS',
    ...list(itemsOf(top.lists.get('Options') ?? [])),
    '.SH COMMANDS',
    ...sections,
    '.SH EXIT STATUS',
    ...list(itemsOf(top.lists.get('Exit codes') ?? [])),
    '.SH ENVIRONMENT',
    ...list([{ term: 'NO_COLOR', text: 'Set to anything, it keeps colors out of what is printed.' }]),
    '.SH EXAMPLES',
    ...verbatim(top.lists.get('Examples') ?? []),
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
  const { usage, about, lists, rest } = partsOf(await helpOf([name, '--help']));
  return [
    `.SS ${escaped(usage.replace(/^cinchwright /, ''))}`,
    ...plain(about),
    ...list([...itemsOf(lists.get('Arguments') ?? []), ...itemsOf(lists.get('Options') ?? [])]),
    ...rest.flatMap(plain),
    ...(lists.has('Examples') ? ['.PP', 'Examples:', ...verbatim(lists.get('Examples') ?? [])] : []),
  ].join('\n');
}

interface Parts {
  readonly usage: string;
  readonly about: string;
  /** By a heading that ends in a colon. */
  readonly lists: ReadonlyMap<string, readonly string[]>;
  /** After the options. */
  readonly rest: readonly string[];
}

/** Usage, purpose, lists under headings, plain paragraphs. */
function partsOf(help: string): Parts {
  const [usage = '', about = '', ...others] = help.trimEnd().split(/\n\n+/);
  const lists = new Map<string, readonly string[]>();
  const rest: string[] = [];
  for (const paragraph of others) {
    const [head = '', ...lines] = paragraph.split('\n');
    if (/^[A-Z][\w ]*:$/.test(head)) lists.set(head.slice(0, -1), lines);
    else rest.push(paragraph);
  }
  return { usage: usage.replace(/^Usage: /, '').replace(/\s+/g, ' '), about, lists, rest };
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
