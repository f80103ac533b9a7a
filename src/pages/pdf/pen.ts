/** Draws on the current page, in points from the top left, y down. */
import { colors, type Color } from '../look.ts';
import type { Drawing } from '../sheet.ts';
import type { Document } from './document.ts';
import type { Face, Letters } from './letters.ts';

export interface Hand {
  readonly face: Face;
  readonly size: number;
  readonly color: Color;
}

/** Role for screen readers (ISO 32000-1, 14.8.4); without a parent it belongs to the paper. */
export interface Tag {
  readonly type: 'H1' | 'H2' | 'P' | 'L' | 'LI' | 'LBody' | 'Lbl' | 'Table' | 'TR' | 'TH' | 'TD' | 'Figure';
  readonly within?: Tag;
  readonly options?: { readonly alt?: string; readonly scope?: 'Row' | 'Column' };
}

type Element = ReturnType<Document['struct']>;

export interface Box {
  readonly x: number;
  readonly y: number;
  readonly width: number;
  readonly height: number;
}

export class Pen {
  readonly #document: Document;
  readonly #letters: Letters;
  /** At size 1. */
  readonly #widths = new Map<string, number>();

  readonly #file: Element;
  #paper: Element;
  readonly #elements = new Map<Tag, Element>();
  #isMarked = false;

  constructor(document: Document, letters: Letters) {
    this.#document = document;
    this.#letters = letters;
    this.#file = document.struct('Document');
    document.addStructure(this.#file);
    this.#paper = this.#file;
  }

  startPaper(): void {
    this.#paper = this.#document.struct('Art');
    this.#file.add(this.#paper);
  }

  /** Tags everything drawn inside, or skips it; ignores inner tags. */
  marked(tag: Tag | undefined, draw: () => void): void {
    if (this.#isMarked) {
      draw();
      return;
    }
    this.#isMarked = true;
    if (tag === undefined) this.#document.markContent('Artifact', { type: 'Layout' });
    else this.#element(tag).add(this.#document.markStructureContent(tag.type));
    draw();
    this.#document.endMarkedContent();
    this.#isMarked = false;
  }

  /** Created at first drawing: drawing order is reading order. */
  #element(tag: Tag): Element {
    const known = this.#elements.get(tag);
    if (known !== undefined) return known;
    const element = this.#document.struct(tag.type, tag.options);
    (tag.within === undefined ? this.#paper : this.#element(tag.within)).add(element);
    this.#elements.set(tag, element);
    return element;
  }

  drawing({ draw, width, height, about }: Drawing, box: Box): void {
    this.marked({ type: 'Figure', options: { alt: about } }, () => {
      this.#document.save();
      this.#document.translate(box.x, box.y).scale(box.width / width, box.height / height);
      draw(this.#document);
      this.#document.restore();
    });
  }

  /** Baseline at y. */
  text(text: string, { x, y }: { readonly x: number; readonly y: number }, hand: Hand): void {
    const shown = this.#letters.printed(text);
    this.marked(undefined, () => {
      this.#document.font(this.#face(shown, hand.face)).fontSize(hand.size).fillColor(colors[hand.color]);
      this.#document.text(shown, x, y, { lineBreak: false, baseline: 'alphabetic' });
    });
  }

  area({ x, y, width, height }: Box, fill: Color): void {
    this.marked(undefined, () => {
      this.#document.rect(x, y, width, height).fill(colors[fill]);
    });
  }

  /** Drawn inside its box. */
  frame({ x, y, width, height }: Box, weight: number): void {
    const half = weight / 2;
    this.marked(undefined, () => {
      const document = this.#document.lineWidth(weight);
      document.rect(x + half, y + half, width - weight, height - weight).stroke(colors.ink);
    });
  }

  /** By words with their spaces, as the document sets it. */
  width(text: string, { face, size }: Hand): number {
    const shown = this.#letters.printed(text);
    const own = this.#face(shown, face);
    return size * shown.split(/(?<= )/).reduce((sum, word) => sum + this.#wordWidth(word, own), 0);
  }

  /** A plain face for letters the heading face lacks. */
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
