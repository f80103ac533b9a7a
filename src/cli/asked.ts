/** Parts of a cinch on the command line. */
import type { Inches } from '../units/length.ts';
import type { Shop } from '../order/types.ts';
import { nearestWord } from '../units/nearest.ts';
import { CliFault, didYouMean, printable } from './fault.ts';

/** Errors: even, out of range, not a number. */
export function askedStrands(text: string): number {
  const value = /^[1-9]\d?$/.test(text) ? Number(text) : NaN;
  if (value % 2 === 1 && value >= 5 && value <= 45) return value;
  const hint =
    value % 2 === 0
      ? 'Counts are odd: with one continuous cord, only an odd count leaves a tail at each buckle.'
      : undefined;
  throw new CliFault(`--strands takes an odd whole number from 5 to 45, not "${printable(text)}"`, { hint });
}

/** Errors: no such buckle in the shop. */
export function buckleOf(name: string, { buckles }: Shop): string {
  const ids = buckles.map(({ id }) => id);
  if (ids.includes(name)) return name;
  const near = nearestWord(name, ids);
  const hint =
    near === undefined ? `It has: ${ids.map(printable).join(', ')}.` : didYouMean(`"${printable(near)}"`);
  throw new CliFault(`the shop file has no buckle called "${printable(name)}"`, { hint });
}

/** Inches. Errors: no unit, not a length, impossible for a cinch. */
export async function lengthOf(text: string): Promise<Inches> {
  const { parseLength } = await import('../units/length.ts');
  const { within } = await import('../order/measure.ts');
  const { cinchKeys } = await import('../order/keys/cinch.ts');
  const read = parseLength(text);
  const { min, max } = cinchKeys.length;
  if (read.ok && within(read.inches, cinchKeys.length)) return read.inches;
  const takes = `--length takes ${String(min)} in to ${String(max)} in, with the unit, such as "32 in"`;
  const hint = read.ok
    ? undefined
    : read.suggestion === undefined
      ? whyNot(read.why)
      : didYouMean(`"${read.suggestion}"`);
  throw new CliFault(`${takes}, not "${printable(text)}"`, { hint });
}

const whyNot = (why: string): string => `${why.charAt(0).toUpperCase()}${why.slice(1)}.`;
