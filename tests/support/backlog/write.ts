/** How a counter writes lengths and lines: in the unit of its habit, now and then with a word beside it. */
import type { Random } from '../../../src/math/random.ts';
import { formatHands } from '../../../src/units/hands.ts';
import { formatLength } from '../../../src/units/print.ts';
import { happens, pick } from './draw.ts';
import { asides } from './words.ts';

/** In what units an order is written. */
export type Habit = 'inches' | 'centimeters' | 'mixed';

/** A pen that writes one order. */
export interface Writer {
  readonly random: Random;
  readonly habit: Habit;
}

const cm = 2.54;

/** A length as the habit has it: quarters of an inch, half centimeters, now and then millimeters or decimals. */
export function lengthText(inches: number, { random, habit }: Writer): string {
  const metric = habit === 'centimeters' || (habit === 'mixed' && happens(random, 0.5));
  if (metric)
    return happens(random, 0.15) ? `${Math.round(inches * cm * 10)} mm` : `${halves(inches * cm)} cm`;
  return happens(random, 0.12) ? `${String(Math.round(inches * 4) / 4)} in` : formatLength(inches);
}

const halves = (value: number): string => String(Math.round(value * 2) / 2);

/** A height: hands, where they are in use. */
export function heightText(inches: number, writer: Writer): string {
  const { random, habit } = writer;
  if (habit === 'centimeters' || happens(random, 0.15)) return `${Math.round(inches * cm)} cm`;
  if (happens(random, 0.1)) return formatLength(Math.round(inches));
  return formatHands(inches);
}

/** A line of a key, now and then with a word beside it. */
export function line(key: string, value: string | undefined, { random }: Writer): string[] {
  if (value === undefined) return [];
  return [happens(random, 0.12) ? `${key}: ${value} # ${pick(random, asides)}` : `${key}: ${value}`];
}

/** A block: its key, and its lines set in. Nothing when there are none. */
export const block = (key: string, lines: readonly string[]): string[] =>
  lines.length === 0 ? [] : [`${key}:`, ...lines.map((text) => `  ${text}`)];

/** A list of words: one a line, or in brackets, or alone. */
export function words(key: string, values: readonly string[], { random }: Writer): string[] {
  const [only] = values;
  if (only === undefined) return [];
  if (happens(random, 0.7)) return [`${key}:`, ...values.map((value) => `  - ${value}`)];
  return [values.length === 1 && happens(random, 0.5) ? `${key}: ${only}` : `${key}: [${values.join(', ')}]`];
}

/** Sentences as lines of at most this many columns. */
export function folded(sentences: readonly string[], width: number): string[] {
  const lines: string[] = [];
  for (const word of sentences.join(' ').split(' ')) {
    const last = lines.at(-1);
    if (last === undefined || last.length + word.length + 1 > width) lines.push(word);
    else lines[lines.length - 1] = `${last} ${word}`;
  }
  return lines;
}
