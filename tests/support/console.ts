/** Finds console examples in documents and runs them like a shell. */
import fs from 'node:fs';
import path from 'node:path';
import { newFolder } from './folder.ts';
import { run, repo } from './run-cli.ts';
import { wordsOf } from './words-of.ts';

export interface Example {
  readonly line: number;
  /** Without its "$ ". */
  readonly command: string;
  /** When cut, only its start. */
  readonly output: string;
  readonly cut: boolean;
  /** In the document: from, and up to but without. */
  readonly lines: readonly [from: number, to: number];
}

/** A block may hold several commands with outputs. */
export function examplesIn(markdown: string): Example[] {
  const found: { line: number; command: string; lines: string[] }[] = [];
  let fence: string | undefined;
  markdown.split('\n').forEach((text, i) => {
    const tick = /^\s*(`{3,})\s*(\S*)/.exec(text);
    if (fence === undefined) {
      if (tick !== null) fence = tick[2] === 'console' ? 'console' : 'other';
    } else if (tick !== null && tick[2] === '') fence = undefined;
    else if (fence === 'console') {
      if (text.startsWith('$ ')) found.push({ line: i + 1, command: text.slice(2).trim(), lines: [] });
      else found.at(-1)?.lines.push(text);
    }
  });
  return found.map(({ line, command, lines }) => {
    const cut = lines.at(-1)?.trim() === '...';
    const shown = cut ? lines.slice(0, -1) : lines;
    const output = shown.join('\n').trimEnd();
    const taken = cut ? shown.length : output === '' ? 0 : output.split('\n').length;
    return { line, command, cut, output, lines: [line, line + taken] };
  });
}

/** A copy of the examples, to change; the caller removes it. */
export function playground(): string {
  const dir = newFolder();
  for (const name of ['examples', 'docs']) {
    fs.cpSync(path.join(repo, name), path.join(dir, name), { recursive: true });
  }
  return dir;
}

/**
 * Shows both streams in order. Knows `cinchwright ...` with `< file`, `> file` and stars in file names, `cat
 * file`, `echo $?`, and a pipe from `cat`.
 */
export class Shell {
  readonly #cwd: string;
  #code = 0;

  constructor(cwd: string) {
    this.#cwd = cwd;
  }

  /** @throws on a line this shell does not know */
  async run(line: string): Promise<string> {
    if (line === 'echo $?') return `${this.#code}\n`;
    const piped = /^(cat [^|]+)\| *(cinchwright .*)$/.exec(line);
    if (piped !== null) return this.#program(wordsOf(piped[2] ?? ''), this.#cat(wordsOf(piped[1] ?? '')));
    const words = wordsOf(line);
    if (words[0] === 'cat') return this.#cat(words);
    if (words[0] === 'cinchwright' && !words.includes('|')) return this.#program(words);
    throw new Error(`no console example: "$ ${line}"; use a block without "console" for other programs`);
  }

  #cat(words: readonly string[]): string {
    return words
      .slice(1)
      .map((name) => fs.readFileSync(path.join(this.#cwd, name), 'utf8'))
      .join('');
  }

  async #program(words: readonly string[], stdin?: string): Promise<string> {
    const [args, input] = without(words.slice(1), '<');
    const [plain, target] = without(args, '>');
    let shown = '';
    let kept = '';
    const show = (text: string): void => {
      shown += text;
    };
    const keep = (text: string): void => {
      kept += text;
    };
    const given = input === undefined ? stdin : this.#cat(['cat', input]);
    const { code } = await run(
      plain.flatMap((word) => this.#expanded(word)),
      {
        cwd: this.#cwd,
        ...(given === undefined ? {} : { stdin: given }),
        io: { stdout: target === undefined ? show : keep, stderr: show },
      },
    );
    if (target !== undefined) fs.writeFileSync(path.join(this.#cwd, target), kept);
    this.#code = code;
    return shown;
  }

  /** A star may stand in the last part; the word itself when nothing matches. */
  #expanded(word: string): string[] {
    if (!word.includes('*')) return [word];
    const dir = path.dirname(word);
    const pattern = new RegExp(`^${path.basename(word).split('*').map(literal).join('.*')}$`);
    const names = fs.existsSync(path.join(this.#cwd, dir)) ? fs.readdirSync(path.join(this.#cwd, dir)) : [];
    const fitting = names.filter((name) => !name.startsWith('.') && pattern.test(name)).sort();
    return fitting.length === 0 ? [word] : fitting.map((name) => (dir === '.' ? name : `${dir}/${name}`));
  }
}

const literal = (text: string): string => text.replace(/[.+?^${}()|[\]\\]/g, '\\$&');

function without(words: readonly string[], sign: '<' | '>'): [words: string[], file: string | undefined] {
  const at = words.indexOf(sign);
  if (at < 0) return [[...words], undefined];
  return [words.toSpliced(at, 2), words[at + 1]];
}
