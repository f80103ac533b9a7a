/** Words and quantities in the reader's units, wrapped to the screen. */
import type { Phrase, Quantity } from './phrase.ts';
import { cmPerInch, decimals, formatLength, onTape } from './print.ts';
import { visible } from './clean.ts';
import { columns, startOf } from './width.ts';

export type Units = 'in' | 'cm';

const kpaPerPsi = 6.894757;

/** Scripts and `--why` want decimals. */
export type Reading = 'tape' | 'decimals';

/** Text from files is made visible. */
export function phraseText({ words, values }: Phrase, units: Units, reading: Reading = 'tape'): string {
  return words.reduce((text, word, i) => {
    const value = values[i - 1];
    return text + (value === undefined ? '' : valueText(value, units, reading)) + word;
  });
}

const valueText = (value: Quantity | string, units: Units, reading: Reading): string =>
  typeof value === 'string' ? visible(value) : quantityText(value, units, reading);

const rounding = { 'fine-length': 'nearest', gap: 'down', overlap: 'up' } as const;

/** One quantity with its unit. */
export function quantityText({ value, as }: Quantity, units: Units, reading: Reading = 'tape'): string {
  switch (as) {
    case 'length':
      return formatLength(value, units, 'finished');
    case 'fine-length':
    case 'gap':
    case 'overlap':
      return reading === 'tape' ? onTape(value, units, rounding[as]) : formatLength(value, units, 'computed');
    case 'chance':
      return chanceText(value);
    case 'count':
      return decimals(value, 0);
    case 'pressure':
      return units === 'in' ? `${decimals(value, 2)} psi` : `${decimals(value * kpaPerPsi, 1)} kPa`;
    case 'area':
      return units === 'in'
        ? `${decimals(value, 0)} sq in`
        : `${decimals(value * cmPerInch * cmPerInch, 0)} sq cm`;
    case 'ratio':
      return decimals(value, 2);
  }
}

/** Never 0% or 100%. */
export function chanceText(chance: number): string {
  const percent = Math.round(100 * chance);
  if (percent >= 100) return '>99%';
  return percent <= 0 ? '<1%' : `${String(percent)}%`;
}

/** One decimal, for rough lengths. */
export const roughLength = (inches: number, units: Units): string =>
  `${decimals(units === 'in' ? inches : inches * cmPerInch, 1)} ${units}`;

/** To 0.05 in or 0.1 cm; small spreads keep their digits. */
export function spreadNumber(inches: number, units: Units): string {
  const cm = inches * cmPerInch;
  if (units === 'cm') return decimals(cm, cm < SMALL ? 2 : 1);
  return inches < SMALL ? smallSpread(inches) : trimmed(Math.round(inches * 20) / 20);
}

/** The same for a ratio. */
export const ratioSpread = (sd: number): string => (sd < SMALL ? smallSpread(sd) : trimmed(sd));

/** Coarse rounding would double or lose smaller spreads. */
const SMALL = 0.1;

/** Three decimals where two would be off by a tenth. */
const smallSpread = (value: number): string => String(Number(decimals(value, value < 0.05 ? 3 : 2)));

/** No trailing zeros. */
const trimmed = (value: number): string => String(Number(decimals(value, 2)));

/** For the list of inputs. */
export function inputText({ value, unit }: { value: number; unit: 'in' | 'ratio' }, units: Units): string {
  if (unit === 'ratio') return decimals(value, 2);
  if (units === 'in') return `${trimmed(value)} in`;
  // One decimal is too coarse for a strand.
  return Math.abs(value) < 0.5 ? `${trimmed(value * cmPerInch)} cm` : formatLength(value, 'cm');
}

/** How we know an input. */
export const basisText = ({ kind, basis }: { kind: string; basis: string }): string =>
  basis === kind || kind === 'photo' || basis.startsWith('worked out') ? basis : `${kind}: ${basis}`;

/** First letter in upper case. */
export const capital = (text: string): string => text.charAt(0).toUpperCase() + text.slice(1);

/** First letter in lower case. */
export const lower = (text: string): string => text.charAt(0).toLowerCase() + text.slice(1);

const glued =
  /(?<=\d) (?=(?:in|cm|ft|psi|kPa|%|sq (?:in|cm)|strands?|\d\/\d)(?![\w/]))|(?<=\d sq) (?=in|cm)/g;
const GLUE = '\u00a0';

/** Keeps a number and its unit on one line. */
export const glue = (text: string): string => text.replace(glued, GLUE);

/** Undoes `glue`. */
export const unglue = (text: string): string => text.replaceAll(GLUE, ' ');

/** In columns. */
export interface Indent {
  readonly first: number;
  readonly rest: number;
}

/**
 * Lines of at most `width` columns, indent included; longer words are cut. All page text is made visible
 * here.
 */
export function wrap(text: string, width: number, indent: number | Indent = 0): string[] {
  const { first, rest } = typeof indent === 'number' ? { first: indent, rest: indent } : indent;
  const lines: string[] = [];
  let line = '';
  const before = (): number => (lines.length === 0 ? first : rest);
  const room = (): number => Math.max(8, width - before());
  const end = (done: string): void => {
    lines.push(' '.repeat(before()) + unglue(done));
  };
  for (const word of glue(visible(text).trim()).split(/ +/)) {
    const joined = line === '' ? word : `${line} ${word}`;
    if (columns(joined) <= room()) {
      line = joined;
      continue;
    }
    if (line !== '') end(line);
    line = word;
    while (columns(line) > room()) {
      const start = startOf(line, room());
      end(start);
      line = line.slice(start.length);
    }
  }
  if (line !== '') end(line);
  return lines;
}
