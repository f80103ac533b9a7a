/** YAML errors in words for newcomers. */
import type { ErrorCode } from 'yaml';

interface Words {
  expected: string;
  hint?: string;
}

const colon = 'put text with a colon and a space in quotes';

const words: Partial<Record<ErrorCode, Words>> = {
  TAB_AS_INDENT: {
    expected: 'spaces at the start of the line',
    hint: 'there is a tab: replace it with spaces',
  },
  BAD_INDENT: {
    expected: 'lines of one block to start at the same column',
    hint: 'or a [ or { is not closed',
  },
  BLOCK_AS_IMPLICIT_KEY: {
    expected: 'one "key: value" on a line, keys of one block at the same column',
    hint: colon,
  },
  MULTILINE_IMPLICIT_KEY: {
    expected: '"key: value" on one line',
    hint: 'the colon is missing, or the line is too far right',
  },
  MISSING_CHAR: { expected: 'a closing quote or bracket, or the colon after a key' },
  UNEXPECTED_TOKEN: { expected: '"key: value"', hint: 'put text with [ ] { } or , in quotes' },
  BAD_SCALAR_START: { expected: 'a value', hint: 'put a value that starts with @, ` or % in quotes' },
  BAD_DQ_ESCAPE: {
    expected: 'a plain text',
    hint: 'a backslash is special in double quotes: use single quotes',
  },
  BAD_ALIAS: { expected: 'a value', hint: 'put a value that starts with * or & in quotes' },
  KEY_OVER_1024_CHARS: { expected: 'a short key' },
};

/** What was expected, and the usual slip. */
export function syntaxWords(code: ErrorCode): Words {
  return words[code] ?? { expected: 'well-formed YAML: "key: value" lines' };
}

/** Control characters, broken encoding, marks that reverse text. */
export const strangeSign =
  /[\0-\x08\x0b\x0c\x0e-\x1f\x7f-\x84\x86-\x9f\u202a-\u202e\u2066-\u2069\ufffd\ufffe\uffff]|\r(?!\n)|\p{Cs}/u;

/** Words for what strangeSign found. */
export function strangeWords(sign: string): Words {
  if (sign === '\ufffd') return { expected: 'text in UTF-8', hint: 'the file was saved in another encoding' };
  if (sign === '\r')
    return { expected: 'ordinary line endings', hint: 'there is a carriage return without a line feed' };
  return { expected: 'text without control characters or hidden marks' };
}
