/** What one order needs from the shelf of cords: looked up once, whatever is tied. */
import type { Cord, Order, Shop } from '../order/types.ts';

/** Ply of body and of accent cord. */
const PLY = { body: 8, accent: 2 } as const;

/** The cord of one ply that was asked for; all colors of it together. */
export interface CordShelf {
  readonly kind: 'body' | 'accent';
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
  body: cordShelf('body', colors?.body ?? [], shop),
  accent: cordShelf('accent', colors?.accent ?? [], shop),
});

function cordShelf(kind: CordShelf['kind'], colors: readonly string[], shop: Shop): CordShelf {
  const ply = PLY[kind];
  let feetOnHand = 0;
  let orderable = true;
  let unknown: string | undefined;
  for (const color of colors) {
    const cord = cordOf(color, ply, shop);
    feetOnHand += cord?.feetOnHand ?? 0;
    orderable &&= cord?.orderable === true;
    if (cord === undefined) unknown ??= color;
  }
  return { kind, ply, colors, unknown, feetOnHand, orderable };
}

/** The cord of that color; capitals do not matter. */
function cordOf(color: string, ply: number, { cords }: Shop): Cord | undefined {
  const plain = color.toLowerCase();
  return cords.find((cord) => cord.ply === ply && cord.color.toLowerCase() === plain);
}
