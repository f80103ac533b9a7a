/** Screen layout: headings, paragraphs and items. */
import { visible } from '../units/clean.ts';
import { penFor, type Pen, type Sign } from './pen.ts';
import { wrap, type Indent, type Units } from '../units/text.ts';
import { columns, fit } from '../units/width.ts';

export interface ReportOptions {
  readonly units: 'in' | 'cm';
  /** The caller has checked NO_COLOR and the terminal. */
  readonly color: boolean;
  /** Columns. */
  readonly width: number;
  /** Specs to show. */
  readonly top: number;
  /** Adds every finding and the working. */
  readonly why: boolean;
  /** Adds ruled-out candidates too. */
  readonly all: boolean;
}

export interface Page {
  readonly pen: Pen;
  readonly units: Units;
  readonly width: number;
}

/** Columns; narrower table columns than `LEAST` are unreadable. */
export const INDENT = 2;
export const GAP = 2;
export const LEAST = 12;

const narrowest = 40;
const widest = 80;

/** As wide as the screen, up to a readable width. */
export const pageFor = ({ color, units, width }: Pick<ReportOptions, 'color' | 'units' | 'width'>): Page => ({
  units,
  pen: penFor(color),
  width: Number.isFinite(width) ? Math.min(widest, Math.max(narrowest, Math.floor(width))) : widest,
});

/** Underlined across the page. */
export const title = ({ pen, width }: Page, text: string): string[] => [
  pen.strong(fit(visible(text), width)),
  pen.quiet('-'.repeat(width)),
];

/** After an empty line. */
export const heading = ({ pen, width }: Page, text: string): string[] => [
  '',
  ...wrap(text, width).map((line) => pen.strong(line)),
];

/** Wrapped and indented. */
export const sentence = ({ width }: Page, text: string, indent: number | Indent = 0): string[] =>
  wrap(text, width, indent);

/** " - text", wrapped under its first word. */
export function item({ width }: Page, text: string, mark: Mark = dash): string[] {
  const { lead, paint } = mark;
  const first = columns(lead);
  const [line = '', ...rest] = wrap(text, width, { first, rest: mark.rest ?? first });
  return [paint(lead) + line.slice(first), ...rest];
}

export interface Mark {
  readonly lead: string;
  readonly paint: (text: string) => string;
  /** Columns before wrapped lines, else under the first word. */
  readonly rest?: number;
}

const same = (text: string): string => text;
const dash: Mark = { lead: '  - ', paint: same };

/** A sign as an item mark. */
export function markOf(sign: Sign, { pen }: Page, indent = 5): Mark {
  return { lead: `${' '.repeat(indent)}${sign} `, paint: (text) => pen.signed(sign, text) };
}

/** Lines to text. */
export const pageText = (lines: readonly string[]): string => `${lines.join('\n')}\n`;
