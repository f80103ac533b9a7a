/** An invoice: what we tied, its price, what was paid and is due. */
import { paragraph, withoutEmpty, type Sheet } from '../pages/sheet.ts';
import { dayText } from '../units/days.ts';
import { capital } from '../units/text.ts';
import type { Invoice, Quote } from '../work/quote.ts';
import { priceBlocks, totalText } from './price-blocks.ts';
import { cinchesText, colorText, forCustomer, tiedText, type QuoteLook } from './quote-sheet.ts';

/** The paper. */
export function invoiceSheet(
  quote: Quote & { readonly invoice: Invoice },
  { units, itemized }: QuoteLook,
): Sheet {
  const { order, shop, day, invoice } = quote;
  const taken = order.taken === undefined ? '' : `, taken ${dayText(order.taken)}`;
  return {
    title: `Invoice ${invoice.number}${forCustomer(order)}`,
    shop: shop.name,
    about: [`${dayText(day)}. For order ${order.order}${taken}.`, totalText(quote)],
    notice: undefined,
    blocks: withoutEmpty([
      paragraph(`${capital(cinchesText(order))}: ${tiedText(quote, units)}.`),
      paragraph(colorText(order)),
      ...priceBlocks(quote, itemized),
    ]),
    rules: quote.houseRules,
    cautions: quote.cautions,
  };
}
