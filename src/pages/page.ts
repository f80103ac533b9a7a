/** The screen as a page of lines: headings, paragraphs, marked items, none wider than the page. */
import { visible } from '../units/clean.ts';
import { penFor, type Pen, type Sign } from './pen.ts';
import { wrap, type Indent, type Units } from '../units/text.ts';
import { columns, fit } from '../units/width.ts';

/** How the reader wants it. */
export interface ReportOptions {
  readonly units: 'in' | 'cm';
  /** ANSI colors; the caller has looked at NO_COLOR and the terminal. */
  readonly color: boolean;
  /** Columns of the screen. */
  readonly width: number;
  /** How many specs to show. */
  readonly top: number;
  /** The long form: every finding and the working. */
  readonly why: boolean;
  /** Every candidate, refused ones too. */
  readonly all: boolean;
}

export interface Page {
  readonly pen: Pen;
  readonly units: Units;
  readonly width: number;
}

/** Columns before what stands under a heading, and between the columns of a table; a column narrower than the least cannot be read. */
export const INDENT = 2;
export const GAP = 2;
export const LEAST = 12;

const narrowest = 40;
const widest = 80;

/** The page for a reader: as wide as the screen, within what is good to read. */
export const pageFor = ({ color, units, width }: Pick<ReportOptions, 'color' | 'units' | 'width'>): Page => ({
  units,
  pen: penFor(color),
  width: Number.isFinite(width) ? Math.min(widest, Math.max(narrowest, Math.floor(width))) : widest,
});

/** The title of an order over a line as long as the page. */
export const title = ({ pen, width }: Page, text: string): string[] => [
  pen.strong(fit(visible(text), width)),
  pen.quiet('-'.repeat(width)),
];

/** An empty line and a heading. */
export const heading = ({ pen, width }: Page, text: string): string[] => [
  '',
  ...wrap(text, width).map((line) => pen.strong(line)),
];

/** A paragraph behind an indent. */
export const sentence = ({ width }: Page, text: string, indent: number | Indent = 0): string[] =>
  wrap(text, width, indent);

/** An item behind a mark: "  - text", its further lines under its first word. */
export function item({ width }: Page, text: string, mark: Mark = dash): string[] {
  const { lead, paint } = mark;
  const first = columns(lead);
  const [line = '', ...rest] = wrap(text, width, { first, rest: mark.rest ?? first });
  return [paint(lead) + line.slice(first), ...rest];
}

/** What stands before an item and how it is painted. */
export interface Mark {
  readonly lead: string;
  readonly paint: (text: string) => string;
  /** Columns before the further lines, when they do not stand under the first word. */
  readonly rest?: number;
}

const same = (text: string): string => text;
const dash: Mark = { lead: '  - ', paint: same };

/** A sign as a mark. */
export function markOf(sign: Sign, { pen }: Page, indent = 5): Mark {
  return { lead: `${' '.repeat(indent)}${sign} `, paint: (text) => pen.signed(sign, text) };
}

/** Lines to text, with a newline at the end. */
export const pageText = (lines: readonly string[]): string => `${lines.join('\n')}\n`;
