/** Blocks of a paper as pieces for PDF pages. */
import { look } from '../look.ts';
import type { BesideBlock, Block } from '../sheet.ts';
import type { Tag } from './pen.ts';
import {
  paragraph,
  plain,
  quiet,
  row,
  small,
  stacked,
  strong,
  type Cell,
  type Piece,
  type RowStyle,
  type Setting,
} from './row.ts';
import { besidePieces, tablePieces } from './table.ts';

/** In reading order. */
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
      return paragraph(
        { face: 'head', size: look.type.heading, color: 'rust', text: block.text, tag: { type: 'H2' } },
        set,
        { before: look.gap.heading, pad: 1, keep: true },
      );
    case 'text':
      return paragraph({ ...tones[block.tone ?? 'plain'], text: block.text }, set, {
        before: look.gap.block,
      });
    case 'list': {
      const list: Tag = { type: 'L' };
      const style = { room: 10, gap: 0, pad: 0.3, tags: ['Lbl', 'LBody'] } as const;
      return block.items.flatMap((text) =>
        labeled(['\u2013', text], set, { ...style, within: { type: 'LI', within: list } }),
      );
    }
    case 'boxes': {
      const list: Tag = { type: 'L' };
      // Keep a checklist on one page if possible.
      return block.items.flatMap((text, i) =>
        boxPieces({ text, within: { type: 'LI', within: list } }, set, i < block.items.length - 1),
      );
    }
    case 'blanks':
      return blankPieces(block.labels, set);
    case 'pairs': {
      const table: Tag = { type: 'Table' };
      return block.rows.flatMap((pair) =>
        labeled(pair, set, {
          room: look.label,
          gap: look.gap.column,
          pad: look.gap.cell - 0.5,
          bottom: look.rules.hair,
          tags: ['TH', 'TD'],
          within: { type: 'TR', within: table },
        }),
      );
    }
    case 'table':
      return tablePieces(block, set);
    case 'beside':
      return picturedPieces(block, set);
  }
}

interface LabelStyle extends RowStyle {
  readonly room: number;
  readonly gap: number;
  /** For screen readers: label and text. */
  readonly tags: readonly [Tag['type'], Tag['type']];
  readonly within: Tag;
}

function labeled(
  [label, text]: readonly [string, string],
  set: Setting,
  { room, gap, tags, within, ...style }: LabelStyle,
): Piece[] {
  const x = room * set.scale;
  const cells = [
    { ...quiet, text: label, tag: { type: tags[0], within }, x: 0, width: x - gap * set.scale },
    { ...plain, text, tag: { type: tags[1], within }, x, width: set.width - x },
  ];
  return row(cells, set, style);
}

/** Box and text stay on one page. */
function boxPieces({ text, within }: { text: string; within: Tag }, set: Setting, keep: boolean): Piece[] {
  const { scale, width, pen } = set;
  const room = look.box.room * scale;
  const side = look.box.side * scale;
  const pad = 0.9;
  const down = pad * scale + (look.type.text * look.leading * scale - side) / 2;
  const tag: Tag = { type: 'LBody', within };
  return row([{ ...plain, text, tag, x: room, width: width - room }], set, {
    pad,
    keep,
    under: ({ x, y }) => {
      pen.frame({ x, y: y + down, width: side, height: side }, look.rules.thin);
    },
  });
}

const ACROSS = 4;

/** Four side by side, labels below. */
function blankPieces(labels: readonly string[], set: Setting): Piece[] {
  const gap = 14 * set.scale;
  const width = (set.width - gap * (ACROSS - 1)) / ACROSS;
  const hand = look.hand * set.scale;
  const rows = Array.from({ length: Math.ceil(labels.length / ACROSS) }, (_, i) => i * ACROSS);
  return rows.flatMap((from) => {
    const cells = labels.slice(from, from + ACROSS).map((text, i): Cell => {
      const tag: Tag = { type: 'P' };
      return { ...small, face: 'text', text, tag, x: i * (width + gap), width };
    });
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

/** The picture on the right, or last if together taller than a page. */
function picturedPieces({ picture, blocks }: BesideBlock, set: Setting): Piece[] {
  const [width, tall] = [picture.width * set.scale, picture.height * set.scale];
  const gap = look.gap.picture * set.scale;
  const drawn = (x: number, y: number): void => {
    set.pen.drawing(picture, { x: x + set.width - width, y, width, height: tall });
  };
  const text = stacked(blocksPieces(blocks, { ...set, width: set.width - width - gap }));
  const before = look.gap.block * set.scale;
  const height = Math.max(tall, text.height);
  if (height > set.tall) return [...blocksPieces(blocks, set), { before, height: tall, draw: drawn }];
  const draw = (x: number, y: number): void => {
    text.draw(x, y);
    drawn(x, y);
  };
  return [{ before, height, draw }];
}
