/** Papers as one PDF; the same papers and day give the same bytes. */
import type { Sheet } from '../sheet.ts';
import { papers, pdfOf, type Pdf, type PdfOptions } from './document.ts';
import { pagesOf } from './pages.ts';
import { Pen } from './pen.ts';

/** Each paper starts on a new page with its own page numbers. */
export function sheetsPdf(sheets: readonly Sheet[], options: PdfOptions): Promise<Pdf> {
  const [first] = sheets;
  const title = sheets.length === 1 && first !== undefined ? first.title : `${String(sheets.length)} papers`;
  return pdfOf(title, { ...options, tagged: true }, (document, letters) => {
    const pen = new Pen(document, letters);
    for (const draw of sheets.flatMap((sheet) => pagesOf(sheet, papers[options.paper], pen))) {
      document.addPage();
      draw();
    }
  });
}
