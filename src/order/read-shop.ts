/** The door for a shop file: its text becomes a checked shop with a complete model, or located problems. */
import { defaultModel } from '../sources/numbers.ts';
import { check, checker, inOrder } from './check.ts';
import { load } from './load.ts';
import { acrossShop } from './shop-plausible.ts';
import { modelKeys, shopSchema, type WrittenShop } from './shop-schema.ts';
import type { Problem } from './problem.ts';
import type { Shop } from './types.ts';

export type ShopRead = { ok: true; shop: Shop } | { ok: false; problems: Problem[] };

const shops = checker(shopSchema);

/** Text of a shop file -> the shop, or all problems of the file. Exactly one document. Never throws. */
export function readShop(text: string, file: string): ShopRead {
  const [loaded, second] = load(text, file);
  if (loaded === undefined) {
    const expected = 'a shop: there is nothing in this file';
    return { ok: false, problems: [{ file, line: 1, column: 1, path: '', expected }] };
  }
  if (second !== undefined) {
    const expected = 'one shop in a file: a second document starts here';
    return { ok: false, problems: [second.locate({ path: '', expected }, [])] };
  }
  const { value, problems } = check(loaded, shops);
  const all = [...problems, ...acrossShop(loaded)];
  if (value !== undefined && all.length === 0) return { ok: true, shop: toShop(value) };
  return { ok: false, problems: inOrder(all) };
}

/** From keys as written to the names inside the program, the shop's numbers laid over the default ones. */
function toShop(written: WrittenShop): Shop {
  const overrides = written.model ?? {};
  const overridden = modelKeys.filter((key) => overrides[key] !== undefined);
  const own = Object.fromEntries(overridden.map((key) => [key, overrides[key]]));
  return {
    name: written.shop,
    strands: written.strands,
    lengths: written.lengths,
    buckles: written.buckles.map((buckle) => ({
      id: buckle.id,
      barWidth: buckle.bar,
      frameWidth: buckle['frame-width'],
      frameHeight: buckle['frame-height'],
      ...(buckle.single === undefined ? {} : { single: buckle.single }),
      ...(buckle.double === undefined ? {} : { double: buckle.double }),
      special: buckle.special ?? false,
      onHand: buckle['on-hand'],
      orderable: buckle.orderable,
    })),
    cords: written.cord.map((cord) => ({
      color: cord.color,
      ply: cord.ply,
      feetOnHand: cord['feet-on-hand'],
      orderable: cord.orderable,
    })),
    model: { ...defaultModel, ...own },
    overridden,
  };
}
