/** An invoice: what we tied, the lines of the quote, what was paid and what is due. */
import { paragraph, withoutEmpty, type Sheet } from '../pages/sheet.ts';
import { dayText } from '../units/days.ts';
import { moneyText, type Minor } from '../units/money.ts';
import { capital } from '../units/text.ts';
import type { Invoice, Quote } from '../work/quote.ts';
import { cinchesText, colorText, forCustomer, priceBlocks, tiedText, type QuoteLook } from './quote-sheet.ts';

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
    about: [`${dayText(day)}. For order ${order.order}${taken}.`, paidText(quote)],
    notice: undefined,
    blocks: withoutEmpty([
      paragraph(`${capital(cinchesText(order))}: ${tiedText(quote, units)}.`),
      paragraph(colorText(order)),
      ...priceBlocks(quote, itemized, paidRows(invoice)),
    ]),
    rules: quote.houseRules,
    cautions: quote.cautions,
  };
}

/** "Total $93.25. Paid $46.63. Due $46.62." */
export function paidText({ price, invoice }: Pick<Quote, 'price' | 'invoice'>): string {
  const { total, currency } = price;
  const { paid, due } = invoice ?? {};
  if (total === undefined || paid === undefined || due === undefined || currency === undefined)
    return 'Not added up yet: something has no price.';
  const money = (amount: Minor): string => moneyText(amount, currency);
  const rest = due < 0 ? `Refund due ${money(-due)}.` : `Due ${money(due)}.`;
  return `Total ${money(total)}. Paid ${money(paid)}. ${rest}`;
}

function paidRows({ paid, due }: Invoice): [string, Minor][] {
  if (paid === undefined || due === undefined) return [];
  return [['Paid', paid], due < 0 ? ['Refund due', -due] : ['Due', due]];
}
