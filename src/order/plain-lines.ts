/** Whether a document is written so plainly that no two readers of YAML could take it differently. */
import { strangeSign } from './syntax.ts';

// What is allowed is listed, not what is forbidden: whatever nobody thought of is then left to the reader that explains faults.
// Every part says what may stand on one line, and starts with a sign that no other part starts with, so nothing is tried twice.
const key = '[A-Za-z][A-Za-z0-9_-]{0,63}';
const start = String.raw`(?:[^\s\-?:,[\]{}#&*!|>'"%@\x60]|-(?=[\d.]))`;
const plain = String.raw`${start}(?:[^:#]|:(?=[^ ])|(?<! )#)*`;
const plainBetweenBrackets = String.raw`${start}(?:[^:#,[\]{}]|:(?=[^ ,[\]{}])|(?<! )#)*`;
// Of what a backslash may mean, only the sign itself.
const quoted = String.raw`(?:"(?:[^"\\]|\\["\\])*"|'(?:[^']|'')*') *`;
const entry = `(?:${quoted}|${plainBetweenBrackets})`;
const list = String.raw`\[ *(?:${entry}(?:, *${entry})*)?\] *`;
const blockOf = (value: string): string => String.raw`\{ *${key}: +${value}(?:, *${key}: +${value})* *\} *`;
const inner = `(?:${entry}|${list}|${blockOf(entry)})`;
const value = `(?:${quoted}|${plain}|${list}|${blockOf(inner)})`;
const comment = '(?:(?<= )#.*)?';

/** Indent; then the kind of line: a key with the sign of a text block or with a value, or an entry of a list. */
const line = new RegExp(
  `^( *)(?:${key}:(?: +(?:([|>])[-+]? *|(${value})))? *|(- +(?:${quoted}|${plain})))${comment}$`,
);
const noContent = /^ *(?:#.*)?$/;
const startMark = /^--- *(?:(?<= )#.*)?$/;

/** Signs that readers of YAML take for different things. */
const doubtful = /[\t\r\x85\u2028\u2029\ufeff]/;
/** Longer documents are no orders; the other reader has its own bounds, which none shorter than this can reach. */
const longest = 20_000;
const deepestColumn = 40;

/** Whether every line of a document, its lines ending in "\n", has one of the forms that orders usually have. */
export function isPlain(text: string): boolean {
  if (text.length > longest || doubtful.test(text) || strangeSign.test(text)) return false;
  const lines = text.split('\n');
  /** No line of content may stand further in: it would go on with the text of the line before. */
  let deepest = deepestColumn;
  for (let at = startMark.test(lines[0] ?? '') ? 1 : 0; at < lines.length; at += 1) {
    const here = lines[at] ?? '';
    if (noContent.test(here)) continue;
    const form = formOf(here);
    if (form === undefined || form.indent > deepest) return false;
    deepest = form.isOpen ? deepestColumn : form.indent;
    if (form.sign === undefined) continue;
    const end = endOfText(lines, at, form);
    if (end === undefined) return false;
    at = end;
  }
  return true;
}

interface Form {
  indent: number;
  /** A key whose block or list is to follow. */
  isOpen: boolean;
  /** Opens a text block: "|" keeps its lines, ">" joins them. */
  sign: string | undefined;
}

function formOf(text: string): Form | undefined {
  const parts = line.exec(text);
  if (parts === null) return undefined;
  const [, indent = '', sign, given, listed] = parts;
  return { indent: indent.length, isOpen: (sign ?? given ?? listed) === undefined, sign };
}

/** The last line of the text block opened on a line; undefined when its lines do not start at one column, or those that are kept further in. */
function endOfText(lines: readonly string[], opened: number, { indent, sign }: Form): number | undefined {
  let column = 0;
  for (let at = opened + 1; at < lines.length; at += 1) {
    const here = lines[at] ?? '';
    const first = here.search(/[^ ]/);
    if (first === -1 && here.length <= column) continue;
    if (first !== -1 && first <= indent) return at - 1;
    if (column === 0) column = first;
    // Before a first line of blanks alone nothing is known yet; where lines are joined, those further in are not.
    if (first < column || first === -1 || (sign === '>' && first > column)) return undefined;
  }
  return lines.length - 1;
}
