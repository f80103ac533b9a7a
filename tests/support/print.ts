/** Test PDFs with the program's fonts. */
import { paperFonts } from '../../src/cli/fonts.ts';
import type { Paper } from '../../src/pages/pdf/document.ts';
import type { Pdf } from '../../src/pages/pdf/document.ts';
import { sheetsPdf } from '../../src/pages/pdf/pdf.ts';
import type { Block, Sheet } from '../../src/pages/sheet.ts';
import { readPdf, type ReadPdf } from './read-pdf.ts';

const fonts = paperFonts();

/** The same day for all. */
export const pdfOf = (sheets: readonly Sheet[], paper: Paper = 'letter', day = '2026-11-20'): Promise<Pdf> =>
  sheetsPdf(sheets, { paper, day: new Date(`${day}T00:00:00Z`), fonts });

export const printedOf = async (sheets: readonly Sheet[], paper: Paper = 'letter'): Promise<ReadPdf> =>
  readPdf((await pdfOf(sheets, paper)).bytes);

export const sheetOfBlocks = (blocks: readonly Block[], more: Partial<Sheet> = {}): Sheet => ({
  title: 'Paper 7',
  shop: 'A shop',
  about: [],
  notice: undefined,
  blocks,
  rules: [],
  cautions: [],
  ...more,
});
