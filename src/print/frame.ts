/** What stands around the blocks: the head of a paper with its band of strands, the notice, house rules and cautions at its end. */
import { look, voices } from '../report/look.ts';
import type { Sheet } from '../report/sheet.ts';
import { linesOf } from './lines.ts';
import { moved, rule, type Mark } from './marks.ts';
import { fine, plain, quiet, row, strong, widthOf, type Cell, type Piece, type Setting } from './row.ts';

/** The head of the first page, down to the notice. */
export function headPieces({ title, shop, about, notice }: Sheet, set: Setting): Piece[] {
  const { width, scale } = set;
  const half = width * 0.58;
  const names: Cell[] = [
    { face: 'head', size: look.type.title, color: 'ink', text: title, x: 0, width: half },
  ];
  const from: Cell[] = [{ ...strong, text: shop, x: half, width: width - half, align: 'right' }];
  const drop = (look.type.title - look.type.text) * scale * 0.97;
  const [left = empty, ...rest] = row(names, set, { keep: true });
  const [right = empty, ...more] = row(from, set);
  const name: Piece = {
    before: 9 * scale,
    height: Math.max(left.height, right.height + drop),
    marks: [...left.marks, ...moved(right.marks, 0, drop)],
    keep: true,
  };
  return [
    { before: 0, height: look.band.height, marks: band(width), keep: true },
    name,
    ...rest,
    ...more,
    ...about.flatMap((text) => row([{ ...quiet, text, x: 0, width }], set)),
    ...(notice === undefined ? [] : noticePieces(notice, set)),
  ];
}

const empty: Piece = { before: 0, height: 0, marks: [] };

/** A cinch laid flat: strands from edge to edge, bars woven over both ends and the middle. */
function band(width: number): Mark[] {
  const { height, strand, bar, center, row: weave } = look.band;
  const strands = Array.from({ length: Math.round(height / strand) }, (_, i): Mark[] => [
    { kind: 'area', x: 0, y: i * strand, width, height: strand, fill: 'cord' },
    rule({ x: 0, y: (i + 1) * strand - 0.4, width }, { color: 'shade', weight: 0.4 }),
  ]).flat();
  const woven = (x: number, wide: number): Mark[] => [
    { kind: 'area', x, y: 0, width: wide, height, fill: 'rust' },
    ...Array.from({ length: Math.floor(wide / weave) }, (_, i): Mark => ({
      kind: 'area',
      x: x + (i + 1) * weave - 0.5,
      y: 0,
      width: 0.5,
      height,
      fill: 'ink',
    })),
  ];
  return [
    ...strands,
    ...woven(0, bar),
    ...woven((width - center) / 2, center),
    ...woven(width - bar, bar),
    rule({ x: 0, y: 0, width }, { color: 'ink', weight: 0.6 }),
    rule({ x: 0, y: height - 0.6, width }, { color: 'ink', weight: 0.6 }),
  ];
}

/** White on ink, then a thick frame: seen from across the bench, with or without a color printer. */
function noticePieces(notice: string, set: Setting): Piece[] {
  const { width, scale } = set;
  const { loud, rest } = voices(notice);
  const pad = 4 * scale;
  const x = 9 * scale;
  const frame = { color: 'ink', width: look.rules.thick } as const;
  const shouted = row(
    [{ face: 'strong', size: look.type.loud, color: 'white', text: loud, x, width: width - 2 * x }],
    set,
    {
      before: 8 * scale,
      pad,
      keep: rest !== '',
      under: (height) => [{ kind: 'area', x: 0, y: 0, width, height, fill: 'ink' }],
    },
  );
  if (rest === '') return shouted;
  const said = row([{ ...strong, text: rest, x, width: width - 2 * x }], set, {
    pad,
    under: (height) => [{ kind: 'area', x: 0, y: 0, width, height, frame }],
  });
  return [...shouted, ...said];
}

/** House rules on sand, cautions under a line. */
export function endPieces({ rules, cautions }: Sheet, set: Setting): Piece[] {
  const { width, scale } = set;
  const x = 9 * scale;
  const house = rules.flatMap((text, i) =>
    row([{ ...plain, text, x, width: width - 2 * x }], set, {
      before: i === 0 ? look.gap.heading * scale : 0,
      pad: 2.5 * scale,
      keep: i < rules.length - 1,
      under: (height) => [
        { kind: 'area', x: 0, y: 0, width, height, fill: 'sand' },
        { kind: 'area', x: 0, y: 0, width: 2.5 * scale, height, fill: 'rust' },
      ],
    }),
  );
  if (cautions.length === 0) return house;
  const kept = row([{ ...fine, text: cautions.join(' '), x: 0, width }], set, {
    before: 9 * scale,
    pad: 4 * scale,
    under: () => [rule({ x: 0, y: 0, width }, { color: 'ink', weight: look.rules.thin })],
  });
  return [...house, ...kept];
}

/** Room that the running head of further pages takes. */
export const runningHeight = (notice: boolean, scale: number): number => (notice ? 38 : 22) * scale;

/** The head of a further page: which paper it belongs to, and the warning again. */
export function runningMarks({ title, shop, notice }: Sheet, set: Setting): Mark[] {
  const { width, scale } = set;
  const split = width * 0.6;
  const cells: Cell[] = [
    clipped({ ...fine, face: 'strong', text: title, x: 0, width: split - look.gap.column }, set),
    clipped({ ...fine, text: shop, x: split, width: width - split, align: 'right' }, set),
  ];
  const [{ marks } = empty] = row(cells, set);
  const line = rule({ x: 0, y: 12.5 * scale, width }, { color: 'ink', weight: look.rules.thin });
  if (notice === undefined) return [...marks, line];
  const x = 9 * scale;
  const loud: Cell = { ...strong, color: 'white', text: voices(notice).loud, x, width: width - 2 * x };
  const [warning = empty] = row([clipped(loud, set)], set, {
    pad: scale,
    under: (height) => [{ kind: 'area', x: 0, y: 0, width, height, fill: 'ink' }],
  });
  return [...marks, line, ...moved(warning.marks, 0, 17 * scale)];
}

/** A cell of one line; what is cut stands whole on the first page. */
function clipped(cell: Cell, set: Setting): Cell {
  const measure = widthOf(cell, set);
  const [first = '', ...more] = linesOf(cell.text, cell.width - measure('\u2026'), measure);
  return more.length === 0 ? cell : { ...cell, text: `${first}\u2026` };
}
