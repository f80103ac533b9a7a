/** A bill line in words: count, unit price, amount. */
import type { Line, Unit } from '../work/line.ts';
import type { Currency } from '../units/currency.ts';
import { amountText, moneyText } from '../units/money.ts';
import { decimals } from '../units/print.ts';

/** "61 ft", "1.62 h"; empty for a percent. */
export function countText({ count, unit, part }: Line): string {
  if (count === undefined) return '';
  if (part === 'labor') return `${decimals(count, 2)} h`;
  const number = String(Number(decimals(count, 2)));
  return unit?.per === 'each' || unit === undefined ? number : `${number} ft`;
}

/** "38.00 a pound of 190 ft", "6.25% of 12.00". */
export function unitText(unit: Unit | undefined, currency: Currency): string {
  if (unit === undefined) return '';
  switch (unit.per) {
    case 'percent':
      return `${plain(unit.percent)}% of ${amountText(unit.on, currency)}`;
    case 'pound':
      return `${amountText(unit.amount, currency)} a pound of ${plain(unit.feetAPound)} ft`;
    case 'hour':
      return `${amountText(unit.amount, currency)} an hour`;
    case 'foot':
      return `${amountText(unit.amount, currency)} a foot`;
    case 'each':
      return `${amountText(unit.amount, currency)} each`;
  }
}

const plain = (value: number): string => String(Number(decimals(value, 4)));

/** "not known" when undefined. */
export const knownAmount = (amount: number | undefined, currency: Currency): string =>
  amount === undefined ? 'not known' : amountText(amount, currency);

/** With currency sign or code. */
export const knownMoney = (amount: number | undefined, currency: Currency): string =>
  amount === undefined ? 'not known' : moneyText(amount, currency);
