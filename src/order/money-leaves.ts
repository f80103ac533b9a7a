/** Prices and rates: decimals that stay exact until printed. */
import { currencyCodes, currencyOf, type Currency } from '../units/currency.ts';
import { readAmount } from '../units/money.ts';
import { toNumber, type Exact } from '../units/number.ts';
import { nearestWord } from '../units/nearest.ts';
import { decimalOf, didYouMean, leaf, reasonHint, type Leaf, type NumberRange } from './leaves.ts';

/** trade-plausible.ts checks decimals, once the currency is known. */
export function amount(about: string): Leaf<string> {
  const json = { type: ['number', 'string'], pattern: String.raw`^\d{1,7}(\.\d{1,4})?$`, minimum: 0 };
  const expected = `${about}, an amount such as 12.50`;
  return leaf({ expected, json: { ...json, description: about } }, (text) => {
    const read = readAmount(text);
    return read.ok ? { ok: true, value: text } : { ok: false, hint: reasonHint(read) };
  });
}

/** Stays a fraction. */
export function exactNumber({ min, max, about }: NumberRange): Leaf<Exact> {
  const expected = `${about}, a number from ${String(min)} to ${String(max)}`;
  const json = { type: 'number', minimum: min, maximum: max, description: about };
  return leaf({ expected, json }, (text) => {
    const read = decimalOf(text);
    const value = read?.ok === true ? toNumber(read.exact) : NaN;
    if (read?.ok === true && value >= min && value <= max) return { ok: true, value: read.exact };
    return { ok: false, hint: read?.ok === false ? reasonHint(read) : exactHint(text) };
  });
}

function exactHint(text: string): string | undefined {
  const comma = /^\d+,\d+$/.test(text) ? text.replace(',', '.') : undefined;
  return didYouMean(comma ?? /^([\d.]+) ?(?:%|percent|min|h|hours|ft)$/.exec(text)?.[1]);
}

/** Such as 6.5. */
export const percent = (about: string, max = 100): Leaf<Exact> =>
  exactNumber({ about: `${about} in percent`, min: 0, max });

/** ISO 4217. */
export function currencyCode(): Leaf<Currency> {
  const about = 'currency of all prices';
  const json = { type: 'string', enum: [...currencyCodes], description: about };
  return leaf({ expected: `${about}, an ISO 4217 code such as USD or EUR`, json }, (text) => {
    const value = currencyOf(text);
    if (value !== undefined) return { ok: true, value };
    const signs: Readonly<Record<string, string>> = { $: 'USD', '€': 'EUR', '£': 'GBP', '¥': 'JPY' };
    return {
      ok: false,
      hint: didYouMean(signs[text] ?? nearestWord(text, currencyCodes)),
    };
  });
}
