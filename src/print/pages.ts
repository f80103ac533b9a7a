/** Papers laid out on pages: no row is cut, a heading stays with what follows, every page says which one it is. */
import { look } from '../report/look.ts';
import type { Sheet } from '../report/sheet.ts';
import { blocksPieces } from './blocks.ts';
import { endPieces, headPieces, runningHeight, runningMarks } from './frame.ts';
import { canPrint, type Has } from './letters.ts';
import { moved, type Mark, type Measure, type Page } from './marks.ts';
import { fine, row, type Piece, type Setting } from './row.ts';

/** Sizes of paper in points: ANSI Y14.1 size A, ISO 216 A4. */
export const papers = {
  letter: { width: 612, height: 792 },
  a4: { width: 595.28, height: 841.89 },
} as const;
export type Paper = keyof typeof papers;

/** The type as far as a layout needs to know it. */
export interface Type {
  readonly measure: Measure;
  readonly has: Has;
}

/** From full size down: smaller type only where it saves a page. */
const scales = [1, 0.96, 0.92, 0.88, 0.85];

/** The pages of one paper, as few as can be and then in type as large as can be. */
export function pagesOf(sheet: Sheet, paper: Paper, type: Type): Page[] {
  const tries = scales.map((scale) => (): Page[] => laidOut(sheet, paper, { type, scale }));
  const first = (tries[0] as () => Page[])();
  if (first.length === 1) return first;
  const fewest = (tries.at(-1) as () => Page[])().length;
  if (first.length === fewest) return first;
  for (const attempt of tries.slice(1)) {
    const pages = attempt();
    if (pages.length === fewest) return pages;
  }
  return first;
}

/** Room for the page number. */
const FOOT = 16;

function laidOut(sheet: Sheet, paper: Paper, { type, scale }: { type: Type; scale: number }): Page[] {
  const { width, height } = papers[paper];
  const { top, side, bottom } = look.margin;
  const running = runningHeight(sheet.notice !== undefined, scale);
  const room = height - top - bottom - FOOT;
  const measure: Measure = (text, face) =>
    type.measure(text, canPrint(text, face, type.has) ? face : 'strong');
  const set: Setting = { width: width - 2 * side, tall: room - running, scale, measure };
  const pieces = [...headPieces(sheet, set), ...blocksPieces(sheet.blocks, set), ...endPieces(sheet, set)];
  const bodies = broken(pieces, { first: room, further: room - running });
  return bodies.map((body, i) => {
    const head = i === 0 ? [] : runningMarks(sheet, set);
    const foot = footMarks(`${i + 1} of ${bodies.length}`, sheet, set);
    const marks = [
      ...moved([...head, ...moved(body, 0, i === 0 ? 0 : running)], side, top),
      ...moved(foot, side, height - bottom - 11),
    ];
    return { marks: marks.map((mark) => printable(mark, type)) };
  });
}

/** Headings in letters that only the plain faces have are set in those. */
const printable = (mark: Mark, { has }: Type): Mark =>
  mark.kind === 'text' && !canPrint(mark.text, mark.face, has) ? { ...mark, face: 'strong' } : mark;

function footMarks(number: string, { title }: Sheet, set: Setting): readonly Mark[] {
  const still = { ...set, scale: 1 };
  const room = set.width * 0.75;
  const [left] = row([{ ...fine, text: title, x: 0, width: room }], still);
  const [right] = row([{ ...fine, text: number, x: room, width: set.width - room, align: 'right' }], still);
  const first = left?.marks.slice(0, 1) ?? [];
  return [...first, ...(right?.marks ?? [])];
}

/** What stands on each page. Pieces that keep to the next one move with it, unless together they are taller than a page. */
function broken(pieces: readonly Piece[], { first, further }: { first: number; further: number }): Mark[][] {
  const pages: Mark[][] = [[]];
  let y = 0;
  const room = (): number => (pages.length === 1 ? first : further);
  const put = (piece: Piece): void => {
    y += y === 0 ? 0 : piece.before;
    pages.at(-1)?.push(...moved(piece.marks, 0, y));
    y += piece.height;
  };
  for (const group of groups(pieces)) {
    if (y > 0 && y + tall(group) > room() && tall(group) <= further) next(group[0]);
    for (const piece of group) {
      if (y > 0 && y + piece.before + piece.height > room()) next(piece);
      put(piece);
    }
  }
  return pages;

  function next(piece: Piece | undefined): void {
    pages.push([]);
    y = 0;
    if (piece?.head !== undefined) put(piece.head);
  }
}

const tall = (group: readonly Piece[]): number =>
  group.reduce((sum, { before, height }) => sum + before + height, 0);

/** Runs of pieces that stay together. */
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
