/** Breaks text into lines by letter width. */
import { visible } from '../../units/clean.ts';
import { glue, unglue } from '../../units/text.ts';
import { signs } from '../../units/width.ts';

/** At most `width` in the unit of `measure`; long words split between letters. Empty text is one line. */
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
