/** A fault of a file, located so that a person can put a finger on it. */

export interface Problem {
  file: string;
  /** Which document of the file, from 1; only said when the file holds several. */
  document?: number;
  /** From 1. */
  line: number;
  /** From 1, in characters. */
  column: number;
  /** "horse.heart-girth", "buckles[0].bar"; empty for the document itself. */
  path: string;
  /** What stands there, shortened. */
  found?: string;
  /** A plain sentence fragment: "a length with its unit, such as 73 in". */
  expected: string;
  /** The nearest right word or the likely slip. */
  hint?: string;
}

/** What is wrong, before it is known where: the part of a problem that a check can say. */
export interface Fault {
  path: string;
  expected: string;
  found?: string | undefined;
  hint?: string | undefined;
}

export const longestFound = 60;

/** Path of keys and list places -> "horse.trouble[0]". */
export function pathText(path: readonly PropertyKey[]): string {
  return path
    .map((step) => (typeof step === 'number' ? `[${String(step)}]` : `.${shown(String(step))}`))
    .join('')
    .replace(/^\./, '');
}

/** Text of a file made safe and short enough to be quoted in a message. */
export function shown(text: string): string {
  const short = text.length > longestFound ? `${text.slice(0, longestFound)}…` : text;
  return short.replace(/[\p{Cc}\p{Cf}\p{Cs}\p{Zl}\p{Zp}]/gu, (sign) => {
    const code = sign.codePointAt(0)?.toString(16) ?? '';
    return `\\u{${code}}`;
  });
}
