/** Margins, type sizes and colors of HTML and PDF papers. */
import { capital } from '../units/text.ts';

/** Never the only signal: printers may lack color. */
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

/** Points, 72 an inch. */
export const look = {
  /** Page numbers go inside the margin. */
  margin: { top: 34, side: 46, bottom: 30 },
  /** The band on top: height, strands, bars over ends and middle. */
  band: { height: 15, strand: 2.5, bar: 14, center: 26, row: 2.6 },
  type: { title: 19, heading: 11.5, text: 10, small: 8.5, fine: 8, loud: 15 },
  leading: 1.25,
  rules: { thick: 2.5, thin: 0.75, hair: 0.5 },
  gap: { heading: 9.5, block: 3, column: 9, cell: 1.4, picture: 14 },
  /** Check box side, and room before its text. */
  box: { side: 8.5, room: 17 },
  /** Writing room above a line. */
  hand: 17,
  /** Label column width. */
  label: 104,
  /** Two tables side by side: the first's share, and the gap. */
  halves: { first: 0.61, gap: 0.05 },
} as const;

/** Splits a notice: what to see across the bench, and the rest. */
export function voices(notice: string): { loud: string; rest: string } {
  const [, loud, rest] = /^([^:]{1,40}): (.+)$/su.exec(notice) ?? [];
  return loud === undefined || rest === undefined
    ? { loud: notice, rest: '' }
    : { loud, rest: capital(rest) };
}
