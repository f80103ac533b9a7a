/** Tables: fitted columns, whole rows, a repeated head. */
import { look } from '../look.ts';
import type { Block } from '../sheet.ts';
import type { Hand, Tag } from './pen.ts';
import { plain, row, small, stacked, strong, widthOf, type Cell, type Piece, type Setting } from './row.ts';

export type Table = Extract<Block, { kind: 'table' }>;

const data = { type: 'TD' } as const;
const title = { type: 'TH', options: { scope: 'Column' } } as const;

/** At full width. */
export function tablePieces(block: Table, set: Setting): Piece[] {
  const { columns, rows, foot = [], total } = block;
  const places = placesOf(block, set);
  const pad = look.gap.cell;
  const { thin, hair } = look.rules;
  const table: Tag = { type: 'Table' };
  const cells = (
    texts: readonly string[],
    hand: Hand,
    cell: Pick<Tag, 'type' | 'options'> = data,
  ): Cell[] => {
    const within: Tag = { type: 'TR', within: table };
    return places.map((place, i) => {
      const tag: Tag = { ...cell, within };
      return { ...hand, ...place, text: texts[i] ?? '', tag, align: columns[i]?.align };
    });
  };
  const headTexts = columns.map((column) => column.head);
  const before = look.gap.block;
  const isNamed = headTexts.some((text) => text !== '');
  const heads = isNamed
    ? row(cells(headTexts, small, title), set, { before, pad, keep: true, bottom: thin })
    : [];
  // A tall head is not worth repeating.
  const head = heads.length === 1 ? heads.find(({ height }) => height < set.tall / 4) : undefined;
  const body = rows.flatMap((texts, i) => {
    // Totals stay with the last row.
    const keep = i === rows.length - 1 && foot.length > 0;
    const first = i === 0 && !isNamed ? { before, top: thin } : {};
    return row(cells(texts, plain), set, { pad, head, keep, bottom: hair, ...first });
  });
  const sums = foot.flatMap((texts, i) => {
    const style = { pad, head, keep: i < foot.length - 1 };
    return i === total
      ? row(cells(texts, strong), set, { ...style, fill: 'sand', top: thin, bottom: thin })
      : row(cells(texts, plain), set, { ...style, top: i === 0 ? thin : undefined });
  });
  return [...heads, ...body, ...sums];
}

/** As wide as their text; the widest shrink to fit, the first fills up. */
function placesOf({ columns, rows, foot = [] }: Table, set: Setting): { x: number; width: number }[] {
  const gap = look.gap.column * set.scale;
  const room = set.width - gap * (columns.length - 1);
  const wanted = columns.map(({ head }, i) =>
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

/** Largest column width at which all fit. */
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

/** Side by side, or stacked when too tall. */
export function besidePieces(tables: readonly [Table, Table], set: Setting): Piece[] {
  const first = set.width * look.halves.first;
  const gap = set.width * look.halves.gap;
  const left = stacked(tablePieces(tables[0], { ...set, width: first }));
  const right = stacked(tablePieces(tables[1], { ...set, width: set.width - first - gap }));
  const height = Math.max(left.height, right.height);
  if (height > set.tall) return tables.flatMap((table) => tablePieces(table, set));
  const draw = (x: number, y: number): void => {
    left.draw(x, y);
    right.draw(x + first + gap, y);
  };
  return [{ before: look.gap.block * set.scale, height, draw }];
}
