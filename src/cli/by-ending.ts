/** The ending of --out names the format where --format does not. */
import type { Command } from 'commander';
import { CliFault, printable } from './fault.ts';
import type { WordReader } from './options.ts';

const formatOf: Readonly<Record<string, string>> = {
  json: 'json',
  ndjson: 'ndjson',
  jsonl: 'ndjson',
  csv: 'csv',
  md: 'markdown',
  html: 'html',
  htm: 'html',
  pdf: 'pdf',
  svg: 'svg',
  png: 'png',
  jpg: 'jpeg',
  jpeg: 'jpeg',
};

/** Sets --format by the ending of --out. Errors: a format that the command does not print, such as a PDF of a table. */
export function formatByEnding(command: Command): void {
  const { out, pick } = command.opts<{ out?: unknown; pick?: unknown }>();
  // A page to click on is no printed result: it has no format.
  if (pick !== undefined) return;
  const option = command.options.find(({ long }) => long === '--format');
  if (typeof out !== 'string' || option === undefined) return;
  if (command.getOptionValueSource('format') !== 'default') return;
  const format = formatNamed(out);
  if (format === undefined) return;
  const { words = [] } = (option.parseArg ?? {}) as Partial<WordReader>;
  if (!words.includes(format)) {
    throw new CliFault(`${command.name()} cannot print ${format}: --out names ${printable(out)}`, {
      hint: `It prints ${words.join(', ')}; --format wins over the file's ending.`,
    });
  }
  command.setOptionValueWithSource('format', format, 'implied');
}

/** The format that an ending names; undefined for a name without one, or of plain text. Errors: an ending that names none. */
function formatNamed(out: string): string | undefined {
  const [ending = '', letters = ''] = /\.(\w+)$/.exec(out) ?? [];
  const format = formatOf[letters.toLowerCase()];
  if (format !== undefined || ending === '' || /^(?:txt|text|ya?ml)$/i.test(letters)) return format;
  throw new CliFault(`we print no ${printable(ending)} files: --out names ${printable(out)}`, {
    hint: 'End the name in .txt, .md, .html, .pdf, .json or .csv, or name a --format.',
  });
}
