/** How a counter writes: in its usual unit, sometimes with a remark. */
import type { Random } from '../../../src/math/random.ts';
import { formatHands } from '../../../src/units/hands.ts';
import { formatLength } from '../../../src/units/print.ts';
import { happens, pick } from '../draw.ts';
import { asides } from './words.ts';

export type Habit = 'inches' | 'centimeters' | 'mixed';

/** Writes one order. */
export interface Writer {
  readonly random: Random;
  readonly habit: Habit;
}

const cm = 2.54;

/** To quarters of an inch, half centimeters, sometimes millimeters or decimals. */
export function lengthText(inches: number, { random, habit }: Writer): string {
  const metric = habit === 'centimeters' || (habit === 'mixed' && happens(random, 0.5));
  if (metric)
    return happens(random, 0.15) ? `${Math.round(inches * cm * 10)} mm` : `${halves(inches * cm)} cm`;
  return happens(random, 0.12) ? `${String(Math.round(inches * 4) / 4)} in` : formatLength(inches);
}

const halves = (value: number): string => String(Math.round(value * 2) / 2);

/** In hands, where they are used. */
export function heightText(inches: number, writer: Writer): string {
  const { random, habit } = writer;
  if (habit === 'centimeters' || happens(random, 0.15)) return `${Math.round(inches * cm)} cm`;
  if (happens(random, 0.1)) return formatLength(Math.round(inches));
  return formatHands(inches);
}

/** Sometimes with a remark. */
export function line(key: string, value: string | undefined, { random }: Writer): string[] {
  if (value === undefined) return [];
  return [happens(random, 0.12) ? `${key}: ${value} # ${pick(random, asides)}` : `${key}: ${value}`];
}

export const block = (key: string, lines: readonly string[]): string[] =>
  lines.length === 0 ? [] : [`${key}:`, ...lines.map((text) => `  ${text}`)];

/** One a line, or in brackets, or alone. */
export function words(key: string, values: readonly string[], { random }: Writer): string[] {
  const [only] = values;
  if (only === undefined) return [];
  if (happens(random, 0.7)) return [`${key}:`, ...values.map((value) => `  - ${value}`)];
  return [values.length === 1 && happens(random, 0.5) ? `${key}: ${only}` : `${key}: [${values.join(', ')}]`];
}

export function folded(sentences: readonly string[], width: number): string[] {
  const lines: string[] = [];
  for (const word of sentences.join(' ').split(' ')) {
    const last = lines.at(-1);
    if (last === undefined || last.length + word.length + 1 > width) lines.push(word);
    else lines[lines.length - 1] = `${last} ${word}`;
  }
  return lines;
}
