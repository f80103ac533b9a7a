/** Text broken into lines by the widths of its letters. */
import { visible } from '../../units/clean.ts';
import { glue, unglue } from '../../units/text.ts';
import { signs } from '../../units/width.ts';

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
    line = '';
    for (const sign of measure(word) <= width ? [word] : signs(word)) {
      if (line !== '' && measure(line + sign) > width) {
        lines.push(line);
        line = '';
      }
      line += sign;
    }
  }
  return [...lines, line].map(unglue);
}
