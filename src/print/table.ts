/** Tables: columns as wide as they need, rows that stay whole, the head again on every page. */
import { look } from '../report/look.ts';
import type { Block, Column } from '../report/sheet.ts';
import { rule, type Mark } from './marks.ts';
import { moved } from './marks.ts';
import { plain, row, small, strong, widthOf, type Hand, type Piece, type Setting } from './row.ts';

export type Table = Extract<Block, { kind: 'table' }>;

interface Place {
  readonly x: number;
  readonly width: number;
}

/** The pieces of a table that fills the width. */
export function tablePieces(table: Table, set: Setting): Piece[] {
  const { columns, rows, foot = [], total } = table;
  const places = placesOf(table, set);
  const pad = look.gap.cell * set.scale;
  const cells = (texts: readonly string[], hand: Hand) =>
    columns.map(({ align }, i) => ({ ...hand, text: texts[i] ?? '', ...(places[i] as Place), align }));
  const heads = columns.map(({ head }) => head);
  const headPieces = row(cells(heads, small), set, {
    before: look.gap.block * set.scale,
    pad,
    keep: true,
    under: (height) => [line(set, { y: height - look.rules.thin, weight: look.rules.thin })],
  });
  const [first] = headPieces;
  // A head that takes much of a page is not worth repeating.
  const head =
    first !== undefined && headPieces.length === 1 && first.height < set.tall / 4 ? first : undefined;
  const body = rows.flatMap((texts, i) =>
    row(cells(texts, plain), set, {
      pad,
      head,
      // The sums stay with the last row they sum up.
      keep: i === rows.length - 1 && foot.length > 0,
      under: (height) => [line(set, { y: height - look.rules.hair, weight: look.rules.hair })],
    }),
  );
  const sums = foot.flatMap((texts, i) =>
    row(cells(texts, i === total ? strong : plain), set, {
      pad,
      head,
      keep: i < foot.length - 1,
      under: (height) => sumMarks(set, height, { first: i === 0, total: i === total }),
    }),
  );
  return [...headPieces, ...body, ...sums];
}

const line = (set: Setting, { y, weight }: { y: number; weight: number }): Mark =>
  rule({ x: 0, y, width: set.width }, { color: weight > look.rules.hair ? 'ink' : 'line', weight });

function sumMarks(
  set: Setting,
  height: number,
  { first, total }: { first: boolean; total: boolean },
): Mark[] {
  const weight = look.rules.thin;
  const top = line(set, { y: 0, weight });
  if (!total) return first ? [top] : [];
  return [
    { kind: 'area', x: 0, y: 0, width: set.width, height, fill: 'sand' },
    top,
    line(set, { y: height - weight, weight }),
  ];
}

/** Each column as wide as its widest text; where that is too much the widest give way; what is left goes to the first. */
function placesOf({ columns, rows, foot = [] }: Table, set: Setting): Place[] {
  const gap = look.gap.column * set.scale;
  const room = set.width - gap * (columns.length - 1);
  const wanted = columns.map(({ head }: Column, i) =>
    Math.max(
      widthOf(small, set)(head),
      ...[...rows, ...foot].map((texts) => widthOf(strong, set)(texts[i] ?? '')),
    ),
  );
  const most = ceiling(wanted, room);
  const widths = wanted.map((width) => Math.min(width, most));
  const rest = Math.max(0, room - widths.reduce((sum, width) => sum + width, 0));
  let x = 0;
  return widths.map((width, i) => {
    const place = { x, width: i === 0 ? width + rest : width };
    x += place.width + gap;
    return place;
  });
}

/** The width that no column may pass, so that all of them fit. */
function ceiling(wanted: readonly number[], room: number): number {
  let left = room;
  const ordered = [...wanted].sort((a, b) => a - b);
  for (const [i, width] of ordered.entries()) {
    const share = left / (ordered.length - i);
    if (width > share) return share;
    left -= width;
  }
  return Infinity;
}

/** Two tables side by side as one piece; one under the other where they are too tall for a page. */
export function besidePieces(tables: readonly [Table, Table], set: Setting): Piece[] {
  const first = set.width * look.halves.first;
  const gap = set.width * look.halves.gap;
  const left = stacked(tablePieces(tables[0], { ...set, width: first }));
  const right = stacked(tablePieces(tables[1], { ...set, width: set.width - first - gap }));
  const height = Math.max(left.height, right.height);
  if (height > set.tall) return tables.flatMap((table) => tablePieces(table, set));
  const marks = [...left.marks, ...moved(right.marks, first + gap, 0)];
  return [{ before: look.gap.block * set.scale, height, marks }];
}

function stacked(pieces: readonly Piece[]): { height: number; marks: Mark[] } {
  let height = 0;
  const marks = pieces.flatMap((piece) => {
    const placed = moved(piece.marks, 0, height);
    height += piece.height;
    return placed;
  });
  return { height, marks };
}
