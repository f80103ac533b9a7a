/** Shared options and their readers. */
import { Option } from 'commander';
import { parseDay } from '../units/days.ts';
import { nearestWord } from '../units/nearest.ts';
import { CliFault, didYouMean, printable } from './fault.ts';
import { formats, type Format } from './print.ts';

const paperSizes = ['letter', 'a4'] as const;
const unitNames = ['in', 'cm'] as const;

/** `words` serve completion. */
export interface WordReader<W extends string = string> {
  (text: string): W;
  readonly words: readonly W[];
}

/** Takes one of a few words. */
export function word<const W extends string>(option: string, words: readonly W[]): WordReader<W> {
  const read = (text: string): W => {
    const found = words.find((entry) => entry === text);
    if (found !== undefined) return found;
    const takes = `${words.slice(0, -1).join(', ')} or ${words.at(-1) ?? ''}`;
    const hint = didYouMean(nearestWord(text, words));
    throw new CliFault(`${option} takes ${takes}, not "${printable(text)}"`, { hint });
  };
  return Object.assign(read, { words });
}

/** A whole number within limits. */
export function whole(option: string, min: number, max: number): (text: string) => number {
  return (text) => {
    const value = /^\d{1,9}$/.test(text) ? Number(text) : NaN;
    if (value >= min && value <= max) return value;
    const takes = `${option} takes a whole number from ${String(min)} to ${String(max)}`;
    throw new CliFault(`${takes}, not "${printable(text)}"`);
  };
}

/** --format, all but some. */
export function formatOption(...without: readonly Format[]): Option {
  return formatsOption(formats.filter((format) => !without.includes(format)));
}

/** --format, only these. */
export const formatsOption = (words: readonly Format[]): Option =>
  new Option(
    '--format <name>',
    `${words.map((format) => (format === 'text' ? 'text (the message)' : format)).join(', ')} (default table)`,
  )
    .default('table')
    .argParser(word('--format', words));

/** --paper, for PDF. */
export const paperOption = (): Option =>
  new Option('--paper <size>', `PDF pages: ${paperSizes.join(' or ')} (default letter)`).argParser(
    word('--paper', paperSizes),
  );

/** A calendar day. */
export function day(option: string): (text: string) => string {
  return (text) => {
    const read = parseDay(text);
    if (read.ok) return read.day;
    const hint = didYouMean(read.suggestion) ?? `${read.why.charAt(0).toUpperCase()}${read.why.slice(1)}.`;
    throw new CliFault(`${option} takes a day such as 2026-12-18, not "${printable(text)}"`, { hint });
  };
}

/** For printing only. */
export const unitsOption = (text = 'in or cm (default in; JSON and CSV stay in inches)'): Option =>
  new Option('--units <name>', text).default('in', '').argParser(word('--units', unitNames));

/** --date, today by default. */
export const dateOption = (): Option =>
  new Option('--date <day>', 'day on it, such as 2026-12-18 (default today)').argParser(day('--date'));

/** --shop, the built-in one by default. */
export const shopOption = (): Option =>
  new Option('--shop <file>', 'your buckles, cord and numbers (default: built-in shop)');

/** --out. */
export const outOption = (): Option =>
  new Option('--out <file>', 'write to a file; its ending picks the format');
