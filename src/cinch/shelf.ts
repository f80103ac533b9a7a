/** What one order needs from the shelf of cords: looked up once, whatever is tied. */
import type { Cord, Order, Shop } from '../order/types.ts';
import { ACCENT_PLY, BODY_PLY } from '../numbers/plies.ts';

/** The cord of one ply that was asked for; all colors of it together. */
export interface CordShelf {
  readonly ply: number;
  readonly colors: readonly string[];
  /** A color that is not on the shop's list. */
  readonly unknown: string | undefined;
  readonly feetOnHand: number;
  /** Whether more of every color can be ordered. */
  readonly orderable: boolean;
}

export interface Shelf {
  readonly body: CordShelf;
  readonly accent: CordShelf;
}

/** The shelf as one order sees it. */
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

/** The cord of that color and ply, if the shop has it; capitals do not matter. */
export function cordOf(color: string, ply: number, { cords }: Shop): Cord | undefined {
  const plain = color.toLowerCase();
  return cords.find((cord) => cord.ply === ply && cord.color.toLowerCase() === plain);
}
