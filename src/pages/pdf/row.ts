/** One row of cells, which a page break may not split. */
import { look, type Color } from '../look.ts';
import { linesOf } from './lines.ts';
import type { Box, Hand, Pen, Tag } from './pen.ts';

export interface Setting {
  /** Points between margins. */
  readonly width: number;
  /** Of a page, points. */
  readonly tall: number;
  /** Multiplies all sizes. */
  readonly scale: number;
  readonly pen: Pen;
}

/** Never split across pages. */
export interface Piece {
  /** Above; dropped at the top of a page. */
  readonly before: number;
  readonly height: number;
  /** Of the top left corner. */
  readonly draw: (x: number, y: number) => void;
  /** Stay with the next piece. */
  readonly keep?: boolean;
  /** Repeated where it starts a page. */
  readonly head?: Piece | undefined;
}

/** Unscaled. */
export interface Cell extends Hand {
  /** Undefined when another text says it. */
  readonly tag?: Tag | undefined;
  readonly text: string;
  readonly x: number;
  readonly width: number;
  readonly align?: 'right' | undefined;
}

/** Unscaled, except line weights. */
export interface RowStyle {
  readonly before?: number;
  /** Above and below the text. */
  readonly pad?: number;
  readonly keep?: boolean;
  readonly head?: Piece | undefined;
  /** One line, ending in three dots if cut; elsewhere in full. */
  readonly clip?: boolean;
  readonly fill?: Color | undefined;
  readonly frame?: number;
  /** Line weights; thin lines are light. */
  readonly top?: number | undefined;
  readonly bottom?: number | undefined;
  /** Drawn behind its first part. */
  readonly under?: (row: Box) => void;
}

export const plain: Hand = { face: 'text', size: look.type.text, color: 'ink' };
export const quiet: Hand = { face: 'text', size: look.type.text, color: 'soft' };
export const strong: Hand = { face: 'strong', size: look.type.text, color: 'ink' };
export const small: Hand = { face: 'strong', size: look.type.small, color: 'soft' };
export const fine: Hand = { face: 'text', size: look.type.fine, color: 'soft' };

/** Of the size; leaves room for tall accents. */
const BASELINE = 0.97;

/** Several pieces if taller than a page. */
export function row(cells: readonly Cell[], set: Setting, style: RowStyle = {}): Piece[] {
  const { keep = false, head } = style;
  const before = (style.before ?? 0) * set.scale;
  const pad = (style.pad ?? 0) * set.scale;
  const texts = cells.map((cell) => textsOf(cell, set, style.clip));
  const size = Math.max(...cells.map((cell) => cell.size)) * set.scale;
  const most = Math.max(1, Math.floor((set.tall - (head?.height ?? 0) - 2 * pad) / (size * look.leading)));
  const count = Math.max(1, ...texts.map((lines) => lines.length));
  return Array.from({ length: Math.ceil(count / most) }, (_, part) => {
    const parts = texts.map((lines) => lines.slice(part * most, (part + 1) * most));
    // All sizes share a baseline.
    const heights = cells.map((cell, i) => {
      const own = cell.size * set.scale;
      return (parts[i]?.length ?? 0) * own * look.leading + (size - own) * BASELINE;
    });
    const height = Math.max(...heights) + 2 * pad;
    const draw = (x: number, y: number): void => {
      drawUnder({ x, y, width: set.width, height }, set.pen, style);
      if (part === 0) style.under?.({ x, y, width: set.width, height });
      cells.forEach((cell, i) => {
        const lines = parts[i];
        if (lines === undefined) return;
        const hand = { ...cell, size: cell.size * set.scale };
        set.pen.marked(cell.tag, () => {
          lines.forEach((text, at) => {
            const slack = cell.align === 'right' ? Math.max(0, cell.width - set.pen.width(text, hand)) : 0;
            const down = pad + at * hand.size * look.leading + size * BASELINE;
            if (text !== '') set.pen.text(text, { x: x + cell.x + slack, y: y + down }, hand);
          });
        });
      });
    };
    return { before: part === 0 ? before : 0, height, draw, keep, head };
  });
}

function textsOf(cell: Cell, set: Setting, clip = false): string[] {
  const measure = widthOf(cell, set);
  if (!clip) return linesOf(cell.text, cell.width, measure);
  const [first = '', ...more] = linesOf(cell.text, cell.width - measure('\u2026'), measure);
  return more.length === 0 ? [first] : [`${first}\u2026`];
}

/** One full-width text. */
export function paragraph(
  words: Hand & Pick<Cell, 'text' | 'tag'>,
  set: Setting,
  { inset = 0, ...style }: RowStyle & { readonly inset?: number } = {},
): Piece[] {
  const x = inset * set.scale;
  return row([{ tag: { type: 'P' }, ...words, x, width: set.width - 2 * x }], set, style);
}

function drawUnder(box: Box, pen: Pen, { fill, frame, top, bottom }: RowStyle): void {
  const line = (y: number, weight: number): void => {
    pen.area({ ...box, y, height: weight }, weight > look.rules.hair ? 'ink' : 'line');
  };
  if (fill !== undefined) pen.area(box, fill);
  if (frame !== undefined) pen.frame(box, frame);
  if (top !== undefined) line(box.y, top);
  if (bottom !== undefined) line(box.y + box.height - bottom, bottom);
}

/** In points. */
export const widthOf =
  (hand: Hand, { scale, pen }: Setting) =>
  (text: string): number =>
    pen.width(text, hand) * scale;

/** Stacks pieces into one. */
export function stacked(pieces: readonly Piece[], before = 0): Piece {
  const above = (piece: Piece): number => (piece === pieces[0] ? 0 : piece.before);
  const height = pieces.reduce((sum, piece) => sum + above(piece) + piece.height, 0);
  const draw = (x: number, y: number): void => {
    let down = y;
    for (const piece of pieces) {
      down += above(piece);
      piece.draw(x, down);
      down += piece.height;
    }
  };
  return { before, height, draw };
}
