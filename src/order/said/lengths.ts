/** Spoken lengths: "15.2 hh", "73 girth", "room 4 in", "ring to ring 44 in". */
import { parseLength, unitOf, type LengthUnit } from '../../units/length.ts';
import { numberPattern } from '../../units/number.ts';
import { oneOfThese } from '../leaves.ts';
import { allKeys, type PlacedKey } from '../key.ts';
import { horseKeys } from '../keys/horse.ts';
import { within, withOnlyUnit, type LengthRange } from '../measure.ts';
import { orderKeys } from '../order-schema.ts';
import type { Fault } from '../../yaml/problem.ts';
import type { Reading } from './words.ts';

export interface LengthKey extends LengthRange {
  readonly path: readonly string[];
  /** Usual one first. */
  readonly labels: readonly string[];
  readonly of?: string;
}

const isLengthKey = (key: PlacedKey): key is PlacedKey & LengthKey =>
  key.min !== undefined && key.labels !== undefined;

export const lengthKeys: readonly LengthKey[] = allKeys(orderKeys).filter(isLengthKey);

const patterns = lengthKeys.map((key) => {
  const labels = key.labels.map((label) => label.replaceAll(' ', '[ -]')).join('|');
  const of = key.of === undefined ? '' : `(?:${key.of} )?`;
  return {
    key,
    before: new RegExp(`^${of}(?:${labels})(?: of| is)? (.+)$`),
    after: new RegExp(`^${of}(.+?) (?:${labels})$`),
  };
});

const bareNumber = /^-?(?:\d*\.?\d+|\d+,\d+|\d+[ -]\d+ ?\/ ?\d+)$/;
const oneUnit = new RegExp(String.raw`^-?(?:${numberPattern}|\d+,\d+) ?([a-z]+|["'])$`);
const feetAndInches = new RegExp(`^\\d+ ?(?:ft|foot|feet|') ?${numberPattern} ?(?:in|inch|inches|")$`);

/** Even beside a wrong number. */
export const unitIn = (phrase: string): LengthUnit | undefined =>
  feetAndInches.test(phrase) ? 'ft' : unitOf(oneUnit.exec(phrase)?.[1] ?? '');

const isLength = (phrase: string): boolean => unitIn(phrase) !== undefined;

/** A length and its key. */
export function readLength(phrase: string): Reading | undefined {
  // Alone, such a number is a height.
  const height = handsOf(/^(?:9|1\d|20)\.[0-3]$/.test(phrase) ? `${phrase} hh` : phrase);
  if (height !== undefined) return { part: { path: ['horse', 'height'], text: height } };
  for (const { key, before, after } of patterns) {
    const said = before.exec(phrase)?.[1] ?? after.exec(phrase)?.[1];
    const text = said === undefined ? undefined : lengthText(said, key);
    if (said !== undefined && /^\d+ \d+\/\d+$/.test(said))
      return {
        fault: { path: key.path.join('.'), expected: 'a unit after the fraction, or a comma before it' },
      };
    if (text !== undefined) return { part: { path: key.path, text } };
  }
  return undefined;
}

/** A bare number gets a unit if only one is possible. */
function lengthText(said: string, range: LengthRange): string | undefined {
  const hands = handsOf(said);
  if (hands !== undefined) return range.hands === true ? hands : undefined;
  if (isLength(said)) return said;
  return bareNumber.test(said) ? (withOnlyUnit(said, range) ?? said) : undefined;
}

/** "15.2 hh", "15 hands 2", "15-2": heights only. */
function handsOf(phrase: string): string | undefined {
  const counted = /^(\d{1,2}) ?(?:hh|h|hands?) ([0-3])(?: ?(?:in|inch|inches))?$/.exec(phrase);
  // From nine hands up: 7-8 may be 7/8.
  const dashed = /^(9|1\d|20)-([0-3])(?: ?(?:hh|h|hands?))?$/.exec(phrase);
  const found = counted ?? dashed;
  if (found !== null) return `${String(found[1])}.${String(found[2])} hh`;
  return unitIn(phrase) === 'hh' ? phrase : undefined;
}

/** A number that does not say what it measures. */
export function numberFault(phrase: string): Fault | undefined {
  const [, over = '', under = ''] = /^([1-9])-(\d\d?)$/.exec(phrase) ?? [];
  if (over !== '') return { path: '', expected: unplaced, hint: oneOfThese([`${over}/${under}`]) };
  if (!bareNumber.test(phrase) && !isLength(phrase)) return undefined;
  if (/\d,\d/.test(phrase)) return { path: '', expected: 'a point in a number, or a space after the comma' };
  return { path: '', expected: unplaced, hint: oneOfThese(placed(phrase).slice(0, 3)) };
}

const unplaced = 'what the number measures';

/** Likeliest first. */
function placed(phrase: string): string[] {
  const count = Number(phrase);
  if (count % 2 === 1 && count >= 5 && count <= 45) return [`wants ${phrase}`, `now ${phrase}`];
  const fits = (text: string, range: LengthRange): boolean => {
    const read = parseLength(text);
    return read.ok && within(read.inches, range);
  };
  if (fits(`${phrase} hh`, horseKeys.height)) return [`${phrase} hh`];
  const text = isLength(phrase) ? phrase : `${phrase} in`;
  return lengthKeys.flatMap((key) => (fits(text, key) ? [`${key.labels[0] ?? ''} ${text}`] : []));
}

/** A label without its length. */
export function labelFault(phrase: string): Fault | undefined {
  const key = lengthKeys.find(({ labels }) => labels.includes(phrase));
  if (key === undefined) return undefined;
  return { path: '', expected: `${phrase} with its length, such as ${phrase} ${key.example}` };
}
