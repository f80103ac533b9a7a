/** Draws texts, lines and areas on the page at hand. Points from the top left corner, y downward. */
import { colors, type Color } from '../look.ts';
import type { Document } from './document.ts';
import type { Face, Letters } from './letters.ts';

/** How letters look. */
export interface Hand {
  readonly face: Face;
  readonly size: number;
  readonly color: Color;
}

export interface Box {
  readonly x: number;
  readonly y: number;
  readonly width: number;
  readonly height: number;
}

export class Pen {
  readonly #document: Document;
  readonly #letters: Letters;
  /** Widths of words at size 1: words come again and again. */
  readonly #widths = new Map<string, number>();

  constructor(document: Document, letters: Letters) {
    this.#document = document;
    this.#letters = letters;
  }

  /** Letters stand on the line at y. */
  text(text: string, { x, y }: { readonly x: number; readonly y: number }, hand: Hand): void {
    const shown = this.#letters.printed(text);
    this.#document.font(this.#face(shown, hand.face)).fontSize(hand.size).fillColor(colors[hand.color]);
    this.#document.text(shown, x, y, { lineBreak: false, baseline: 'alphabetic' });
  }

  area({ x, y, width, height }: Box, fill: Color): void {
    this.#document.rect(x, y, width, height).fill(colors[fill]);
  }

  /** A frame in ink, drawn inside of its box. */
  frame({ x, y, width, height }: Box, weight: number): void {
    const half = weight / 2;
    const document = this.#document.lineWidth(weight);
    document.rect(x + half, y + half, width - weight, height - weight).stroke(colors.ink);
  }

  /** As the document will set it: word by word, each with its space. */
  width(text: string, { face, size }: Hand): number {
    const shown = this.#letters.printed(text);
    const own = this.#face(shown, face);
    return size * shown.split(/(?<= )/).reduce((sum, word) => sum + this.#wordWidth(word, own), 0);
  }

  /** Headings in letters that only the plain faces have are set in those. */
  #face(text: string, face: Face): Face {
    return this.#letters.has(text, face) ? face : 'strong';
  }

  #wordWidth(word: string, face: Face): number {
    const SIZE = 100;
    const key = `${face} ${word}`;
    const known = this.#widths.get(key);
    if (known !== undefined) return known;
    const width = this.#document.font(face).fontSize(SIZE).widthOfString(word) / SIZE;
    this.#widths.set(key, width);
    return width;
  }
}
