/** Papers as one PDF file: the same papers on the same day give the same bytes. */
import { create, type Font } from 'fontkit';
import PdfDocument from 'pdfkit';
import { colors } from '../report/look.ts';
import type { Sheet } from '../report/sheet.ts';
import { printed, printedSheet, type Has } from './letters.ts';
import { faces, type Face, type Mark, type Measure } from './marks.ts';
import { pagesOf, papers, type Paper } from './pages.ts';

/** Bytes of the font files (TrueType or OpenType). */
export type Fonts = Readonly<Record<Face, Uint8Array>>;

/** A point in time as the library takes it, made by whoever knows the day. */
type Day = NonNullable<PDFKit.DocumentInfo['CreationDate']>;

export interface PdfOptions {
  readonly paper: Paper;
  readonly fonts: Fonts;
  /** When the papers were written; no clock is asked. */
  readonly day: Day;
}

export interface Pdf {
  readonly bytes: Uint8Array;
  /** Letters that the fonts lack, which are printed as an empty square. */
  readonly lacking: readonly string[];
}

type Document = InstanceType<typeof PdfDocument>;

/** One file of all papers, each starting a page of its own, its pages numbered by themselves. */
export async function sheetsPdf(sheets: readonly Sheet[], { paper, fonts, day }: PdfOptions): Promise<Pdf> {
  const lacking = new Set<string>();
  const has = hasOf(fonts);
  const papersOf = sheets.map((sheet) => printedSheet(sheet, (text) => printed(text, has, lacking)));
  const { width, height } = papers[paper];
  const size: [number, number] = [width, height];
  const document = emptyDocument(papersOf, { day, size, fonts });
  const bytes = bytesOf(document);
  const type = { measure: measureOf(document), has };
  for (const page of papersOf.flatMap((sheet) => pagesOf(sheet, paper, type))) {
    document.addPage({ size, margin: 0 });
    for (const mark of page.marks) draw(document, mark);
  }
  document.end();
  return { bytes: await bytes, lacking: [...lacking] };
}

interface Start {
  readonly day: Day;
  readonly size: [number, number];
  readonly fonts: Fonts;
}

function emptyDocument(sheets: readonly Sheet[], { day, size, fonts }: Start): Document {
  const [first] = sheets;
  const title = sheets.length === 1 && first !== undefined ? first.title : `${String(sheets.length)} papers`;
  const document = new PdfDocument({
    size,
    margin: 0,
    autoFirstPage: false,
    lang: 'en',
    displayTitle: true,
    // None to begin with: the library would look for one of its own, or read a font of ours again at every word.
    font: null as unknown as string,
    info: { Title: title, Creator: 'cinchwright', CreationDate: day },
  });
  for (const face of faces) document.registerFont(face, Buffer.from(fonts[face]));
  return document;
}

function bytesOf(document: Document): Promise<Uint8Array> {
  const parts: Uint8Array[] = [];
  return new Promise((resolve, reject) => {
    document.on('data', (part: Uint8Array) => parts.push(part));
    document.on('end', () => {
      resolve(Buffer.concat(parts));
    });
    document.on('error', reject);
  });
}

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
  return (text, face) => text.split(/(?<= )/).reduce((sum, word) => sum + wordWidth(word, face), 0);
}

function hasOf(fonts: Fonts): Has {
  const open = new Map<Face, Font>();
  return (codePoint, face) => {
    const font = open.get(face) ?? (create(Buffer.from(fonts[face])) as Font);
    open.set(face, font);
    return font.hasGlyphForCodePoint(codePoint);
  };
}

function draw(document: Document, mark: Mark): void {
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
