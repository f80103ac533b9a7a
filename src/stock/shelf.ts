/** What one order needs from the shelf of cords: looked up once, whatever is tied. */
import type { Cord, Order, Shop } from '../order/types.ts';
import { ACCENT_PLY, BODY_PLY } from '../sources/plies.ts';
import { mostAccentFeet } from './accent.ts';
import { bodyCordFeet } from './cord.ts';

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
  /** Whether there is body cord for one cinch and not for another: else their feet need not be counted. */
  readonly bodyTight: boolean;
  /** The same of accent cord. */
  readonly accentTight: boolean;
}

/** The shelf as one order sees it. */
export function shelfOf({ colors, quantity }: Order, shop: Shop): Shelf {
  const body = cordShelf(BODY_PLY, colors?.body ?? [], shop);
  const accent = cordShelf(ACCENT_PLY, colors?.accent ?? [], shop);
  return {
    body,
    accent,
    bodyTight: isTight(body, mostBodyFeet(shop) * quantity),
    accentTight: isTight(accent, mostAccentFeet(shop, accent.colors.length) * quantity),
  };
}

const isTight = ({ colors, unknown, feetOnHand }: CordShelf, most: number): boolean =>
  colors.length > 0 && unknown === undefined && feetOnHand > 0 && feetOnHand < most;

/** No cinch of the shop takes more body cord than this. */
const mostBodyFeet = ({ strands, lengths }: Shop): number => bodyCordFeet(strands.max, lengths.max);

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
