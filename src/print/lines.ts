/** Text broken into lines by the widths of its letters. */
import { visible } from '../report/clean.ts';
import { glue, unglue } from '../report/text.ts';
import { signs } from '../report/width.ts';

/**
 * Lines of at most `width`; a word too long for a line is cut between two letters, never inside of one. `measure` gives a width in the
 * same unit. A text of nothing is one empty line.
 */
export function linesOf(text: string, width: number, measure: (text: string) => number): string[] {
  const lines: string[] = [];
  let line = '';
  for (const word of glue(visible(text.normalize('NFC')).trim()).split(/ +/)) {
    const joined = line === '' ? word : `${line} ${word}`;
    if (measure(joined) <= width) {
      line = joined;
      continue;
    }
    if (line !== '') lines.push(line);
    const parts = cut(word, width, measure);
    lines.push(...parts.slice(0, -1));
    line = parts.at(-1) ?? '';
  }
  return [...lines, line].map(unglue);
}

/** A word in parts that fit, each with one sign at least. */
function cut(word: string, width: number, measure: (text: string) => number): string[] {
  if (measure(word) <= width) return [word];
  const parts: string[] = [];
  let part = '';
  let sum = 0;
  for (const sign of signs(word)) {
    const own = measure(sign);
    // Letters that stand closer or wider together move the sum a little: near the edge the part itself is measured.
    if (part !== '' && sum + own > NEAR * width && measure(part + sign) > width) {
      parts.push(part);
      part = '';
      sum = 0;
    }
    part += sign;
    sum += own;
  }
  return [...parts, part];
}

const NEAR = 0.8;
