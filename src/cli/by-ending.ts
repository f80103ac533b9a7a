/** The ending of --out sets the format unless --format does. */
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

/** Errors: a format the command cannot print. */
export function formatByEnding(command: Command): void {
  const { out, pick } = command.opts<{ out?: unknown; pick?: unknown }>();
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

/** undefined for plain text. Errors: an unknown ending. */
function formatNamed(out: string): string | undefined {
  const [ending = '', letters = ''] = /\.(\w+)$/.exec(out) ?? [];
  const format = formatOf[letters.toLowerCase()];
  if (format !== undefined || ending === '' || /^(?:txt|text|ya?ml)$/i.test(letters)) return format;
  throw new CliFault(`we print no ${printable(ending)} files: --out names ${printable(out)}`, {
    hint: 'End the name in .txt, .md, .html, .pdf, .json or .csv, or name a --format.',
  });
}
