/** A PDF file before anything stands on its pages: its fonts, its letters, its bytes. */
import { create, type Font } from 'fontkit';
import PdfDocument from 'pdfkit';
import type { Has } from './letters.ts';
import { faces, type Face } from './marks.ts';

/** Bytes of the font files (TrueType or OpenType). */
export type Fonts = Readonly<Record<Face, Uint8Array>>;

/** A point in time as the library takes it, made by whoever knows the day. */
export type Day = NonNullable<PDFKit.DocumentInfo['CreationDate']>;

export interface Pdf {
  readonly bytes: Uint8Array;
  /** Letters that the fonts lack, which are printed as an empty square. */
  readonly lacking: readonly string[];
}

export type Document = InstanceType<typeof PdfDocument>;

export interface Start {
  readonly day: Day;
  readonly size: [number, number];
  readonly fonts: Fonts;
}

/** A document without pages that knows our type. */
export function emptyDocument(title: string, { day, size, fonts }: Start): Document {
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

/** All that a document writes, once it is ended. */
export function bytesOf(document: Document): Promise<Uint8Array> {
  const parts: Uint8Array[] = [];
  return new Promise((resolve, reject) => {
    document.on('data', (part: Uint8Array) => parts.push(part));
    document.on('end', () => {
      resolve(Buffer.concat(parts));
    });
    document.on('error', reject);
  });
}

/** Which letters the fonts have. */
export function hasOf(fonts: Fonts): Has {
  const open = new Map<Face, Font>();
  return (codePoint, face) => {
    const font = open.get(face) ?? (create(Buffer.from(fonts[face])) as Font);
    open.set(face, font);
    return font.hasGlyphForCodePoint(codePoint);
  };
}
