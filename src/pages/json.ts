/** JSON for scripts: fixed key order, rounded numbers, no control characters. */

/** Four decimals: finer than any tape. */
const PLACES = 1e4;

/** Never -0; null when not finite. */
export function rounded(value: number): number | null {
  if (!Number.isFinite(value)) return null;
  return Math.round(value * PLACES) / PLACES + 0;
}

/** Never rounds a chance to 0 or 1. */
export function roundedChance(value: number): number | null {
  const chance = rounded(value);
  return chance === null ? null : Math.min(1 - 1 / PLACES, Math.max(1 / PLACES, chance));
}

const unseen = /[\u007f-\u009f\p{Cf}\p{Zl}\p{Zp}]/gu;

/** Indented, with a final newline. Control characters that terminals obey become escapes such as `\u009b`. */
export const jsonText = (value: unknown): string => `${quiet(JSON.stringify(value, null, 2))}\n`;

/** On one line. */
export const jsonLine = (value: unknown): string => `${quiet(JSON.stringify(value))}\n`;

const quiet = (json: string): string =>
  json.replace(unseen, (sign) =>
    sign
      .split('')
      .map((unit) => `\\u${unit.charCodeAt(0).toString(16).padStart(4, '0')}`)
      .join(''),
  );
