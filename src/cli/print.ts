/** Prints one result in many forms, each made on demand. */
import type { Paper } from '../pages/pdf/document.ts';
import type { Sheet } from '../pages/sheet.ts';
import { emit, tellNotWritten } from './emit.ts';
import type { CliIo } from './io.ts';
import { emitPdf } from './pdf.ts';
import { reportOptions } from './screen.ts';

/** A new one also goes into `onSheets` and by-ending.ts. */
export const sheetFormats = ['table', 'markdown', 'html', 'pdf'] as const;
export const formats = [...sheetFormats, 'json', 'csv'] as const;
export type Format = (typeof formats)[number] | 'text';

export interface Views {
  /** Empty when there is nothing to say. */
  readonly sheets: () => Promise<readonly Sheet[]>;
  readonly json: () => Promise<string>;
  /** Absent where a table says nothing. */
  readonly csv?: (() => Promise<string>) | undefined;
  readonly text?: (() => Promise<string>) | undefined;
}

export interface Target {
  readonly format: Format;
  readonly out?: string | undefined;
  readonly paper?: Paper | undefined;
  readonly color: boolean;
  readonly units?: 'in' | 'cm' | undefined;
  /** In a PDF. */
  readonly day?: string | undefined;
}

/** Says when there is nothing to print. */
export async function printViews(views: Views, target: Target, io: CliIo): Promise<void> {
  const { format, out, paper, day = io.today() } = target;
  if (format === 'json') emit(await views.json(), out, io);
  else if (format === 'csv' || format === 'text') emit((await views[format]?.()) ?? '', out, io);
  else {
    const sheets = await views.sheets();
    if (sheets.length === 0) tellNotWritten(out, io);
    else if (format === 'pdf') await emitPdf(sheets, { out, paper, day }, io);
    else emit(await onSheets[format](sheets, target, io), out, io);
  }
}

type OnSheets = (sheets: readonly Sheet[], target: Target, io: CliIo) => Promise<string>;

const onSheets: Readonly<Record<Exclude<(typeof sheetFormats)[number], 'pdf'>, OnSheets>> = {
  table: async (sheets, { units = 'in', color, out }, io) =>
    (await import('../pages/sheet-screen.ts')).sheetsScreen(sheets, reportOptions({ units, color, out }, io)),
  markdown: async (sheets) => (await import('../pages/sheet-markdown.ts')).sheetsMarkdown(sheets),
  html: async (sheets) => (await import('../pages/sheet-html.ts')).sheetsHtml(sheets),
};
