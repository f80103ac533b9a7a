/** Kinds of leaf: each reads text or says what it expected. */
import * as z from 'zod/mini';
import { nearestWord } from '../units/nearest.ts';
import { parseAge } from '../units/age.ts';
import { parseDay } from '../units/days.ts';
import { parseNumber, toNumber, type NumberRead } from '../units/number.ts';
import { sensed, withoutEnding, type Sense } from './near-in-sense.ts';

export type Json = Record<string, unknown>;
export type Reading<T> = { ok: true; value: T } | { ok: false; expected?: string; hint?: string | undefined };

/** For editors; zod sees only text. */
export const jsonOf = new WeakMap<object, Json>();

// Orders are read once: compiling a checker does not pay.
z.config({ jitless: true });

export interface LeafWords {
  expected: string;
  json: Json;
}

export type Leaf<T> = z.ZodMiniPipe<z.ZodMiniString, z.ZodMiniTransform<T, string>>;

/** Anything but text gets the same `expected`. */
export function leaf<T>({ expected, json }: LeafWords, read: (text: string) => Reading<T>): Leaf<T> {
  const schema = z.pipe(
    z.string(expected),
    z.transform((text: string, context): T => {
      const reading = read(text);
      if (reading.ok) return reading.value;
      const params = { hint: reading.hint };
      context.issues.push({ code: 'custom', input: text, message: reading.expected ?? expected, params });
      return z.NEVER;
    }),
  );
  jsonOf.set(schema, json);
  return schema;
}

/** Refuses other keys. `sample` shows a block where people write text. */
export function block<S extends z.core.$ZodLooseShape>(
  about: string,
  shape: S,
  sample?: string,
): z.ZodMiniObject<S, z.core.$strict> {
  const such = sample === undefined ? '' : `, such as ${sample}`;
  const schema = z.strictObject(shape, `${about}, as a block of keys${such}`);
  jsonOf.set(schema, { description: about });
  return schema;
}

/** For one near word. */
export function didYouMean(word: string | undefined): string | undefined {
  return word === undefined ? undefined : `did you mean "${word}"?`;
}

/** For several words. */
export function oneOfThese(words: readonly string[]): string | undefined {
  const quoted = words.map((word) => `"${word}"`);
  return quoted.length === 0 ? undefined : `did you mean ${quoted.join(' or ')}?`;
}

/** The reason, and what to write instead. */
export function reasonHint({ why, suggestion }: { why: string; suggestion?: string }): string {
  return suggestion === undefined ? why : `${why}; did you mean "${suggestion}"?`;
}

/** One line, or a longer note. */
export function freeText(about: string, limit = 200): Leaf<string> {
  const oneLine = limit <= 200;
  const expected = `${about}, as text of at most ${String(limit)} characters${oneLine ? ' on one line' : ''}`;
  const json = { type: ['string', 'number', 'boolean'], maxLength: limit, description: about };
  return leaf({ expected, json }, (text) => {
    const { length } = Array.from(text);
    if (length > limit) return { ok: false, hint: `it has ${String(length)} characters` };
    return oneLine && /[\n\r\u2028\u2029]/.test(text) ? { ok: false } : { ok: true, value: text };
  });
}

/** `sense` maps people's words to ours. */
export function oneOf<const W extends string>(
  about: string,
  words: readonly W[],
  sense: Sense<W> = {},
): Leaf<W> {
  const expected = `${about}, one of ${words.join(', ')}`;
  return leaf({ expected, json: { type: 'string', enum: [...words], description: about } }, (text) => {
    const word = words.find((candidate) => candidate === text);
    if (word !== undefined) return { ok: true, value: word };
    const near = nearestWord(text, words) ?? nearestWord(withoutEnding(text), words);
    return { ok: false, hint: oneOfThese(sensed(text, sense)) ?? didYouMean(near) };
  });
}

/** One entry needs no brackets; repeats count once. */
export function listOf<T>(about: string, entry: Leaf<T>) {
  const list = z.array(entry, `${about}, as a list or one entry`);
  const either = z.union([entry, list], `${about}, as a list or one entry`);
  jsonOf.set(list, { description: about });
  jsonOf.set(either, { description: about });
  return z.pipe(
    either,
    z.transform((value: T | T[]): readonly T[] => [...new Set(Array.isArray(value) ? value : [value])]),
  );
}

/** `more` is said where there is room. */
export function trueFalse(about: string, more = ''): Leaf<boolean> {
  const expected = `${about}, true or false`;
  const yes = new Set(['yes', 'y', 'on', 'true', '1']);
  const no = new Set(['no', 'n', 'off', 'false', '0']);
  return leaf({ expected, json: { type: 'boolean', description: about + more } }, (text) => {
    if (text === 'true' || text === 'false') return { ok: true, value: text === 'true' };
    const word = text.toLowerCase();
    return { ok: false, hint: didYouMean(yes.has(word) ? 'true' : no.has(word) ? 'false' : undefined) };
  });
}

export interface NumberRange {
  min: number;
  max: number;
  about: string;
}

/** In plain digits. */
export function wholeNumber({ min, max, about }: NumberRange): Leaf<number> {
  const expected = `${about}, a whole number from ${String(min)} to ${String(max)}`;
  const json = { type: 'integer', minimum: min, maximum: max, description: about };
  return leaf({ expected, json }, (text) => {
    const value = /^(?:0|[1-9]\d{0,6})$/.test(text) ? Number(text) : NaN;
    return value >= min && value <= max ? { ok: true, value } : { ok: false };
  });
}

/** With a decimal point. */
export function plainNumber({ min, max, about }: NumberRange): Leaf<number> {
  const expected = `${about}, a number from ${String(min)} to ${String(max)}`;
  const json = { type: 'number', minimum: min, maximum: max, description: about };
  return leaf({ expected, json }, (text) => {
    const read = decimalOf(text);
    const value = read?.ok === true ? toNumber(read.exact) : NaN;
    if (value >= min && value <= max) return { ok: true, value };
    return { ok: false, hint: read?.ok === false ? reasonHint(read) : plainNumberHint(text) };
  });
}

/** A number or why not; undefined for other text. */
export const decimalOf = (text: string): NumberRead | undefined =>
  /^[\d.]+$/.test(text) ? parseNumber(text) : undefined;

function plainNumberHint(text: string): string | undefined {
  const percent = /^(\d{1,3}) ?%$/.exec(text)?.[1];
  if (percent !== undefined) return didYouMean(String(Number(percent) / 100));
  if (/^[\d.]+e[+-]?\d+$/i.test(text)) return 'write the number in plain digits';
  return /^\d+,\d+$/.test(text) ? didYouMean(text.replace(',', '.')) : undefined;
}

const whyOdd = 'even: with one continuous cord, only an odd count leaves a tail at each buckle';

/** Odd, 5 to 45. */
export function strandCount(about: string): Leaf<number> {
  const expected = `${about}, an odd whole number from 5 to 45`;
  const json = { type: 'integer', minimum: 5, maximum: 45, not: { multipleOf: 2 }, description: about };
  return leaf({ expected, json }, (text) => {
    const value = /^[1-9]\d?$/.test(text) ? Number(text) : NaN;
    if (value % 2 === 0) return { ok: false, hint: whyOdd };
    return value >= 5 && value <= 45 ? { ok: true, value } : { ok: false };
  });
}

/** Henneke scores and words (Henneke et al. 1983, Equine Vet J 15:371; from memory). */
export const conditionWords: Readonly<Record<string, number>> = {
  poor: 1,
  'very thin': 2,
  thin: 3,
  'moderately thin': 4,
  moderate: 5,
  'moderately fleshy': 6,
  fleshy: 7,
  fat: 8,
  'extremely fat': 9,
};

/** 1 to 9 in halves, or the scale's word. */
export function conditionScore(): Leaf<number> {
  const about = 'condition score (Henneke)';
  const score = { type: 'number', minimum: 1, maximum: 9, multipleOf: 0.5 };
  const words = Object.keys(conditionWords);
  const json = {
    type: ['number', 'string'],
    anyOf: [score, { type: 'string', enum: words }],
    description: about,
  };
  const expected = `${about} from 1 to 9, in steps of 0.5, or its word: ${words.join(', ')}`;
  return leaf({ expected, json }, (text) => {
    const word = conditionWords[text.toLowerCase().replaceAll(/[\s_-]+/g, ' ')];
    const value = word ?? (/^[1-9](?:\.[05])?$/.test(text) ? Number(text) : NaN);
    return value <= 9 ? { ok: true, value } : { ok: false };
  });
}

/** Such as 2026-12-18. */
export function day(about: string): Leaf<string> {
  const json = { type: 'string', pattern: String.raw`^\d{4}-\d{2}-\d{2}$`, description: about };
  return leaf({ expected: `${about}, a day such as 2026-12-18`, json }, (text) => {
    const read = parseDay(text);
    return read.ok ? { ok: true, value: read.day } : { ok: false, hint: reasonHint(read) };
  });
}

/** In years, at most 60. */
export function age(about: string): Leaf<number> {
  const json = { type: 'string', pattern: '[A-Za-z]\\.?$', description: about };
  const expected = `${about}, such as 3 y or 18 months, at most 60 y`;
  return leaf({ expected, json }, (text) => {
    const read = parseAge(text);
    if (!read.ok) return { ok: false, hint: reasonHint(read) };
    return read.years <= 60 ? { ok: true, value: read.years } : { ok: false };
  });
}
