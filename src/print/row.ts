/** One row of cells: the smallest thing that a page break may not cut. Paragraphs, items and table rows are all made of rows. */
import { look, type Color } from '../report/look.ts';
import { linesOf } from './lines.ts';
import type { Face, Mark, Measure } from './marks.ts';

/** What rows are set by. */
export interface Setting {
  /** Points between the margins. */
  readonly width: number;
  /** Points of a page that rows may fill. */
  readonly tall: number;
  /** All sizes are multiplied by it. */
  readonly scale: number;
  readonly measure: Measure;
}

/** Something that stands on one page as a whole. */
export interface Piece {
  /** White above it, which falls away at the top of a page. */
  readonly before: number;
  readonly height: number;
  readonly marks: readonly Mark[];
  /** Stays on the page of what comes next. */
  readonly keep?: boolean;
  /** Repeated above it where it starts a page. */
  readonly head?: Piece | undefined;
}

/** How letters look; sizes before scaling. */
export interface Hand {
  readonly face: Face;
  readonly size: number;
  readonly color: Color;
}

export interface Cell extends Hand {
  readonly text: string;
  readonly x: number;
  readonly width: number;
  readonly align?: 'right' | undefined;
}

export interface RowStyle {
  readonly before?: number;
  /** White above and under its text. */
  readonly pad?: number;
  readonly keep?: boolean;
  readonly head?: Piece | undefined;
  /** Lines and areas behind the text; `part` counts the pieces of a row too tall for a page. */
  readonly under?: (height: number, part: number) => Mark[];
}

export const plain: Hand = { face: 'text', size: look.type.text, color: 'ink' };
export const quiet: Hand = { face: 'text', size: look.type.text, color: 'soft' };
export const strong: Hand = { face: 'strong', size: look.type.text, color: 'ink' };
export const small: Hand = { face: 'strong', size: look.type.small, color: 'soft' };
export const fine: Hand = { face: 'text', size: look.type.fine, color: 'soft' };

/** Where letters stand in their line, as a part of their size: room above for the tallest accents. */
const BASELINE = 0.97;

/** The pieces of a row: one, unless it is taller than a page. */
export function row(cells: readonly Cell[], set: Setting, style: RowStyle = {}): Piece[] {
  const { before = 0, pad = 0, keep = false, head, under } = style;
  const texts = cells.map((cell) => linesOf(cell.text, cell.width, widthOf(cell, set)));
  const size = Math.max(...cells.map((cell) => cell.size)) * set.scale;
  const leading = size * look.leading;
  const most = Math.max(1, Math.floor((set.tall - (head?.height ?? 0) - 2 * pad) / leading));
  const count = Math.max(1, ...texts.map((lines) => lines.length));
  return Array.from({ length: Math.ceil(count / most) }, (_, part) => {
    const start = part * most;
    const height = Math.min(most, count - start) * leading + 2 * pad;
    const marks = cells.flatMap((cell, i) =>
      (texts[i] ?? []).slice(start, start + most).flatMap((text, at) => {
        const y = pad + at * leading + size * BASELINE;
        return text === '' ? [] : [textMark(cell, { text, y }, set)];
      }),
    );
    return {
      before: part === 0 ? before : 0,
      height,
      marks: [...(under?.(height, part) ?? []), ...marks],
      keep,
      head,
    };
  });
}

/** Measures a text in a hand, in points. */
export const widthOf =
  ({ face, size }: Hand, { scale, measure }: Setting) =>
  (text: string): number =>
    measure(text, face) * size * scale;

function textMark(cell: Cell, { text, y }: { text: string; y: number }, set: Setting): Mark {
  const { face, color, x, width } = cell;
  const slack = cell.align === 'right' ? width - widthOf(cell, set)(text) : 0;
  return { kind: 'text', x: x + Math.max(0, slack), y, text, face, size: cell.size * set.scale, color };
}
