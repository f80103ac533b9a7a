/** Papers as one PDF file: the same papers on the same day give the same bytes. */
import { colors } from '../report/look.ts';
import type { Sheet } from '../report/sheet.ts';
import { bytesOf, emptyDocument, hasOf, type Day, type Document, type Fonts, type Pdf } from './document.ts';
import { printed, printedSheet } from './letters.ts';
import type { Face, Mark, Measure } from './marks.ts';
import { pagesOf, papers, type Paper } from './pages.ts';

export interface PdfOptions {
  readonly paper: Paper;
  readonly fonts: Fonts;
  /** When the papers were written; no clock is asked. */
  readonly day: Day;
}

/** One file of all papers, each starting a page of its own, its pages numbered by themselves. */
export async function sheetsPdf(sheets: readonly Sheet[], { paper, fonts, day }: PdfOptions): Promise<Pdf> {
  const lacking = new Set<string>();
  const has = hasOf(fonts);
  const papersOf = sheets.map((sheet) => printedSheet(sheet, (text) => printed(text, has, lacking)));
  const { width, height } = papers[paper];
  const size: [number, number] = [width, height];
  const document = emptyDocument(titleOf(papersOf), { day, size, fonts });
  const bytes = bytesOf(document);
  const type = { measure: measureOf(document), has };
  for (const page of papersOf.flatMap((sheet) => pagesOf(sheet, paper, type))) {
    document.addPage({ size, margin: 0 });
    for (const mark of page.marks) drawMark(document, mark);
  }
  document.end();
  return { bytes: await bytes, lacking: [...lacking] };
}

const titleOf = (sheets: readonly Sheet[]): string => {
  const [first] = sheets;
  return sheets.length === 1 && first !== undefined ? first.title : `${String(sheets.length)} papers`;
};

/** Widths as the document will set them: word by word, each with its space. Words come again and again, so they are kept. */
function measureOf(document: Document): Measure {
  const kept = new Map<string, number>();
  const SIZE = 100;
  const wordWidth = (word: string, face: Face): number => {
    const key = `${face} ${word}`;
    const known = kept.get(key);
    if (known !== undefined) return known;
    const width = document.font(face).fontSize(SIZE).widthOfString(word) / SIZE;
    kept.set(key, width);
    return width;
  };
  return (text, face) =>
    text.includes(' ')
      ? text.split(/(?<= )/).reduce((sum, word) => sum + wordWidth(word, face), 0)
      : wordWidth(text, face);
}

function drawMark(document: Document, mark: Mark): void {
  if (mark.kind === 'text') {
    document.font(mark.face).fontSize(mark.size).fillColor(colors[mark.color]);
    document.text(mark.text, mark.x, mark.y, { lineBreak: false, baseline: 'alphabetic' });
    return;
  }
  const { x, y, width, height, fill, frame } = mark;
  if (fill !== undefined) document.rect(x, y, width, height).fill(colors[fill]);
  if (frame !== undefined) {
    const half = frame.width / 2;
    document
      .lineWidth(frame.width)
      .rect(x + half, y + half, width - frame.width, height - frame.width)
      .stroke(colors[frame.color]);
  }
}

// One bundle for all that needs the library: see bin/build.cjs.
export { templatesPdf } from './template-pdf.ts';
export { printedScene } from './scene-letters.ts';
