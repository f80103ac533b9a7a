/** Letters that the type lacks: shown as an empty square, and told, rather than left out. */
import { create, type Font } from 'fontkit';
import { visible } from '../../units/clean.ts';
import { signs } from '../../units/width.ts';

/** Faces of type: running text, what stands out, headings. */
export const faces = ['text', 'strong', 'head'] as const;
export type Face = (typeof faces)[number];

/** Bytes of the font files (TrueType or OpenType). */
export type Fonts = Readonly<Record<Face, Uint8Array>>;

/** Stands for a letter that cannot be printed. */
const missingLetter = '\u25a1';

const ascii = /^[ -~]*$/;

/** What can be printed with some fonts. */
export class Letters {
  /** Those that were replaced so far. */
  readonly lacking = new Set<string>();
  readonly #fonts: Fonts;
  readonly #open = new Map<Face, Font>();

  constructor(fonts: Fonts) {
    this.#fonts = fonts;
  }

  /** Whether a face can print all of a text. */
  has(text: string, face: Face): boolean {
    if (ascii.test(text)) return true;
    const font = this.#open.get(face) ?? (create(Buffer.from(this.#fonts[face])) as Font);
    this.#open.set(face, font);
    return Array.from(text).every((letter) => font.hasGlyphForCodePoint(letter.codePointAt(0) ?? 0));
  }

  /** A text as it can be printed, made visible. */
  readonly printed = (text: string): string => {
    if (ascii.test(text)) return text;
    return signs(visible(text.normalize('NFC')))
      .map((sign) => {
        if (this.has(sign, 'text')) return sign;
        this.lacking.add(sign);
        return missingLetter;
      })
      .join('');
  };
}
