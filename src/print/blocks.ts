/** The blocks of a paper as pieces that can be put on pages. */
import { look } from '../report/look.ts';
import type { Block } from '../report/sheet.ts';
import { moved, rule, type Mark } from './marks.ts';
import { plain, quiet, row, small, strong, type Hand, type Piece, type Setting } from './row.ts';
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

function blockPieces(block: Block, set: Setting): Piece[] {
  const { scale, width } = set;
  const before = look.gap.block * scale;
  switch (block.kind) {
    case 'heading':
      return row(
        [{ face: 'head', size: look.type.heading, color: 'rust', text: block.text, x: 0, width }],
        set,
        { before: look.gap.heading * scale, pad: scale, keep: true },
      );
    case 'text':
      return row([{ ...tones[block.tone ?? 'plain'], text: block.text, x: 0, width }], set, {
        before,
      });
    case 'list':
      return block.items.flatMap((text) => itemPieces(text, set));
    case 'boxes':
      // What is ticked off one after the other stays on one page where it can.
      return block.items.flatMap((text, i) => boxPieces(text, set, i < block.items.length - 1));
    case 'blanks':
      return blankPieces(block.labels, set);
    case 'pairs':
      return block.rows.flatMap((pair) => pairPieces(pair, set));
    case 'table':
      return tablePieces(block, set);
  }
}

const tones: Readonly<Record<'plain' | 'strong' | 'quiet', Hand>> = { plain, strong, quiet };

function itemPieces(text: string, set: Setting): Piece[] {
  const x = 10 * set.scale;
  return row(
    [
      { ...quiet, text: '\u2013', x: 0, width: x },
      { ...plain, text, x, width: set.width - x },
    ],
    set,
    { pad: 0.3 * set.scale },
  );
}

/** A square to be ticked; its text never crosses to the next page without it. */
function boxPieces(text: string, set: Setting, keep: boolean): Piece[] {
  const { scale } = set;
  const x = look.box.room * scale;
  const side = look.box.side * scale;
  const pad = 0.9 * scale;
  const y = pad + (look.type.text * look.leading * scale - side) / 2;
  const frame = { color: 'ink', width: look.rules.thin } as const;
  return row([{ ...plain, text, x, width: set.width - x }], set, {
    pad,
    keep,
    under: (_, part) => (part === 0 ? [{ kind: 'area', x: 0, y, width: side, height: side, frame }] : []),
  });
}

function pairPieces([label, value]: readonly [string, string], set: Setting): Piece[] {
  const x = look.label * set.scale;
  const gap = look.gap.column * set.scale;
  return row(
    [
      { ...quiet, text: label, x: 0, width: x - gap },
      { ...plain, text: value, x, width: set.width - x },
    ],
    set,
    {
      pad: (look.gap.cell - 0.5) * set.scale,
      under: (height) => [
        rule(
          { x: 0, y: height - look.rules.hair, width: set.width },
          { color: 'line', weight: look.rules.hair },
        ),
      ],
    },
  );
}

const ACROSS = 4;

/** Lines for a hand, four beside each other, the label under its line. */
function blankPieces(labels: readonly string[], set: Setting): Piece[] {
  const gap = 14 * set.scale;
  const width = (set.width - gap * (ACROSS - 1)) / ACROSS;
  const hand = look.hand * set.scale;
  const rows = Math.ceil(labels.length / ACROSS);
  return Array.from({ length: rows }, (_, i) => i * ACROSS).flatMap((from) => {
    const some = labels.slice(from, from + ACROSS);
    const cells = some.map((text, i) => ({
      ...small,
      face: 'text' as const,
      text,
      x: i * (width + gap),
      width,
    }));
    const lines = cells.map(({ x }): Mark =>
      rule({ x, y: hand, width }, { color: 'ink', weight: look.rules.thin }),
    );
    return row(cells, { ...set, tall: set.tall - hand }, { keep: from + ACROSS < labels.length }).map(
      (piece, part) =>
        part > 0
          ? piece
          : {
              ...piece,
              height: piece.height + hand + 1,
              marks: [...lines, ...moved(piece.marks, 0, hand + 1)],
            },
    );
  });
}
