/** Money in whole cents; rates as exact fractions. */
import type { Currency } from './currency.ts';
import type { Exact } from './number.ts';

/** 1250 is 12.50 in a currency with cents. */
export type Minor = number;

/** `under` is above 0. */
export interface Rate {
  readonly over: bigint;
  readonly under: bigint;
}

/** A written number as a fraction. */
export const rateOf = ({ over, under }: Exact): Rate => ({ over: BigInt(over), under: BigInt(under) });

/** @throws RangeError when not whole */
export const wholeRate = (value: number): Rate => ({ over: BigInt(value), under: 1n });

/** Product; 1 when there is none. */
export const times = (...rates: readonly Rate[]): Rate =>
  rates.reduce((a, b) => ({ over: a.over * b.over, under: a.under * b.under }), { over: 1n, under: 1n });

/** Sum; 0 when there is none. */
export const plus = (...rates: readonly Rate[]): Rate =>
  rates.reduce((a, b) => ({ over: a.over * b.under + b.over * a.under, under: a.under * b.under }), {
    over: 0n,
    under: 1n,
  });

/** @throws RangeError when b is 0 */
export function dividedBy(a: Rate, b: Rate): Rate {
  if (b.over === 0n) throw new RangeError('cannot divide by 0');
  const sign = b.over < 0n ? -1n : 1n;
  return { over: sign * a.over * b.under, under: sign * a.under * b.over };
}

/** Percent as a fraction. */
export const percentRate = (percent: Rate): Rate => ({ over: percent.over, under: percent.under * 100n });

/** For quantities; never for money. */
export const toDouble = ({ over, under }: Rate): number => Number(over) / Number(under);

/**
 * To the nearest whole, halves away from zero, as sales tax tables do [common practice].
 * @throws RangeError beyond what a double holds exactly
 */
export function rounded({ over, under }: Rate): Minor {
  const size = over < 0n ? -over : over;
  const whole = Number((2n * size + under) / (2n * under));
  if (!Number.isSafeInteger(whole)) throw new RangeError('the amount is too large');
  return over < 0n && whole !== 0 ? -whole : whole;
}

/** Rounded once, as printed. */
export const amountOf = (unit: Minor, ...rates: readonly Rate[]): Minor =>
  rounded(times(wholeRate(unit), ...rates));

/**
 * Exact sum.
 * @throws RangeError beyond what a double holds exactly
 */
export function sumOf(amounts: readonly Minor[]): Minor {
  const sum = amounts.reduce((total, amount) => total + BigInt(amount), 0n);
  return rounded({ over: sum, under: 1n });
}

export type AmountRead = { ok: true; decimals: number } | { ok: false; why: string; suggestion?: string };

/** More than shops need; exact in a double. */
const mostDigits = 7;
const mostDecimals = 4;

/** Errors: a sign, comma or currency, too many digits. */
export function readAmount(text: string): AmountRead {
  const [, whole = '', part = ''] = /^(\d+)(?:\.(\d+))?$/.exec(text) ?? [];
  if (whole !== '' && whole.length <= mostDigits && part.length <= mostDecimals) {
    return { ok: true, decimals: part.length };
  }
  if (whole !== '') return { ok: false, why: 'it has too many digits' };
  const comma = /^\d+,\d{1,2}$/.test(text) ? text.replace(',', '.') : undefined;
  if (comma !== undefined) return { ok: false, why: 'use a point for decimals', suggestion: comma };
  const bare = /^(?:\D{1,4} ?)?(\d+(?:\.\d+)?)(?: ?[^\d.,]{1,4})?$/.exec(text)?.[1];
  const why = 'write plain digits with a point; name the currency once, under currency';
  return bare === undefined || text.startsWith('-')
    ? { ok: false, why }
    : { ok: false, why, suggestion: bare };
}

/** Undefined with more decimals than the currency. */
export function minorOf(text: string, { exponent }: Currency): Minor | undefined {
  const [whole = '', part = ''] = text.split('.');
  return part.length > exponent ? undefined : Number(whole + part.padEnd(exponent, '0'));
}

/** "12.50"; "1500" in a currency without cents. */
export function amountText(amount: Minor, { exponent }: Currency): string {
  const digits = String(Math.abs(amount)).padStart(exponent + 1, '0');
  const whole = digits.slice(0, digits.length - exponent);
  const part = exponent === 0 ? '' : `.${digits.slice(-exponent)}`;
  return `${amount < 0 ? '-' : ''}${whole}${part}`;
}

/** "$12.50", "12.50 CHF". */
export const moneyText = (amount: Minor, currency: Currency): string =>
  currency.code === 'USD'
    ? `${amount < 0 ? '-' : ''}$${amountText(Math.abs(amount), currency)}`
    : `${amountText(amount, currency)} ${currency.code}`;
