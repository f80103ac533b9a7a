/** What stands around the blocks: the head of a paper with its band of strands, the notice, house rules and cautions at its end. */
import { look, voices, type Color } from '../report/look.ts';
import type { Sheet } from '../report/sheet.ts';
import { linesOf } from './lines.ts';
import { fine, plain, quiet, row, strong, widthOf, type Cell, type Piece, type Setting } from './row.ts';

/** The head of the first page, down to the notice. */
export function headPieces({ title, shop, about, notice }: Sheet, set: Setting): Piece[] {
  const { width, scale } = set;
  const half = width * 0.58;
  const names: Cell[] = [
    { face: 'head', size: look.type.title, color: 'ink', text: title, x: 0, width: half },
    { ...strong, text: shop, x: half, width: width - half, align: 'right' },
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
    ...row(names, set, { before: 9 * scale, keep: true }),
    ...about.flatMap((text) => row([{ ...quiet, text, x: 0, width }], set)),
    ...(notice === undefined ? [] : noticePieces(notice, set)),
  ];
}

/** A cinch laid flat: strands from edge to edge, bars woven over both ends and the middle. */
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

/** White on ink, then a thick frame: seen from across the bench, with or without a color printer. */
function noticePieces(notice: string, set: Setting): Piece[] {
  const { loud, rest } = voices(notice);
  const pad = 4 * set.scale;
  const x = 9 * set.scale;
  const width = set.width - 2 * x;
  const shouted = row([{ face: 'strong', size: look.type.loud, color: 'white', text: loud, x, width }], set, {
    before: 8 * set.scale,
    pad,
    keep: rest !== '',
    fill: 'ink',
  });
  if (rest === '') return shouted;
  return [...shouted, ...row([{ ...strong, text: rest, x, width }], set, { pad, frame: look.rules.thick })];
}

/** House rules on sand, cautions under a line. */
export function endPieces({ rules, cautions }: Sheet, set: Setting): Piece[] {
  const { width, scale, pen } = set;
  const x = 9 * scale;
  const house = rules.flatMap((text, i) =>
    row([{ ...plain, text, x, width: width - 2 * x }], set, {
      before: i === 0 ? look.gap.heading * scale : 0,
      pad: 2.5 * scale,
      keep: i < rules.length - 1,
      fill: 'sand',
      under: (box) => {
        pen.area({ ...box, width: 2.5 * scale }, 'rust');
      },
    }),
  );
  if (cautions.length === 0) return house;
  const kept = row([{ ...fine, text: cautions.join(' '), x: 0, width }], set, {
    before: 9 * scale,
    pad: 4 * scale,
    top: look.rules.thin,
  });
  return [...house, ...kept];
}

/** Room that the running head of further pages takes. */
export const runningHeight = (notice: string | undefined, scale: number): number =>
  (notice === undefined ? 22 : 38) * scale;

/** The head of a further page: which paper it belongs to, and the warning again. */
export function drawRunning(
  { title, shop, notice }: Sheet,
  set: Setting,
  [x, y]: readonly [number, number],
): void {
  const { width, scale, pen } = set;
  const split = width * 0.6;
  const names = [
    clipped({ ...fine, face: 'strong', text: title, x: 0, width: split - look.gap.column }, set),
    clipped({ ...fine, text: shop, x: split, width: width - split, align: 'right' }, set),
  ];
  row(names, set)[0]?.draw(x, y);
  pen.area({ x, y: y + 12.5 * scale, width, height: look.rules.thin }, 'ink');
  if (notice === undefined) return;
  const in9 = 9 * scale;
  const loud: Cell = { ...strong, color: 'white', text: voices(notice).loud, x: in9, width: width - 2 * in9 };
  row([clipped(loud, set)], set, { pad: scale, fill: 'ink' })[0]?.draw(x, y + 17 * scale);
}

/** The foot of every page: which paper it belongs to, and which of its pages it is. */
export function drawFoot(
  title: string,
  number: string,
  { set, x, y }: { set: Setting; x: number; y: number },
): void {
  const room = set.width * 0.75;
  const still = { ...set, scale: 1 };
  const left = clipped({ ...fine, text: title, x: 0, width: room }, still);
  row([left, { ...fine, text: number, x: room, width: set.width - room, align: 'right' }], still)[0]?.draw(
    x,
    y,
  );
}

/** A cell of one line; what is cut stands whole on the first page. */
function clipped(cell: Cell, set: Setting): Cell {
  const measure = widthOf(cell, set);
  const [first = '', ...more] = linesOf(cell.text, cell.width - measure('\u2026'), measure);
  return more.length === 0 ? cell : { ...cell, text: `${first}\u2026` };
}
