/** The business half of a shop file under the program's names. */
import type { Exact } from '../units/number.ts';
import { kept, priceOf } from './shop-stock.ts';
import type { WrittenShop } from './shop-schema.ts';
import type { Bench, Labor, ShopOption, Taxed, Trade } from './trade-types.ts';

const one: Exact = { over: 1, under: 1 };
const everything: readonly Taxed[] = ['materials', 'labor', 'options', 'rush'];

/** Missing lists become empty where that means the same. */
export function tradeOf(written: WrittenShop): Trade {
  const { rush, taxes, labor } = written;
  return {
    ...kept('currency', written.currency),
    dees: (written.dees ?? []).map(({ id, width, metal, price, ...dee }) => ({
      id,
      width,
      ...kept('metal', metal),
      onHand: dee['on-hand'],
      orderable: dee.orderable,
      ...kept('leadDays', dee['lead-days']),
      ...kept('price', priceOf(price, written)),
    })),
    ...kept('labor', labor === undefined ? undefined : laborOf(labor, written)),
    ...kept('consumables', written.consumables),
    ...kept('returns', written.return),
    options: (written.options ?? []).map((option) => optionOf(option, written)),
    ...kept('deposit', written.deposit),
    ...kept('rush', rush && { percent: rush.percent, withinDays: rush['within-days'] }),
    ...kept(
      'taxes',
      taxes?.map(({ name, percent, on }) => ({ name, percent, on: taxedOf(on) })),
    ),
    ...kept('quoteDays', written['quote-days']),
    benches: (written.benches ?? []).map(({ name, hours, days }): Bench => ({ name, hours, days })),
    holidays: [...(written.holidays ?? [])].sort(),
    houseRules: written['house-rules'] ?? [],
  };
}

function laborOf(labor: NonNullable<WrittenShop['labor']>, written: WrittenShop): Labor {
  const { 'by-style': style = {}, 'by-layers': layers = {} } = labor;
  return {
    ...kept('rate', priceOf(labor.rate, written)),
    setUpMinutes: labor['set-up-minutes'],
    minutesAStrand: labor['minutes-a-strand'],
    minutesAnInchOfBar: labor['minutes-an-inch-of-bar'],
    byStyle: {
      straight: style.straight ?? one,
      'high-flare': style['high-flare'] ?? one,
      'low-flare': style['low-flare'] ?? one,
    },
    byLayers: { single: layers.single ?? one, double: layers.double ?? one },
  };
}

type WrittenOption = NonNullable<WrittenShop['options']>[number];

function optionOf({ name, price, dee, dees }: WrittenOption, written: WrittenShop): ShopOption {
  return {
    name,
    ...kept('price', priceOf(price, written)),
    ...kept('dees', dee === undefined || dees === undefined ? undefined : { id: dee, count: dees }),
  };
}

function taxedOf(on: readonly (Taxed | 'everything')[]): readonly Taxed[] {
  return everything.filter((part) => on.includes(part) || on.includes('everything'));
}
