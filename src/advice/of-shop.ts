/** What is the same of everything a shop ties in every order: a backlog asks the same shop again and again. */
import { BUCKLE, STRANDS, STYLE } from '../fit/axes.ts';
import type { Model } from '../sources/numbers.ts';
import { styleIds } from '../stock/styles.ts';
import type { TiedList } from '../stock/tied.ts';
import type { Criterion } from './criteria.ts';
import type { Kinds } from './parts.ts';

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
  /** Which makes are alike, by the axes on which they are. */
  readonly alike: Map<number, Kinds>;
}

const shops = new WeakMap<TiedList, OfShop>();

/** The memory of a shop, empty at first; forgotten where the model is another one. */
export function ofShop(list: TiedList, model: Model): OfShop {
  const known = shops.get(list);
  if (known?.model === model) return known;
  const fresh: OfShop = { model, tallies: undefined, keys: new Map(), alike: new Map() };
  shops.set(list, fresh);
  return fresh;
}

/** Which makes are alike on these axes, of style, strands and buckle. */
export function alikeOn(axes: number, { alike }: Pick<OfShop, 'alike'>, { makes, strands }: TiedList): Kinds {
  let found = alike.get(axes);
  if (found === undefined) {
    const places = new Map<number, number>();
    const firsts: number[] = [];
    const kinds = Int32Array.from(makes, ({ styleNo, strandsNo, buckleNo }, make) => {
      const style = (axes & STYLE) === 0 ? 0 : styleNo;
      const count = (axes & STRANDS) === 0 ? 0 : strandsNo;
      const buckle = (axes & BUCKLE) === 0 ? 0 : buckleNo;
      const choice = (buckle * strands.length + count) * styleIds.length + style;
      let kind = places.get(choice);
      if (kind === undefined) places.set(choice, (kind = firsts.push(make) - 1));
      return kind;
    });
    alike.set(axes, (found = { firsts, kinds }));
  }
  return found;
}
