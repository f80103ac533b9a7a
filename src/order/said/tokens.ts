/** A said line, cut into its words. */
import { tidy } from '../../units/number.ts';

export interface Token {
  /** As it was written. */
  readonly raw: string;
  /** In small letters and with plain signs. */
  readonly text: string;
  /** Where it starts and ends in the line. */
  readonly start: number;
  readonly end: number;
  /** How many commas or semicolons stand before it: no phrase goes over one. */
  readonly clause: number;
}

/** "4,5" is one word, so that it can be told; after any other comma something new starts. */
const word = /\d+,\d+(?![\d./])|[,;]|[^\s,;]+/g;

/** The words of a line, in order. */
export function tokensOf(line: string): Token[] {
  let clause = 0;
  const tokens: Token[] = [];
  for (const { 0: raw, index: start } of line.matchAll(word)) {
    if (/^[,;]$/.test(raw)) clause += 1;
    else {
      const text = tidy(raw).toLowerCase().replace(/\.+$/, '');
      if (text !== '') tokens.push({ raw, text, start, end: start + raw.length, clause });
    }
  }
  return tokens;
}
