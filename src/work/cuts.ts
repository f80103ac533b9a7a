/** The cord of a backlog as a cutting task. */
import { newLot } from './cutting/material.ts';
import type { Buyable, Cut, CuttingTask, PutUp } from './cutting/types.ts';
import type { Cord, Shop } from '../order/types.ts';
import { bench } from '../numbers/bench-numbers.ts';
import { ACCENT_PLY } from '../numbers/plies.ts';
import { cordOf } from '../cinch/shelf.ts';
import { EIGHTHS_A_FOOT, wholeEighths } from '../units/feet.ts';
import type { Keyed } from './planned.ts';

/** One piece per cinch of the order. */
export interface TicketCut extends Omit<Cut, 'color'> {
  /** In the shop file's spelling; undefined when not chosen. */
  readonly color: string | undefined;
  readonly known: boolean;
  /** "strands 1 to 21", "accent". */
  readonly use: string;
}

/** One color and ply. */
export const cordKey = ({ color, ply }: { color?: string | undefined; ply: number }): string =>
  JSON.stringify([color, ply]);

/** Entries with the same key, in order of appearance. */
export function groups<T>(list: readonly T[], keyOf: (entry: T) => string): T[][] {
  const found = new Map<string, T[]>();
  for (const entry of list) {
    const group = found.get(keyOf(entry));
    if (group === undefined) found.set(keyOf(entry), [entry]);
    else group.push(entry);
  }
  return [...found.values()];
}

/** All pieces of one order. */
export function cutsOf({ key, ticket }: Pick<Keyed, 'key' | 'ticket'>, shop: Shop): TicketCut[] {
  const needs = [
    ...ticket.pieces.map(({ color, ply, feet, strands }) => ({
      color,
      ply,
      feet,
      use: strands.includes(' ') ? `strands ${strands}` : `strand ${strands}`,
    })),
    ...ticket.accents.map(({ color, feet }) => ({ color, ply: ACCENT_PLY, feet, use: 'accent' })),
  ];
  return needs.map(({ color, ply, feet, use }, i) => {
    const cord = color === undefined ? undefined : cordOf(color, ply, shop);
    return {
      id: `${key}/${String(i + 1)}`,
      order: key,
      color: cord?.color ?? color,
      known: cord !== undefined,
      ply,
      length: feet * EIGHTHS_A_FOOT,
      quantity: ticket.quantity,
      use,
    };
  });
}

/** Leaves out cuts in cord the shop does not list. */
export function cuttingTask(cuts: readonly TicketCut[], { cords }: Shop): CuttingTask {
  const named = cuts.flatMap(({ id, order, color, known, ply, length, quantity }): Cut[] =>
    known && color !== undefined && length > 0 ? [{ id, order, color, ply, length, quantity }] : [],
  );
  return {
    cuts: named,
    onHand: cords.flatMap(onHandOf),
    buyable: cords.flatMap(buyableOf),
    usable: bench('least-remnant') * 8,
  };
}

/** Equal ones become one entry; lot "" is not tracked. */
function onHandOf({ color, ply, putUps }: Cord): PutUp[] {
  const found = new Map<string, PutUp>();
  const add = (lot: string, feet: number, { count, opened }: { count: number; opened: boolean }): void => {
    const length = wholeEighths(feet);
    if (length === 0 || count === 0) return;
    const id = JSON.stringify([color, ply, lot, length, opened ? 'remnant' : 'whole']);
    found.set(id, { id, color, ply, lot, length, opened, count: (found.get(id)?.count ?? 0) + count });
  };
  for (const { lot = '', feet, count, opened } of putUps) {
    add(lot, feet, { count, opened: false });
    for (const left of opened) add(lot, left, { count: 1, opened: true });
  }
  return [...found.values()];
}

/** All of one new dye lot. */
function buyableOf({ color, ply, putUps, orderable }: Cord): Buyable[] {
  if (!orderable) return [];
  const lengths = [...new Set(putUps.map(({ feet }) => wholeEighths(feet)))].filter((length) => length > 0);
  return lengths.map((length) => ({ id: JSON.stringify([color, ply, newLot, length]), color, ply, length }));
}
