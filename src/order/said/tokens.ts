/** Cuts a spoken line into words. */
import { tidy } from '../../units/number.ts';

export interface Token {
  readonly raw: string;
  /** Lower case, plain signs. */
  readonly text: string;
  /** In the line. */
  readonly start: number;
  readonly end: number;
  /** Commas and semicolons before it: phrases cross none. */
  readonly clause: number;
}

/** "4,5" stays one word, to be reported. */
const word = /\d+,\d+(?![\d./])|[,;]|[^\s,;]+/g;

/** With their places. */
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
