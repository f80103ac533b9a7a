/** How a paper about a whole backlog is printed: as a sheet, as a table for a spreadsheet, or for scripts. */
import type { Paper } from '../print/document.ts';
import type { Sheet } from '../report/sheet.ts';
import { Option } from 'commander';
import { emit, tellNotWritten } from './emit.ts';
import type { CliIo } from './io.ts';
import { word } from './options.ts';
import { emitPdf } from './pdf.ts';
import { reportOptions } from './screen.ts';

const formats = ['table', 'csv', 'json', 'markdown', 'html', 'pdf'] as const;
type BacklogFormat = (typeof formats)[number];

/** --format of papers about a backlog. */
export const backlogFormatOption = (): Option =>
  new Option('--format <name>', `print as ${formats.join(', ')}`)
    .default('table', 'table')
    .argParser(word('--format', formats));

export interface BacklogOptions {
  format: BacklogFormat;
  shop?: string;
  out?: string;
  paper?: Paper;
  color: boolean;
}

/** The kinds of printers; each is loaded when it is asked for. No sheet where there is nothing to put on one. */
export interface BacklogPrinters {
  readonly sheet: () => Promise<Sheet | undefined>;
  readonly csv: () => Promise<string>;
  readonly json: () => Promise<string>;
}

/** Prints in the format asked for; a PDF carries the day it is written. */
export async function printBacklog(
  printers: BacklogPrinters,
  { format, out, paper, color, day }: BacklogOptions & { day: string },
  io: CliIo,
): Promise<void> {
  if (format === 'json' || format === 'csv') {
    emit(await printers[format](), out, io);
    return;
  }
  const sheet = await printers.sheet();
  if (sheet === undefined) tellNotWritten(out, io);
  else if (format === 'pdf') await emitPdf([sheet], { out, paper, day }, io);
  else emit(await onSheets[format]([sheet], { io, out, color }), out, io);
}

interface Target {
  readonly io: CliIo;
  readonly out: string | undefined;
  readonly color: boolean;
}

const onSheets: Readonly<
  Record<
    Exclude<BacklogFormat, 'json' | 'csv' | 'pdf'>,
    (sheets: readonly Sheet[], target: Target) => Promise<string>
  >
> = {
  table: async (sheets, { io, out, color }) =>
    (await import('../report/sheet-screen.ts')).sheetsScreen(
      sheets,
      reportOptions({ units: 'in', color, out }, io),
    ),
  markdown: async (sheets) => (await import('../report/sheet-markdown.ts')).sheetsMarkdown(sheets),
  html: async (sheets) => (await import('../report/sheet-html.ts')).sheetsHtml(sheets),
};
