/** JSON as scripts read it: keys always in the same order, numbers rounded once, nothing in it that steers a screen. */

/** Four decimals: finer than any tape, short enough to read. */
const PLACES = 1e4;

/** A number for JSON or a table: four decimals, never -0; what is no number becomes null. */
export function rounded(value: number): number | null {
  if (!Number.isFinite(value)) return null;
  return Math.round(value * PLACES) / PLACES + 0;
}

/** The same for a chance: four decimals never make it certain, nor nothing. */
export function roundedChance(value: number): number | null {
  const chance = rounded(value);
  return chance === null ? null : Math.min(1 - 1 / PLACES, Math.max(1 / PLACES, chance));
}

const unseen = /[\u007f-\u009f\p{Cf}\p{Zl}\p{Zp}]/gu;

/** Indented text with a final newline. Signs that JSON allows but a terminal would obey are written as `\u009b`: the same data. */
export const jsonText = (value: unknown): string => `${quiet(JSON.stringify(value, null, 2))}\n`;

/** The same on one line, for one result a line. */
export const jsonLine = (value: unknown): string => `${quiet(JSON.stringify(value))}\n`;

const quiet = (json: string): string =>
  json.replace(unseen, (sign) =>
    sign
      .split('')
      .map((unit) => `\\u${unit.charCodeAt(0).toString(16).padStart(4, '0')}`)
      .join(''),
  );
