/** Text broken into lines by the widths of its letters. */
import { visible } from '../report/clean.ts';
import { glue, unglue } from '../report/text.ts';
import { signs } from '../report/width.ts';
import { firstFrom } from '../units/pick.ts';

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
  const all = signs(word);
  const widths = new Map([...new Set(all)].map((sign) => [sign, measure(sign)]));
  const own = all.map((sign) => widths.get(sign) ?? 0);
  const parts: string[] = [];
  for (let from = 0; from < all.length;) {
    // Letters that stand closer or wider together move the sum a little: only near the edge the part itself is measured.
    const least = from + Math.max(1, reach(own, from, NEAR * width));
    const most = from + reach(own, from, width / NEAR);
    const more = firstFrom(most - least, (i) => measure(all.slice(from, least + i + 1).join('')) > width);
    parts.push(all.slice(from, least + more).join(''));
    from = least + more;
  }
  return parts;
}

/** How many from one on have this sum at most. */
function reach(widths: readonly number[], from: number, most: number): number {
  let [count, sum] = [0, 0];
  for (; from + count < widths.length; count++) {
    sum += widths[from + count] ?? 0;
    if (sum > most) break;
  }
  return count;
}

const NEAR = 0.8;
