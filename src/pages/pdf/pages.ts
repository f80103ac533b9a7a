/** Lays papers out on pages: rows whole, headings with their text. */
import { look } from '../look.ts';
import type { Sheet } from '../sheet.ts';
import { blocksPieces } from './blocks.ts';
import { drawFoot, drawRunning, endPieces, headPieces, runningHeight } from './frame.ts';
import type { Box, Pen } from './pen.ts';
import type { Piece, Setting } from './row.ts';

export type Page = () => void;

/** Smaller type only where it saves a page. */
const scales = [0.96, 0.92, 0.88, 0.85];

/** Fewest pages, then largest type. */
export function pagesOf(sheet: Sheet, paper: Pick<Box, 'width' | 'height'>, pen: Pen): Page[] {
  const at = (scale: number): Page[] => laidOut(sheet, paper, { pen, scale });
  const first = at(1);
  if (first.length === 1) return first;
  const fewest = at(0.85).length;
  if (first.length === fewest) return first;
  return scales.map(at).find((pages) => pages.length === fewest) ?? first;
}

/** For the page number. */
const FOOT = 16;

function laidOut(
  sheet: Sheet,
  { width, height }: Pick<Box, 'width' | 'height'>,
  { pen, scale }: Pick<Setting, 'pen' | 'scale'>,
): Page[] {
  const { top, side, bottom } = look.margin;
  const running = runningHeight(sheet.notice, scale);
  const room = height - top - bottom - FOOT;
  const set: Setting = { width: width - 2 * side, tall: room - running, scale, pen };
  const pieces = [...headPieces(sheet, set), ...blocksPieces(sheet.blocks, set), ...endPieces(sheet, set)];
  const pages = broken(pieces, { first: room, further: room - running, pen });
  return pages.map((placed, i) => () => {
    if (i === 0) pen.startPaper();
    else drawRunning(sheet, set, [side, top]);
    for (const { piece, y } of placed) piece.draw(side, y + top + (i === 0 ? 0 : running));
    drawFoot(sheet.title, `${i + 1} of ${pages.length}`, { set, x: side, y: height - bottom - 11 });
  });
}

interface Placed {
  readonly piece: Piece;
  readonly y: number;
}

/** Pieces marked `keep` move with the next, unless together too tall. */
function broken(
  pieces: readonly Piece[],
  { first, further, pen }: { first: number; further: number; pen: Pen },
): Placed[][] {
  const pages: Placed[][] = [[]];
  let y = 0;
  const room = (): number => (pages.length === 1 ? first : further);
  const put = (piece: Piece): void => {
    y += y === 0 ? 0 : piece.before;
    pages.at(-1)?.push({ piece, y });
    y += piece.height;
  };
  const next = (piece: Piece | undefined): void => {
    pages.push([]);
    y = 0;
    // Screen readers have read this head already.
    const head = piece?.head;
    if (head !== undefined)
      put({
        ...head,
        draw: (x, y) => {
          pen.marked(undefined, () => {
            head.draw(x, y);
          });
        },
      });
  };
  for (const group of groups(pieces)) {
    const tall = group.reduce((sum, { before, height }) => sum + before + height, 0);
    if (y > 0 && y + tall > room() && tall <= further) next(group[0]);
    for (const piece of group) {
      if (y > 0 && y + piece.before + piece.height > room()) next(piece);
      put(piece);
    }
  }
  return pages;
}

function groups(pieces: readonly Piece[]): Piece[][] {
  const runs: Piece[][] = [];
  let open = false;
  for (const piece of pieces) {
    if (open) runs.at(-1)?.push(piece);
    else runs.push([piece]);
    open = piece.keep === true;
  }
  return runs;
}
