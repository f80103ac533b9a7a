/** An empty PDF file: fonts, title, bytes. */
import PdfDocument from 'pdfkit';
import { faces, Letters, type Fonts } from './letters.ts';

/** Points: ANSI Y14.1 size A, ISO 216 A4. */
export const papers = {
  letter: { width: 612, height: 792 },
  a4: { width: 595.28, height: 841.89 },
} as const;
export type Paper = keyof typeof papers;

export interface PdfOptions {
  readonly paper: Paper;
  readonly fonts: Fonts;
  /** Of the papers; no clock is read. */
  readonly day: NonNullable<PDFKit.DocumentInfo['CreationDate']>;
}

export interface Pdf {
  readonly bytes: Uint8Array;
  /** Letters the fonts lack, printed as empty squares. */
  readonly lacking: readonly string[];
}

export type Document = InstanceType<typeof PdfDocument>;

/** A file from a drawing function. */
export async function pdfOf(
  title: string,
  { paper, fonts, day, tagged }: PdfOptions & { readonly tagged?: true },
  draw: (document: Document, letters: Letters) => void,
): Promise<Pdf> {
  const letters = new Letters(fonts);
  const { width, height } = papers[paper];
  const document = new PdfDocument({
    size: [width, height],
    margin: 0,
    autoFirstPage: false,
    ...(tagged === true ? { tagged, pdfVersion: '1.5' } : {}), // first version with all its tags
    lang: 'en',
    displayTitle: true,
    // Otherwise the library loads its own, or rereads ours for every word.
    font: null as unknown as string,
    info: { Title: letters.printed(title), Creator: 'cinchwright', CreationDate: day },
  });
  for (const face of faces) document.registerFont(face, Buffer.from(fonts[face]));
  const parts: Uint8Array[] = [];
  const ended = new Promise((resolve, reject) => {
    document.on('data', (part: Uint8Array) => parts.push(part));
    document.on('end', resolve);
    document.on('error', reject);
  });
  draw(document, letters);
  document.end();
  await ended;
  return { bytes: Buffer.concat(parts), lacking: [...letters.lacking] };
}
