/** The materials of a backlog as one table: rows of several lists, told apart by the first column. */
import type { CutPutUp } from '../work/cutting/types.ts';
import type { Buy, CordNeed, Materials } from '../work/materials.ts';
import type { Lack } from '../work/shelf.ts';
import { takenText, type BacklogResult } from '../words/about-backlog.ts';
import { hereText, supplyText } from '../words/about-shelf.ts';
import { inchesOf } from '../units/feet.ts';
import { csvText, type Cell } from '../pages/csv.ts';
import { unreadNote } from '../words/unread-note.ts';

/** Columns in order, each with what it holds. */
export const materialsColumns = [
  ['list', 'order, cord, hardware, short, buy, cut or leftover: which list the row is of'],
  ['order', 'the order; of a cut the one it is for'],
  ['file', 'the file an order came from'],
  ['item', 'color of cord, or the name of hardware'],
  ['ply', '8 body cord, 2 accent cord; empty for hardware'],
  ['lot', 'dye lot; empty where it is not said or not yet bought'],
  ['origin', 'remnant, shelf, bought or short'],
  ['put_up_in', 'length of the put-up a piece is cut from or that is bought, inches'],
  ['copy', 'which of several put-ups that are alike'],
  ['count', 'pieces'],
  ['length_in', 'length of one cut or leftover, or of all pieces together, inches'],
  ['on_hand', 'pieces of hardware on hand'],
  ['short', 'pieces of hardware short'],
  ['note', 'what it is for, when it comes, why it is taken, or why it is left out'],
] as const;

type Name = (typeof materialsColumns)[number][0];
type Row = Partial<Record<Name, Cell>> & { readonly list: string };

/** The table with its head. */
export function materialsCsv(materials: Materials, results: readonly BacklogResult[]): string {
  const rows: Row[] = [
    ...results.map(orderRow),
    ...materials.cords.flatMap(cordRows),
    ...materials.hardware.map(({ id, needed, onHand, short, orderable }): Row => ({
      list: 'hardware',
      item: id,
      count: needed,
      on_hand: onHand,
      short,
      note: short > 0 && !orderable ? 'no more to be had' : undefined,
    })),
    ...[...materials.shares].flatMap(([order, { lacks }]) => lacks.map((lack) => lackRow(order, lack))),
    ...materials.buy.map(buyRow),
    ...materials.plan.materials.flatMap(({ putUps }) =>
      putUps.flatMap((putUp) => putUpRows(putUp, materials)),
    ),
  ];
  return csvText([
    materialsColumns.map(([name]) => name),
    ...rows.map((row) => materialsColumns.map(([name]) => row[name])),
  ]);
}

/** What one order does not find on the shelf. */
const lackRow = (order: string, lack: Lack): Row => ({
  ...{ list: 'short', order, item: lack.name, ply: lack.ply },
  ...(lack.kind === 'cord' ? { length_in: inchesOf(lack.amount) } : { short: lack.amount }),
  note: supplyText(lack),
});

/** An order of a backlog as a row. */
function orderRow(result: BacklogResult): Row {
  const { order, file } = result;
  if (!result.ok) return { list: 'order', order, file, note: unreadNote(result) };
  const { paper, none } = result;
  return {
    list: 'order',
    order: paper?.key ?? order,
    file,
    count: paper?.ticket.quantity,
    note: paper === undefined ? none : takenText(paper),
  };
}

function cordRows({ color, ply, onHand, pieces, needed, lots, short, orders }: CordNeed): Row[] {
  const base = { list: 'cord', item: color, ply };
  if (onHand === undefined) {
    const why = color === undefined ? 'color not said' : 'not in the shop file';
    return [{ ...base, count: pieces, length_in: inchesOf(needed), note: `${why}: ${orders.join(', ')}` }];
  }
  return [
    ...lots.map(({ lot, bought, pieces: count, length }): Row => ({
      ...base,
      lot: bought ? undefined : lot,
      origin: bought ? 'bought' : 'shelf',
      count,
      length_in: inchesOf(length),
    })),
    ...short.map(({ order, pieces: own, total, why }): Row => ({
      ...base,
      order,
      origin: 'short',
      count: own.length,
      length_in: inchesOf(total),
      note: why,
    })),
  ];
}

function buyRow(buy: Buy): Row {
  switch (buy.kind) {
    case 'put-up':
      return {
        list: 'buy',
        item: buy.color,
        ply: buy.ply,
        put_up_in: inchesOf(buy.length),
        count: buy.count,
        note: hereText(buy.comes),
      };
    case 'cord':
      return {
        list: 'buy',
        item: buy.color,
        ply: buy.ply,
        length_in: inchesOf(buy.length),
        note: `length of its put-ups not said; ${hereText(buy.comes)}`,
      };
    default:
      return { list: 'buy', item: buy.id, count: buy.count, note: hereText(buy.comes) };
  }
}

function putUpRows(
  { color, ply, lot, origin, length, copy, pieces, leftover, goesBack }: CutPutUp,
  { cuts }: Materials,
): Row[] {
  const base = {
    item: color,
    ply,
    lot: origin === 'bought' ? undefined : lot,
    origin,
    put_up_in: inchesOf(length),
    copy,
  };
  return [
    ...pieces.map(({ cut, order, length: own }): Row => ({
      list: 'cut',
      order,
      ...base,
      count: 1,
      length_in: inchesOf(own),
      note: cuts.get(cut)?.use,
    })),
    ...(leftover === 0
      ? []
      : [
          {
            list: 'leftover',
            ...base,
            length_in: inchesOf(leftover),
            note: goesBack ? 'goes back' : 'waste',
          },
        ]),
  ];
}
