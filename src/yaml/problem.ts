/** A located fault in a file. */

export interface Problem {
  file: string;
  /** From 1, if the file holds several. */
  document?: number;
  /** Its number, if any. */
  order?: string;
  line: number;
  /** In characters, from 1. */
  column: number;
  /** "horse.heart-girth", "buckles[0].bar"; empty for the document. */
  path: string;
  /** What is there, shortened. */
  found?: string;
  /** A phrase: "a length with its unit". */
  expected: string;
  /** Nearest right word or likely slip. */
  hint?: string;
}

/** Not yet located. */
export interface Fault {
  path: string;
  expected: string;
  found?: string | undefined;
  hint?: string | undefined;
}

export const longestFound = 60;

/** "horse.trouble[0]". */
export function pathText(path: readonly PropertyKey[]): string {
  return path
    .map((step) => (typeof step === 'number' ? `[${String(step)}]` : `.${shown(String(step))}`))
    .join('')
    .replace(/^\./, '');
}

/** Safe and short enough to quote. */
export function shown(text: string): string {
  const short = text.length > longestFound ? `${text.slice(0, longestFound)}…` : text;
  return short.replace(/[\p{Cc}\p{Cf}\p{Cs}\p{Zl}\p{Zp}]/gu, (sign) => {
    const code = sign.codePointAt(0)?.toString(16) ?? '';
    return `\\u{${code}}`;
  });
}
