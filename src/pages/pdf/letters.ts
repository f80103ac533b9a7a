/** Replaces letters the fonts lack with empty squares, and reports them. */
import { create, type Font } from 'fontkit';
import { visible } from '../../units/clean.ts';
import { signs } from '../../units/width.ts';

/** Body text, bold, headings. */
export const faces = ['text', 'strong', 'head'] as const;
export type Face = (typeof faces)[number];

/** TrueType or OpenType. */
export type Fonts = Readonly<Record<Face, Uint8Array>>;

const missingLetter = '\u25a1';

const ascii = /^[ -~]*$/;

export class Letters {
  /** Replaced so far. */
  readonly lacking = new Set<string>();
  readonly #fonts: Fonts;
  readonly #open = new Map<Face, Font>();

  constructor(fonts: Fonts) {
    this.#fonts = fonts;
  }

  has(text: string, face: Face): boolean {
    if (ascii.test(text)) return true;
    const font = this.#open.get(face) ?? (create(Buffer.from(this.#fonts[face])) as Font);
    this.#open.set(face, font);
    return Array.from(text).every((letter) => font.hasGlyphForCodePoint(letter.codePointAt(0) ?? 0));
  }

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
