/** Whether a text has an order on every line (NDJSON). */

/** Two lines of any order fit. */
export const ENOUGH = 65_536;

/** Byte order mark, as text or bytes. */
const mark = /^(?:\ufeff|\u00ef\u00bb\u00bf)/;

const withoutMark = (text: string): string => text.replace(mark, '');

/**
 * No YAML or JSON document has two lines in braces.
 * @param isCut whether more text follows
 * @returns undefined when unsure
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

/** Not blank, comment, directive or document marker. */
const tellingLine = /^(?![ \t\r]*(?:#|%|$)|(?:---|\.\.\.)[ \t\r]*$)/m;

/** No line has contents. */
export const isBlank = (text: string): boolean => !tellingLine.test(withoutMark(text));
