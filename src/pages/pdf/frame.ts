/** What surrounds a PDF paper's blocks: head, notice, rules, cautions, foot. */
import { look, voices, type Color } from '../look.ts';
import type { Sheet } from '../sheet.ts';
import { fine, paragraph, plain, quiet, row, strong, type Cell, type Piece, type Setting } from './row.ts';

/** Box edge to text. */
const INSET = 9;

/** Title to notice, on the first page. */
export function headPieces({ title, shop, about, notice }: Sheet, set: Setting): Piece[] {
  const { width } = set;
  const half = width * 0.58;
  const names: Cell[] = [
    {
      face: 'head',
      size: look.type.title,
      color: 'ink',
      text: title,
      tag: { type: 'H1' },
      x: 0,
      width: half,
    },
    { ...strong, text: shop, tag: { type: 'P' }, x: half, width: width - half, align: 'right' },
  ];
  return [
    {
      before: 0,
      height: look.band.height,
      draw: (x, y) => {
        drawBand(set, x, y);
      },
      keep: true,
    },
    ...row(names, set, { before: 9, keep: true }),
    ...about.flatMap((text) => paragraph({ ...quiet, text }, set)),
    ...(notice === undefined ? [] : noticePieces(notice, set)),
  ];
}

/** A cinch laid flat, with bars over ends and middle. */
function drawBand({ pen, width }: Setting, x: number, y: number): void {
  const { height, strand, bar, center, row: weave } = look.band;
  const level = (down: number, tall: number, color: Color): void => {
    pen.area({ x, y: y + down, width, height: tall }, color);
  };
  for (let i = 0; i < Math.round(height / strand); i += 1) {
    level(i * strand, strand, 'cord');
    level((i + 1) * strand - 0.4, 0.4, 'shade');
  }
  for (const [left, wide] of [
    [0, bar],
    [(width - center) / 2, center],
    [width - bar, bar],
  ] as const) {
    pen.area({ x: x + left, y, width: wide, height }, 'rust');
    for (let i = 1; i <= Math.floor(wide / weave); i += 1)
      pen.area({ x: x + left + i * weave - 0.5, y, width: 0.5, height }, 'ink');
  }
  level(0, 0.6, 'ink');
  level(height - 0.6, 0.6, 'ink');
}

/** White on black, readable from across the bench. */
function noticePieces(notice: string, set: Setting): Piece[] {
  const { loud, rest } = voices(notice);
  const shared = { inset: INSET, pad: 4 };
  const shouted = paragraph({ face: 'strong', size: look.type.loud, color: 'white', text: loud }, set, {
    ...shared,
    before: 8,
    keep: rest !== '',
    fill: 'ink',
  });
  if (rest === '') return shouted;
  return [...shouted, ...paragraph({ ...strong, text: rest }, set, { ...shared, frame: look.rules.thick })];
}

/** House rules on sand, cautions below a line. */
export function endPieces({ rules, cautions }: Sheet, set: Setting): Piece[] {
  const house = rules.flatMap((text, i) =>
    paragraph({ ...plain, text }, set, {
      before: i === 0 ? look.gap.heading : 0,
      inset: INSET,
      pad: 2.5,
      keep: i < rules.length - 1,
      fill: 'sand',
      under: (box) => {
        set.pen.area({ ...box, width: 2.5 * set.scale }, 'rust');
      },
    }),
  );
  if (cautions.length === 0) return house;
  const style = { before: 9, pad: 4, top: look.rules.thin };
  return [...house, ...paragraph({ ...fine, text: cautions.join(' ') }, set, style)];
}

/** Of the head on later pages. */
export const runningHeight = (notice: string | undefined, scale: number): number =>
  (notice === undefined ? 22 : 38) * scale;

/** The paper's name and notice again. */
export function drawRunning(
  { title, shop, notice }: Sheet,
  set: Setting,
  [x, y]: readonly [number, number],
): void {
  const { width, scale, pen } = set;
  const split = width * 0.6;
  const names: Cell[] = [
    { ...fine, face: 'strong', text: title, x: 0, width: split - look.gap.column },
    { ...fine, text: shop, x: split, width: width - split, align: 'right' },
  ];
  row(names, set, { clip: true })[0]?.draw(x, y);
  pen.area({ x, y: y + 12.5 * scale, width, height: look.rules.thin }, 'ink');
  if (notice === undefined) return;
  const loud = { ...strong, color: 'white', text: voices(notice).loud, tag: undefined } as const;
  const [warning] = paragraph(loud, set, { inset: INSET, pad: 1, fill: 'ink', clip: true });
  warning?.draw(x, y + 17 * scale);
}

/** Name and page number. */
export function drawFoot(
  title: string,
  number: string,
  { set, x, y }: { set: Setting; x: number; y: number },
): void {
  const room = set.width * 0.75;
  const cells: Cell[] = [
    { ...fine, text: title, x: 0, width: room },
    { ...fine, text: number, x: room, width: set.width - room, align: 'right' },
  ];
  row(cells, { ...set, scale: 1 }, { clip: true })[0]?.draw(x, y);
}
