/** What is the same of everything a shop ties in every order: a backlog asks the same shop again and again. */
import type { Model } from '../sources/numbers.ts';
import type { TiedList } from '../stock/tied.ts';
import type { Criterion } from './criteria.ts';

/** Keys of a criterion that follow from the shop alone. */
export interface ShopKeys {
  /** The different keys, smallest first. */
  readonly keys: readonly number[];
  /** Of each make the place of its key among them. */
  readonly places: Float64Array;
}

interface OfShop {
  readonly model: Model;
  /** What the rules that look at nothing else say of each make. */
  tallies: Float64Array | undefined;
  readonly keys: Map<Criterion, ShopKeys>;
}

const shops = new WeakMap<TiedList, OfShop>();

/** The memory of a shop, empty at first; forgotten where the model is another one. */
export function ofShop(list: TiedList, model: Model): OfShop {
  const known = shops.get(list);
  if (known?.model === model) return known;
  const fresh: OfShop = { model, tallies: undefined, keys: new Map<Criterion, ShopKeys>() };
  shops.set(list, fresh);
  return fresh;
}
