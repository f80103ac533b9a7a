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
  const format = formatOf[/\.(\w+)$/.exec(out)?.[1]?.toLowerCase() ?? ''];
  if (format === undefined) {
    if (!/\.\w+$/.test(out) || /\.(?:txt|text)$/i.test(out)) return;
    throw new CliFault(
      `nothing is printed as ${printable(/\.\w+$/.exec(out)?.[0] ?? '')}: --out names ${printable(out)}`,
      {
        hint: 'End the name in .txt, .md, .html, .pdf, .json or .csv, or name a --format.',
      },
    );
  }
  const { words = [] } = (option.parseArg ?? {}) as Partial<WordReader>;
  if (!words.includes(format)) {
    throw new CliFault(`${command.name()} cannot print ${format}: --out names ${printable(out)}`, {
      hint: `It prints ${words.join(', ')}; --format names one whatever the file is called.`,
    });
  }
  command.setOptionValueWithSource('format', format, 'implied');
}
