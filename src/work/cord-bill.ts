/** Cord of an order as bill lines. */
import type { Candidate } from '../cinch/candidate.ts';
import type { CordPrice } from '../order/trade-types.ts';
import type { Cord, Order, Shop } from '../order/types.ts';
import { amountOf, dividedBy, rateOf, wholeRate, type Minor } from '../units/money.ts';
import { nearestWord } from '../units/nearest.ts';
import { accentNeeds, placedBars } from '../cinch/accent.ts';
import { flatOf } from '../cinch/flat.ts';
import { cordOf } from '../cinch/shelf.ts';
import { ACCENT_PLY, BODY_PLY } from '../numbers/plies.ts';
import { joined, type Missing, type PartBill, type Unit } from './line.ts';
import { piecesOf, sectionsOf } from './strands.ts';

/** By color, for all cinches. */
export function cordBill(candidate: Candidate, { quantity, colors }: Order, shop: Shop): PartBill {
  const feet = new Map<string, { color: string | undefined; ply: number; feet: number }>();
  const add = (color: string | undefined, ply: number, more: number): void => {
    const key = `${String(ply)} ${color ?? ''}`;
    feet.set(key, { color, ply, feet: (feet.get(key)?.feet ?? 0) + more });
  };
  const pieces = piecesOf(sectionsOf(candidate.strands, colors?.body ?? []), candidate.length);
  for (const piece of pieces) add(piece.color, BODY_PLY, piece.feet * quantity);
  const bars = placedBars(flatOf(candidate), colors?.accent ?? []);
  for (const need of accentNeeds(bars)) add(need.color, ACCENT_PLY, need.feet * quantity);
  return joined([...feet.values()].map((need) => cordLine(need, shop)));
}

const kindOf = (ply: number): string => (ply === BODY_PLY ? 'body cord' : 'accent cord');

function cordLine(
  { color, ply, feet }: { color: string | undefined; ply: number; feet: number },
  shop: Shop,
): PartBill {
  const cord = color === undefined ? dearest(ply, shop) : cordOf(color, ply, shop);
  const what = `${[color, kindOf(ply)].join(' ').trim()}, ${String(ply)}-ply`;
  const taken =
    color === undefined && cord !== undefined
      ? [`No color chosen for the ${kindOf(ply)}: priced at our costliest, ${cord.color}.`]
      : [];
  const { price } = cord ?? {};
  const line = { part: 'materials', what, count: feet } as const;
  if (price !== undefined)
    return { lines: [{ ...line, unit: unitOf(price), amount: cordAmount(price, feet) }], taken };
  return { lines: [{ ...line, amount: undefined }], missing: [cordMissing(color, ply, { cord, shop })] };
}

function cordMissing(
  color: string | undefined,
  ply: number,
  { cord, shop }: { cord: Cord | undefined; shop: Shop },
): Missing {
  const named = `${String(ply)}-ply ${color ?? ''}`.trim();
  if (cord !== undefined || color === undefined)
    return {
      what: `a price for ${named} cord`,
      where: 'cord, as price-a-foot or as price-a-pound with feet-a-pound',
    };
  const known = shop.cords.filter((each) => each.ply === ply).map((each) => each.color);
  const near = nearestWord(color, known);
  return {
    what: `${named} cord, which is not in the shop file${near === undefined ? '' : ` (did you mean ${near}?)`}`,
    where: 'cord',
  };
}

/** The costliest, so a color chosen later never raises the quote. */
function dearest(ply: number, { cords }: Shop): Cord | undefined {
  const priced = cords.flatMap((cord) =>
    cord.ply === ply && cord.price !== undefined ? [{ cord, cost: cordAmount(cord.price, 1000) }] : [],
  );
  return priced.sort((a, b) => b.cost - a.cost)[0]?.cord;
}

function cordAmount(price: CordPrice, feet: number): Minor {
  if (price.by === 'foot') return amountOf(price.amount, wholeRate(feet));
  return amountOf(price.amount, dividedBy(wholeRate(feet), rateOf(price.feetAPound)));
}

const unitOf = (price: CordPrice): Unit =>
  price.by === 'foot'
    ? { per: 'foot', amount: price.amount }
    : {
        per: 'pound',
        amount: price.amount,
        feetAPound: price.feetAPound.over / price.feetAPound.under,
      };
