/** The cord an order needs, looked up on the shelf. */
import type { Cord, Order, Shop } from '../order/types.ts';
import { ACCENT_PLY, BODY_PLY } from '../numbers/plies.ts';

export interface CordShelf {
  readonly ply: number;
  readonly colors: readonly string[];
  /** Not in the shop file. */
  readonly unknown: string | undefined;
  readonly feetOnHand: number;
  /** Every color. */
  readonly orderable: boolean;
}

export interface Shelf {
  readonly body: CordShelf;
  readonly accent: CordShelf;
}

/** Body and accent cord. */
export const shelfOf = ({ colors }: Order, shop: Shop): Shelf => ({
  body: cordShelf(BODY_PLY, colors?.body ?? [], shop),
  accent: cordShelf(ACCENT_PLY, colors?.accent ?? [], shop),
});

function cordShelf(ply: number, colors: readonly string[], shop: Shop): CordShelf {
  let feetOnHand = 0;
  let orderable = true;
  let unknown: string | undefined;
  for (const color of colors) {
    const cord = cordOf(color, ply, shop);
    feetOnHand += cord?.feetOnHand ?? 0;
    orderable &&= cord?.orderable === true;
    if (cord === undefined) unknown ??= color;
  }
  return { ply, colors, unknown, feetOnHand, orderable };
}

/** Ignores capitals. */
export function cordOf(color: string, ply: number, { cords }: Shop): Cord | undefined {
  const plain = color.toLowerCase();
  return cords.find((cord) => cord.ply === ply && cord.color.toLowerCase() === plain);
}
