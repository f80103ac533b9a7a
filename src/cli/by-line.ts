/** Whether a text holds an order on every line (NDJSON), whatever else stands around the lines. */

/** Enough to see two lines of any order. */
export const ENOUGH = 65_536;

/** A mark of byte order, as UTF-8 text or as the bytes of one. */
const mark = /^(?:\ufeff|\u00ef\u00bb\u00bf)/;

/** The same text without it. */
const withoutMark = (text: string): string => text.replace(mark, '');

/**
 * Whether every line is an order of its own: the first two that say anything are in braces. Two of those in one document would be no YAML
 * and no JSON, so nothing else is lost.
 * @param text the beginning of a file, as much as is there
 * @param isCut whether more comes after it
 * @returns undefined when more is needed to tell
 */
export function looksByLine(text: string, isCut: boolean): boolean | undefined {
  const plain = withoutMark(text);
  if (!/^\s*(?:\{|$)/.test(plain)) return false;
  const whole = isCut ? plain.slice(0, plain.lastIndexOf('\n') + 1) : plain;
  const [first, second] = whole
    .split('\n')
    .map((line) => withoutMark(line).trim())
    .filter((line) => line !== '');
  if (first === undefined) return isCut ? undefined : false;
  if (!first.startsWith('{') || !first.endsWith('}')) return false;
  if (second === undefined) return isCut ? undefined : true;
  return second.startsWith('{');
}

/** A line that is no blank one, no remark, no directive and no mark between documents. */
const tellingLine = /^(?![ \t\r]*(?:#|%|$)|(?:---|\.\.\.)[ \t\r]*$)/m;

/** Whether a text, of one line or many, holds no such line: nothing of an order is in it. */
export const isBlank = (text: string): boolean => !tellingLine.test(withoutMark(text));
