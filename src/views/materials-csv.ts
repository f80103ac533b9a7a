/** The materials of a backlog as one table; the first column says which list a row belongs to. */
import type { CutPutUp } from '../work/cutting/types.ts';
import type { Buy, CordNeed, Materials } from '../work/materials.ts';
import type { Lack } from '../work/shelf.ts';
import { takenText, type BacklogResult } from '../words/about-backlog.ts';
import { hereText, supplyText } from '../words/about-shelf.ts';
import { inchesOf } from '../units/feet.ts';
import type { Name } from '../words/names.ts';
import { failedRow } from './shared-values.ts';
import { tableCsv, type Values } from './table.ts';

/** `list` is order, cord, hardware, short, buy, cut or leftover. */
export const materialsColumns: readonly Name[] = [
  'list',
  'order',
  'file',
  'quantity',
  'color',
  'ply',
  'id',
  'lot',
  'origin',
  'putUp',
  'copy',
  'count',
  'length',
  'needed',
  'onHand',
  'short',
  'note',
  'reason',
  'problem',
];

type Row = Values & { readonly list: string };

/** The table with its head. */
export function materialsCsv(materials: Materials, results: readonly BacklogResult[]): string {
  const rows: Row[] = [
    ...results.map(orderRow),
    ...materials.cords.flatMap(cordRows),
    ...materials.hardware.map(({ id, needed, onHand, short, orderable }): Row => ({
      list: 'hardware',
      id,
      needed,
      onHand,
      short,
      note: short > 0 && !orderable ? "can't get more" : undefined,
    })),
    ...[...materials.shares].flatMap(([order, { lacks }]) => lacks.map((lack) => lackRow(order, lack))),
    ...materials.buy.map(buyRow),
    ...materials.plan.materials.flatMap(({ putUps }) =>
      putUps.flatMap((putUp) => putUpRows(putUp, materials)),
    ),
  ];
  return tableCsv(materialsColumns, rows);
}

const lackRow = (order: string, lack: Lack): Row => ({
  ...{ list: 'short', order, note: supplyText(lack) },
  ...(lack.kind === 'cord'
    ? { color: lack.name, ply: lack.ply, length: inchesOf(lack.amount) }
    : { id: lack.name, short: lack.amount }),
});

function orderRow(result: BacklogResult): Row {
  const list = 'order';
  if (!result.ok) return { list, ...failedRow(result) };
  const { order, file, paper, none } = result;
  if (paper === undefined) return { list, order, file, reason: none };
  return { list, order: paper.key, file, quantity: paper.ticket.quantity, note: takenText(paper) };
}

function cordRows({ color, ply, onHand, pieces, needed, lots, short, orders }: CordNeed): Row[] {
  const base = { list: 'cord', color, ply };
  if (onHand === undefined) {
    const why = color === undefined ? 'no color chosen' : 'not in the shop file';
    return [{ ...base, count: pieces, length: inchesOf(needed), note: `${why}: ${orders.join(', ')}` }];
  }
  return [
    ...lots.map(({ lot, bought, pieces: count, length }): Row => ({
      ...base,
      lot: bought ? undefined : lot,
      origin: bought ? 'bought' : 'shelf',
      count,
      length: inchesOf(length),
    })),
    ...short.map(({ order, pieces: own, total, why }): Row => ({
      ...base,
      order,
      origin: 'short',
      count: own.length,
      length: inchesOf(total),
      reason: why,
    })),
  ];
}

function buyRow(buy: Buy): Row {
  switch (buy.kind) {
    case 'put-up':
      return {
        list: 'buy',
        color: buy.color,
        ply: buy.ply,
        putUp: inchesOf(buy.length),
        count: buy.count,
        note: hereText(buy.comes),
      };
    case 'cord':
      return {
        list: 'buy',
        color: buy.color,
        ply: buy.ply,
        length: inchesOf(buy.length),
        note: `length of its spools or hanks not given; ${hereText(buy.comes)}`,
      };
    default:
      return { list: 'buy', id: buy.id, count: buy.count, note: hereText(buy.comes) };
  }
}

function putUpRows(
  { color, ply, lot, origin, length, copy, pieces, leftover, goesBack }: CutPutUp,
  { cuts }: Materials,
): Row[] {
  const base = {
    color,
    ply,
    lot: origin === 'bought' ? undefined : lot,
    origin,
    putUp: inchesOf(length),
    copy,
  };
  return [
    ...pieces.map(({ cut, order, length: own }): Row => ({
      list: 'cut',
      order,
      ...base,
      count: 1,
      length: inchesOf(own),
      note: cuts.get(cut)?.use,
    })),
    ...(leftover === 0
      ? []
      : [
          {
            list: 'leftover',
            ...base,
            length: inchesOf(leftover),
            note: goesBack ? 'goes back' : 'waste',
          },
        ]),
  ];
}
