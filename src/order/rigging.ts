/** Where the front ring hangs: a name, a fraction or a measured set-back. */
import * as z from 'zod/mini';
import { parseNumber, tidy, toNumber } from '../units/number.ts';
import { nearestWord } from '../units/nearest.ts';
import type { Inches } from '../units/length.ts';
import { blockOf, length } from './key.ts';
import { didYouMean, jsonOf, leaf, type Reading } from './leaves.ts';

/** As written, or inches back of full. */
export type Rigging =
  { kind: 'named'; name: string; fraction: number } | { kind: 'measured'; setBack: Inches };

const names: Readonly<Record<string, number>> = { full: 1, 'center-fire': 0.5 };
const shortNames: Readonly<Record<string, string>> = { center: 'center-fire' };
/** All but fractions. */
export const riggingNames: readonly string[] = [...Object.keys(names), ...Object.keys(shortNames)];
/** Other spellings, for hints and --say. */
export const riggingSense: Readonly<Record<string, string>> = {
  'seven-eighths': '7/8',
  'three-quarter': '3/4',
  'three-quarters': '3/4',
  'five-eighths': '5/8',
  '7/8ths': '7/8',
  '5/8ths': '5/8',
  'centre-fire': 'center-fire',
  centre: 'center-fire',
  half: '1/2',
};

const about = 'rigging position';
const expected = `${about}: full, 7/8, 3/4, 5/8, center-fire, another fraction from 1/2 to 1, or { set-back: 2 in }`;

const named = leaf<Rigging>(
  {
    expected,
    json: {
      anyOf: [
        { enum: ['full', '7/8', '3/4', '5/8', 'center-fire'] },
        { type: 'string', pattern: String.raw`^\d+/\d+$|^center$` },
      ],
      description: about,
    },
  },
  readName,
);
export const riggingKeys = {
  'set-back': length({
    about: 'set-back of the ring from full position',
    min: -2,
    max: 12,
    example: '2 in',
    always: true,
    labels: ['set back', 'setback'],
  }),
};
const measured = z.pipe(
  blockOf('measured rigging position', riggingKeys),
  z.transform(({ setBack }: { setBack: Inches }): Rigging => ({ kind: 'measured', setBack })),
);

/** Schema of `saddle.rigging`. */
export const rigging = z.union([named, measured], expected);
jsonOf.set(rigging, { description: about });

function readName(text: string): Reading<Rigging> {
  const name = Object.hasOwn(shortNames, text) ? (shortNames[text] ?? text) : text;
  if (Object.hasOwn(names, name))
    return { ok: true, value: { kind: 'named', name, fraction: names[name] ?? 1 } };
  const clean = tidy(text);
  const read = /^\d+ ?\/ ?\d+$/.test(clean) ? parseNumber(clean) : undefined;
  const fraction = read?.ok === true ? toNumber(read.exact) : undefined;
  if (fraction === undefined) return { ok: false, hint: doubleHint(text) ?? didYouMean(likelyName(text)) };
  if (fraction < 0.5 || fraction > 1)
    return { ok: false, hint: 'a fraction of the bar span from 1/2 (center-fire) to 1 (full)' };
  return { ok: true, value: { kind: 'named', name: clean.replaceAll(' ', ''), fraction } };
}

/** Position and "double" answer two keys. */
function doubleHint(text: string): string | undefined {
  const position = /^(.+?)[ ,_-]+double(?:[ _-]rig(?:ged|ging)?)?$/i.exec(text)?.[1];
  if (position === undefined) return undefined;
  const read = readName(position);
  const name = read.ok ? position : likelyName(position);
  return name === undefined ? undefined : `did you mean "${name}", with double: true on a line of its own?`;
}

function likelyName(written: string): string | undefined {
  // A trailing comma is a list habit.
  const text = written.replace(/[\s,;.]+$/, '');
  // 7-8, 7 8, 7/8ths, 7/8 rigging.
  const [, over, under] = /^([1-9])\s?[-/ ]\s?([1-9]\d?)(?:ths?|rds?)?(?: rig\w*)?$/i.exec(text) ?? [];
  if (over !== undefined && under !== undefined && readName(`${over}/${under}`).ok) return `${over}/${under}`;
  if (text !== written && readName(text).ok) return text;
  const word = text.toLowerCase().replaceAll(/[ _]/g, '-');
  if (Object.hasOwn(riggingSense, word)) return riggingSense[word];
  // From a spreadsheet.
  const eighths = /^[01]?\.\d+$/.test(text) ? Number(text) * 8 : NaN;
  if (Number.isInteger(eighths)) return ['1/2', '5/8', '3/4', '7/8', 'full'][eighths - 4];
  return nearestWord(text, Object.keys(names));
}
