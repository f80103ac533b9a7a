/** Checks how a run ends, what it says, and that nothing printed would be obeyed. */
import { holdCsv, holdHtml, holdJson, holdMarkdown, holdSvg, holdText } from './hold-output.ts';
import type { Ran } from './machine.ts';
import { nullable } from './nullable.ts';
import { hold } from './target.ts';

/** `said` is all outside input. */
export function holdRun(line: readonly string[], { code, stdout, stderr, bytes }: Ran, said: string): void {
  const which = (): string => `${line.join(' ')}: `;
  try {
    hold([0, 1, 2, 3].includes(code), () => `it ends with ${String(code)}`);
    hold(!/something is wrong in the program itself|\n\s+at .+:\d+:\d+/.test(stderr), () =>
      stderr.slice(0, 600),
    );
    holdText(stderr, said);
    hold(code === 0 || code === 1 || stderr !== '', () => 'it says nothing of why');
    if (!isMarkupOfOurs(line)) holdText(withoutPictures(stdout), said);
    holdFormat(line, stdout);
    hold(
      bytes.length === 0 || /^(?:%PDF-|\x89PNG|\xff\xd8\xff)/.test(bytes.subarray(0, 8).toString('latin1')),
      () => 'bytes of no known kind',
    );
  } catch (error) {
    (error as Error).message = which() + (error as Error).message;
    throw error;
  }
}

/** They contain signs that no screen shows. */
const isMarkupOfOurs = (line: readonly string[]): boolean =>
  line.some((word) => /^--pick|^completion$|^schema$/.test(word));

/** In the base64 of photos any letters may meet. */
const withoutPictures = (text: string): string =>
  text.replaceAll('\r\n', '\n').replace(/data:image\/\w+;base64,[A-Za-z0-9+/=]+/g, 'data:');

/** The last format counts; nothing after `--`. */
function formatOf(line: readonly string[]): string | undefined {
  const end = line.indexOf('--');
  const words = end === -1 ? line : line.slice(0, end);
  const at = words.findLastIndex((word) => /^--format(?:=|$)/.test(word));
  return words[at]?.split('=')[1] ?? words[at + 1];
}

/** They print nothing of a file; help ignores the format. */
const isOurs = new Set(['help', 'new', 'schema', 'completion', 'rules']);
const helps = new Set(['--help', '-h', '--version', '-v', 'help', '--columns=help']);

/** Formats can be named in many ways. */
function holdFormat(line: readonly string[], text: string): void {
  const command = line.find((word) => !word.startsWith('-')) ?? '';
  if (text === '' || isOurs.has(command) || line.some((word) => helps.has(word))) return;
  const format = formatOf(line);
  if (text.startsWith('<!doctype html>'))
    holdHtml(text, line.some((word) => /^--pick(?:=|$)/.test(word)) ? pickTags : []);
  else if (/^<(?:\?xml|svg)/.test(text)) holdSvg(text);
  else if (format === 'csv') holdCsv(text);
  else if (format === 'markdown') holdMarkdown(text);
  else if (format === 'ndjson' || format === 'json')
    holdJson(text, format === 'ndjson', nullable[command] ?? new Set());
}

/** Only the landmark page has these. */
const pickTags = [
  ...['script', 'main', 'section', 'button', 'canvas', 'input', 'label', 'select', 'option', 'ol', 'pre'],
  ...['textarea', 'img', 'output', 'noscript', 'footer', 'nav', 'strong', 'em', 'dl', 'dt', 'dd'],
  ...['details', 'summary', 'a', 'code', 'fieldset', 'legend', 'kbd', 'small', 'form'],
];
