/** Length keys: their ranges, and the unit slips a wrong length suggests. */
import { formatHands } from '../units/hands.ts';
import { parseLength, unitOf, type Inches, type LengthUnit } from '../units/length.ts';
import { tidy } from '../units/number.ts';
import { decimals } from '../units/print.ts';
import { didYouMean, leaf, reasonHint, type Leaf } from './leaves.ts';

export interface LengthRange {
  about: string;
  /** Inches, inclusive [choice]: takes a mule or miniature, catches a wrong unit. */
  min: Inches;
  max: Inches;
  example: string;
  /** Too long for messages. */
  more?: string;
  hands?: boolean;
}

// The build turns these signs into ASCII, except in strings.
const fractions = '¼½¾⅛⅜⅝⅞';
const marks = '′″”’';
const pattern = String.raw`^\s*-?[\d.${fractions}].*[A-Za-z"'${marks}]\.?\s*$`;

/** With its unit, within its range. */
export function measure(range: LengthRange): Leaf<Inches> {
  const unitWords = range.hands === true ? 'with its unit' : 'a length with its unit';
  const expected = `${range.about}, ${unitWords}, such as ${range.example}`;
  const description = range.more === undefined ? range.about : `${range.about}, ${range.more}`;
  const json = { type: 'string', pattern, description, examples: [range.example] };
  return leaf({ expected, json }, (text) => {
    const read = parseLength(text);
    if (!read.ok) return { ok: false, hint: bareHint(text, range) ?? reasonHint(read) };
    if (within(read.inches, range)) return { ok: true, value: read.inches };
    const hint = didYouMean(likelySlip(text, range));
    return {
      ok: false,
      expected: `${range.about} from ${end(range.min, range)} to ${end(range.max, range)}`,
      hint,
    };
  });
}

/** Includes both ends. */
export function within(inches: Inches, { min, max }: { min: number; max: number }): boolean {
  return inches >= min && inches <= max;
}

const end = (inches: Inches, { hands }: LengthRange): string =>
  hands === true ? formatHands(inches) : `${decimals(inches, Number.isInteger(inches) ? 0 : 2)} in`;

/** Likeliest first. */
const mixedUp: Readonly<Record<LengthUnit, readonly LengthUnit[]>> = {
  in: ['cm', 'hh', 'mm', 'ft'],
  cm: ['in', 'mm', 'hh'],
  mm: ['cm', 'in'],
  ft: ['in', 'hh'],
  hh: ['in', 'cm'],
};

/** "185 in" of heart girth suggests "185 cm". */
function likelySlip(text: string, range: LengthRange): string | undefined {
  const parts = /^\s*(.*?\d)\s*([a-z]+|"|')\.?\s*$/i.exec(tidy(text));
  const [, number = '', word = ''] = parts ?? [];
  const unit = unitOf(word.toLowerCase());
  return unit === undefined ? undefined : firstInRange(number, mixedUp[unit], range);
}

/** Only when one unit fits. */
function bareHint(text: string, range: LengthRange): string | undefined {
  if (!/^\d+(\.\d+)?$/.test(text)) return undefined;
  const only = withOnlyUnit(text, range);
  const ask = 'add a unit: in, cm, mm, ft or hh';
  return only === undefined ? ask : `${ask}; did you mean "${only}"?`;
}

/** "73" of heart girth is "73 in"; undefined when several units fit. */
export function withOnlyUnit(number: string, range: LengthRange): string | undefined {
  const fitting = (['in', 'cm', 'hh'] as const).flatMap((unit) => firstInRange(number, [unit], range) ?? []);
  return fitting.length === 1 ? fitting[0] : undefined;
}

function firstInRange(number: string, units: readonly LengthUnit[], range: LengthRange): string | undefined {
  const allowed = units.filter((unit) => unit !== 'hh' || range.hands === true);
  return allowed
    .map((unit) => `${number} ${unit}`)
    .find((candidate) => {
      const read = parseLength(candidate);
      return read.ok && within(read.inches, range);
    });
}
