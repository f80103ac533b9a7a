/** Papers as one PDF; same papers and day, same bytes. */
import type { Sheet } from '../sheet.ts';
import { papers, pdfOf, type Pdf, type PdfOptions } from './document.ts';
import { pagesOf } from './pages.ts';
import { Pen } from './pen.ts';

/** Each paper starts a page and its own page numbers. */
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
