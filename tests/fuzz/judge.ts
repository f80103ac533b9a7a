/** One try: the input through its door, the command lines that follow, and all that must hold. */
import type { Random } from '../../src/geometry/random.ts';
import type { Case } from './case.ts';
import { holdCsv, holdHtml, holdJson, holdMarkdown, holdSvg, holdText } from './hold-output.ts';
import { nullable } from './nullable.ts';
import { Folder, type Ran } from './machine.ts';
import { hold, type Standing, type Target } from './target.ts';

/** What a try came to. */
export interface Judged {
  readonly standing: Standing;
  readonly runs: number;
  /** Milliseconds. */
  readonly took: number;
  /** What did not hold, if anything. */
  readonly why?: string;
}

/** No try may take longer, door and runs together. */
export const mostMilliseconds = 2000;

/** Tries one target, in a folder of its own. */
export class Bench {
  readonly target: Target;
  readonly #folder = new Folder();

  constructor(target: Target) {
    this.target = target;
    this.#folder.put(target.beside);
  }

  /** A new input and the command lines to run with it. */
  next(parents: readonly Buffer[], chance: Random): { tried: Case; standing: Standing | Error } {
    const input = this.target.change(parents, chance);
    let standing: Standing | Error;
    try {
      standing = this.target.look(input);
    } catch (error) {
      standing = error as Error;
    }
    const lines = standing instanceof Error ? [] : this.target.lines(standing, input, chance);
    return { tried: { target: this.target.name, input, lines }, standing };
  }

  /** Tries a case; nothing is thrown. `looked`: what the door made of it, where that is known already. */
  async judge({ input, lines }: Case, looked?: Standing | Error): Promise<Judged> {
    const start = performance.now();
    let standing: Standing = 'faulty';
    let runs = 0;
    try {
      if (looked instanceof Error) throw looked;
      standing = looked ?? this.target.look(input);
      for (const line of lines) {
        runs += 1;
        await this.#run(line, input);
      }
    } catch (error) {
      const took = performance.now() - start;
      return { standing, runs, took, why: error instanceof Error ? `${error.name}: ${error.message}` : String(error) };
    }
    const took = performance.now() - start;
    return took > mostMilliseconds
      ? { standing, runs, took, why: `it took ${took.toFixed(0)} ms` }
      : { standing, runs, took };
  }

  async #run(line: readonly string[], input: Buffer): Promise<void> {
    const { file, after, beside, writes } = this.target;
    this.#folder.put({ [file]: input });
    try {
      const ran = await this.#folder.run(line, input);
      holdRun(line, ran, `${input.toString('utf8')}\n${line.join(' ')}`);
      after?.(ran, (name) => this.#folder.read(name));
    } finally {
      if (writes === true) {
        this.#folder.empty();
        this.#folder.put(beside);
      }
    }
  }

  close(): void {
    this.#folder.remove();
  }
}

/** What must hold of every run. `said` is all that came from outside. */
function holdRun(line: readonly string[], { code, stdout, stderr, bytes }: Ran, said: string): void {
  const which = (): string => `${line.join(' ')}: `;
  try {
    hold([0, 1, 2, 3].includes(code), () => `it ends with ${String(code)}`);
    hold(!/something is wrong in the program itself|\n\s+at .+:\d+:\d+/.test(stderr), () => stderr.slice(0, 600));
    holdText(stderr, said);
    hold(code === 0 || code === 1 || stderr !== '', () => 'it says nothing of why');
    if (!isMarkupOfOurs(line)) holdText(stdout.replaceAll('\r\n', '\n'), said);
    holdFormat(line, stdout);
    hold(bytes.length === 0 || /^(?:%PDF-|\x89PNG|\xff\xd8\xff)/.test(bytes.subarray(0, 8).toString('latin1')), () => 'bytes of no known kind');
  } catch (error) {
    (error as Error).message = which() + (error as Error).message;
    throw error;
  }
}

/** Scripts for a shell and for a browser hold signs that no screen shows. */
const isMarkupOfOurs = (line: readonly string[]): boolean => line.some((word) => /^--pick|^completion$|^schema$/.test(word));

/** By its first signs: a format may be named in many ways. */
function holdFormat(line: readonly string[], text: string): void {
  const [command = ''] = line;
  if (text === '' || ['help', 'new', 'schema', 'completion', 'rules'].includes(command) || line.includes('--help') || line.includes('-h')) return;
  const format = line[line.indexOf('--format') + 1];
  if (text.startsWith('<!doctype html>')) holdHtml(text, line.includes('--pick') ? pickTags : []);
  else if (/^<(?:\?xml|svg)/.test(text)) holdSvg(text);
  else if (format === 'csv' || (line.includes('--format=csv') && !text.startsWith('Usage'))) holdCsv(text);
  else if (format === 'markdown') holdMarkdown(text);
  else if (format === 'ndjson' || format === 'json') holdJson(text, format === 'ndjson', nullable[command] ?? new Set());
}

const pickTags = ['script', 'main', 'section', 'button', 'canvas', 'input', 'label', 'select', 'option', 'ol', 'pre', 'textarea', 'img', 'output', 'noscript', 'footer', 'nav', 'strong', 'em', 'dl', 'dt', 'dd', 'details', 'summary', 'a', 'code', 'fieldset', 'legend', 'kbd', 'small', 'form'];
