/** Papers as PDF, but never on a terminal. */
import type { Paper } from '../pages/pdf/document.ts';
import { asPaper, type Sheet } from '../pages/sheet.ts';
import { emitBytes } from './emit.ts';
import { CliFault, printable } from './fault.ts';
import type { CliIo } from './io.ts';

export interface PdfAsked {
  readonly format: string;
  readonly out?: string | undefined;
  readonly paper?: Paper | undefined;
}

/** Throws before anything is read. */
export function guardPdf({ format, out, paper }: PdfAsked, io: CliIo): void {
  if (format !== 'pdf') {
    if (paper !== undefined) throw new CliFault('--paper goes with --format pdf');
    return;
  }
  if ((out === undefined || out === '-') && io.stdoutIsTerminal)
    throw new CliFault('a PDF cannot be shown on a terminal: name a file with --out');
}

/** Names letters that the fonts lack. */
export async function emitPdf(
  sheets: readonly Sheet[],
  { out, paper = 'letter', day }: Omit<PdfAsked, 'format'> & { day: string },
  io: CliIo,
): Promise<void> {
  const [{ sheetsPdf }, { paperFonts }] = await Promise.all([
    import('../draw/pdf-bundle.ts'),
    import('./fonts.ts'),
  ]);
  const { bytes, lacking } = await sheetsPdf(sheets.map(asPaper), {
    paper,
    day: new Date(`${day}T00:00:00Z`),
    fonts: paperFonts(),
  });
  emitBytes(bytes, out, io);
  if (lacking.length > 0) io.stderr(`cinchwright: ${lackingText(lacking, 'PDF')}\n`);
}

const MOST = 12;

/** `what` names the file: "PDF". */
export function lackingText(letters: readonly string[], what: string): string {
  const some = letters.slice(0, MOST).map(printable).join(' ');
  const more = letters.length > MOST ? ` and ${String(letters.length - MOST)} more` : '';
  return `the fonts of the ${what} lack these letters and print an empty square for each: ${some}${more}`;
}
