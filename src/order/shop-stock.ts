/** Buckles and cord of a shop file under the program's names. */
import { minorOf, type Minor } from '../units/money.ts';
import type { WrittenShop } from './shop-schema.ts';
import type { CordPrice, PutUps } from './trade-types.ts';
import type { Buckle, Cord, Shop } from './types.ts';

/** Buckles and cords. */
export const stockOf = (written: WrittenShop): Pick<Shop, 'buckles' | 'cords'> => ({
  buckles: written.buckles.map((buckle) => buckleOf(buckle, written)),
  cords: written.cord.map((cord) => cordOf(cord, written)),
});

/** In minor units; undefined when not written. */
export const priceOf = (
  text: string | undefined,
  { currency }: Pick<WrittenShop, 'currency'>,
): Minor | undefined => (text === undefined || currency === undefined ? undefined : minorOf(text, currency));

/** Drops missing values, since shops are compared and printed whole. */
export const kept = <K extends string, V>(key: K, value: V | undefined): Partial<Record<K, V>> =>
  value === undefined ? {} : ({ [key]: value } as Record<K, V>);

function buckleOf(buckle: WrittenShop['buckles'][number], written: WrittenShop): Buckle {
  return {
    id: buckle.id,
    barWidth: buckle.bar,
    frameWidth: buckle['frame-width'],
    frameHeight: buckle['frame-height'],
    ...kept('single', buckle.single),
    ...kept('double', buckle.double),
    special: buckle.special ?? false,
    ...kept('metal', buckle.metal),
    onHand: buckle['on-hand'],
    orderable: buckle.orderable,
    ...kept('leadDays', buckle['lead-days']),
    ...kept('price', priceOf(buckle.price, written)),
  };
}

function cordOf(cord: WrittenShop['cord'][number], written: WrittenShop): Cord {
  const putUps = cord['put-ups'].map(({ lot, feet, count, opened = [] }): PutUps => ({
    ...kept('lot', lot),
    feet,
    count,
    opened,
  }));
  return {
    color: cord.color,
    ply: cord.ply,
    putUps,
    feetOnHand: putUps.reduce((sum, each) => sum + feetOf(each), 0),
    orderable: cord.orderable,
    ...kept('leadDays', cord['lead-days']),
    ...kept('price', cordPriceOf(cord, written)),
  };
}

const feetOf = ({ feet, count, opened }: PutUps): number =>
  feet * count + opened.reduce((sum, left) => sum + left, 0);

function cordPriceOf(cord: WrittenShop['cord'][number], written: WrittenShop): CordPrice | undefined {
  const foot = priceOf(cord['price-a-foot'], written);
  const pound = priceOf(cord['price-a-pound'], written);
  const feetAPound = cord['feet-a-pound'];
  if (foot !== undefined) return { by: 'foot', amount: foot };
  if (pound === undefined || feetAPound === undefined) return undefined;
  return { by: 'pound', amount: pound, feetAPound };
}
