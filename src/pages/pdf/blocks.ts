/** The blocks of a paper as pieces that can be put on pages. */
import { look } from '../look.ts';
import type { Block } from '../sheet.ts';
import {
  paragraph,
  plain,
  quiet,
  row,
  small,
  strong,
  type Piece,
  type RowStyle,
  type Setting,
} from './row.ts';
import { besidePieces, tablePieces } from './table.ts';

/** All pieces of a paper's blocks, in order. */
export function blocksPieces(blocks: readonly Block[], set: Setting): Piece[] {
  const pieces: Piece[] = [];
  for (let i = 0; i < blocks.length; i += 1) {
    const block = blocks[i] as Block;
    const next = blocks[i + 1];
    if (block.kind === 'table' && block.half && next?.kind === 'table' && next.half) {
      pieces.push(...besidePieces([block, next], set));
      i += 1;
    } else pieces.push(...blockPieces(block, set));
  }
  return pieces;
}

const tones = { plain, strong, quiet };

function blockPieces(block: Block, set: Setting): Piece[] {
  switch (block.kind) {
    case 'heading':
      return paragraph({ face: 'head', size: look.type.heading, color: 'rust', text: block.text }, set, {
        before: look.gap.heading,
        pad: 1,
        keep: true,
      });
    case 'text':
      return paragraph({ ...tones[block.tone ?? 'plain'], text: block.text }, set, {
        before: look.gap.block,
      });
    case 'list':
      return block.items.flatMap((text) => labeled(['\u2013', text], set, { room: 10, gap: 0, pad: 0.3 }));
    case 'boxes':
      // What is ticked off one after the other stays on one page where it can.
      return block.items.flatMap((text, i) => boxPieces(text, set, i < block.items.length - 1));
    case 'blanks':
      return blankPieces(block.labels, set);
    case 'pairs':
      return block.rows.flatMap((pair) =>
        labeled(pair, set, {
          room: look.label,
          gap: look.gap.column,
          pad: look.gap.cell - 0.5,
          bottom: look.rules.hair,
        }),
      );
    case 'table':
      return tablePieces(block, set);
  }
}

/** A label, and beside it what it says. */
function labeled(
  [label, text]: readonly [string, string],
  set: Setting,
  { room, gap, ...style }: RowStyle & { readonly room: number; readonly gap: number },
): Piece[] {
  const x = room * set.scale;
  const cells = [
    { ...quiet, text: label, x: 0, width: x - gap * set.scale },
    { ...plain, text, x, width: set.width - x },
  ];
  return row(cells, set, style);
}

/** A square to be ticked; its text never crosses to the next page without it. */
function boxPieces(text: string, set: Setting, keep: boolean): Piece[] {
  const { scale, width, pen } = set;
  const room = look.box.room * scale;
  const side = look.box.side * scale;
  const pad = 0.9;
  const down = pad * scale + (look.type.text * look.leading * scale - side) / 2;
  return row([{ ...plain, text, x: room, width: width - room }], set, {
    pad,
    keep,
    under: ({ x, y }) => {
      pen.frame({ x, y: y + down, width: side, height: side }, look.rules.thin);
    },
  });
}

const ACROSS = 4;

/** Lines for a hand, four beside each other, the label under its line. */
function blankPieces(labels: readonly string[], set: Setting): Piece[] {
  const gap = 14 * set.scale;
  const width = (set.width - gap * (ACROSS - 1)) / ACROSS;
  const hand = look.hand * set.scale;
  const rows = Array.from({ length: Math.ceil(labels.length / ACROSS) }, (_, i) => i * ACROSS);
  return rows.flatMap((from) => {
    const cells = labels
      .slice(from, from + ACROSS)
      .map((text, i) => ({ ...small, face: 'text' as const, text, x: i * (width + gap), width }));
    const style = { keep: from + ACROSS < labels.length };
    const [first, ...rest] = row(cells, { ...set, tall: set.tall - hand }, style) as [Piece, ...Piece[]];
    const draw = (x: number, y: number): void => {
      const line = { y: y + hand, width, height: look.rules.thin };
      for (const cell of cells) set.pen.area({ x: x + cell.x, ...line }, 'ink');
      first.draw(x, y + hand + 1);
    };
    return [{ ...first, height: first.height + hand + 1, draw }, ...rest];
  });
}
