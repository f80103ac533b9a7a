/** Reads a shop file into a checked shop, or located problems. */
import { defaultModel } from '../numbers/numbers.ts';
import { check, checker, inOrder } from './check.ts';
import { load } from '../yaml/load.ts';
import { stockOf } from './shop-stock.ts';
import { acrossShop } from './shop-plausible.ts';
import { modelKeys, shopSchema, type WrittenShop } from './shop-schema.ts';
import { tradeOf } from './trade-of.ts';
import { otherKind } from './other-kind.ts';
import type { Problem } from '../yaml/problem.ts';
import type { Shop } from './types.ts';

export type ShopRead = { ok: true; shop: Shop } | { ok: false; problems: Problem[] };

const shops = checker(shopSchema, {
  'cord.feet-on-hand': 'feet come from the put-ups: write put-ups: [{ feet: 300, count: 2 }]',
  'cord.price': 'write price-a-foot, or price-a-pound with feet-a-pound',
});

/** Exactly one document. Never throws. */
export function readShop(text: string, file: string): ShopRead {
  const [loaded, second] = load(text, file, 2);
  if (loaded === undefined) {
    const expected = 'a shop: the file is empty';
    return { ok: false, problems: [{ file, line: 1, column: 1, path: '', expected }] };
  }
  if (second !== undefined) {
    const fault = { path: '', found: 'a second document', expected: 'one shop in a file' };
    return { ok: false, problems: [second.locate(fault, [])] };
  }
  const other = otherKind(loaded, 'shop');
  if (other !== undefined) return { ok: false, problems: [other] };
  const { value, problems } = check(loaded, shops);
  const all = [...problems, ...acrossShop(loaded)];
  if (value !== undefined && all.length === 0) return { ok: true, shop: toShop(value) };
  return { ok: false, problems: inOrder(all) };
}

/** Its numbers replace defaults. */
function toShop(written: WrittenShop): Shop {
  const overrides = written.model ?? {};
  const overridden = modelKeys.filter((key) => overrides[key] !== undefined);
  const own = Object.fromEntries(overridden.map((key) => [key, overrides[key]]));
  return {
    name: written.shop,
    strands: written.strands,
    lengths: written.lengths,
    ...stockOf(written),
    ...tradeOf(written),
    model: { ...defaultModel, ...own },
    overridden,
    ...(written.learned === undefined ? {} : { learned: written.learned }),
  };
}
