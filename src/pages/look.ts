/** How papers look, once for HTML and for PDF: margins, type sizes, rules and colors that stay apart in black and white. */
import { capital } from '../units/text.ts';

/** Colors. Nothing is said by color alone: a printer may have none. */
export const colors = {
  ink: '#2b2320',
  soft: '#5f524b',
  line: '#c9bdb2',
  rust: '#8a3518',
  sand: '#f3ece3',
  cord: '#d9c3a5',
  shade: '#8f7250',
  white: '#ffffff',
} as const;

export type Color = keyof typeof colors;

/** Points, of which an inch has 72. */
export const look = {
  /** White on all four sides of a page; page numbers stand within. */
  margin: { top: 34, side: 46, bottom: 30 },
  /** The band of strands at the head: its height, its strands, and the bars that are woven over its ends and middle. */
  band: { height: 15, strand: 2.5, bar: 14, center: 26, row: 2.6 },
  type: { title: 19, heading: 11.5, text: 10, small: 8.5, fine: 8, loud: 15 },
  leading: 1.25,
  rules: { thick: 2.5, thin: 0.75, hair: 0.5 },
  gap: { heading: 9.5, block: 3, column: 9, cell: 1.4, picture: 14 },
  /** Side of a box to be ticked, and the room before its text. */
  box: { side: 8.5, room: 17 },
  /** Room for a hand to write in, above the line. */
  hand: 17,
  /** Labels of a list of pairs. */
  label: 104,
  /** Two tables side by side: the first, and the gap between them, as parts of the width. */
  halves: { first: 0.61, gap: 0.05 },
} as const;

/** A notice comes in two voices: what must be seen from across the bench, and the rest of it. */
export function voices(notice: string): { loud: string; rest: string } {
  const [, loud, rest] = /^([^:]{1,40}): (.+)$/su.exec(notice) ?? [];
  return loud === undefined || rest === undefined
    ? { loud: notice, rest: '' }
    : { loud, rest: capital(rest) };
}
