/** One order as it is and with something other, side by side: the rows that every printer of it shows. */
import type { Advice } from '../advice/advice.ts';
import { standingOf } from './about-check.ts';
import { refusedRuns } from './refused-runs.ts';
import { clearanceText } from './about-specs.ts';
import { formatLength } from '../units/print.ts';
import { chanceText, type Units } from './text.ts';
import type { SizeResult } from './types.ts';
import { buckleText, styleName } from './words.ts';

/** An answer, and what was other; undefined for the order as it is. */
export interface WhatIf {
  readonly whatIf: string | undefined;
  readonly result: SizeResult;
}

/** An answer that there is. */
type Answered = SizeResult & { readonly ok: true };

export interface WhatIfTable {
  readonly heads: readonly string[];
  readonly rows: readonly WhatIfRow[];
}

export interface WhatIfRow {
  readonly name: string;
  /** One a column; `differs` from the order as it is. */
  readonly cells: readonly { readonly text: string; readonly differs: boolean }[];
}

/** The answers that could be had, one column each. */
export function whatIfTable(answers: readonly WhatIf[], units: Units): WhatIfTable {
  const read = answers.flatMap(({ whatIf, result }) => (result.ok ? [{ whatIf, result }] : []));
  const isWanted = read.some(({ result }) => result.wants !== undefined);
  const rows = Object.entries(cellOf).filter(([name]) => isWanted || name !== 'asked for');
  return {
    heads: read.map(({ whatIf }) => whatIf ?? 'as it is'),
    rows: rows.map(([name, of]) => {
      const texts = read.map(({ result }) => of(result, units));
      return { name, cells: texts.map((text) => ({ text, differs: text !== texts[0] })) };
    }),
  };
}

/** Said under every such table. */
export const differsText = 'An asterisk (*) marks what differs from the order as it is.';

type Cell = (result: Answered, units: Units) => string;

const NONE = '-';

/** Of what is to be tied first. */
const first =
  (of: (spec: NonNullable<Advice['first']>, result: Answered, units: Units) => string): Cell =>
  (result, units) => {
    const spec = result.advice.first;
    return spec === undefined ? NONE : of(spec, result, units);
  };

const cellOf: Readonly<Record<string, Cell>> = {
  tie: ({ advice }) =>
    advice.first === undefined ? 'nothing passes' : styleName(advice.first.candidate.style),
  strands: first(({ candidate }) => String(candidate.strands)),
  width: first(({ candidate }, _, units) => formatLength(candidate.width, units)),
  length: first(({ candidate }, _, units) => formatLength(candidate.length, units)),
  buckle: first(({ candidate }, { advice }) => buckleText(candidate.buckle, advice.facts.order.quantity)),
  strung: first(({ candidate }) => (candidate.layers === 2 ? 'double' : 'single')),
  chance: first(({ candidate }) => chanceText(candidate.clearance.chance)),
  clearance: first(({ candidate }, _, units) =>
    clearanceText(candidate.clearance, units)
      .replace(/^clears the elbow by /, '')
      .replace(/, [^,]* sure$/, ''),
  ),
  'asked for': ({ wants }) => (wants === undefined ? NONE : wantedWords[standingOf(wants)]),
  'ruled out': ({ advice }) => ruledOut(advice),
  'measure first': ({ advice }) => advice.firstAsk?.input ?? 'nothing',
};

const wantedWords = { passes: 'passes', 'not sure': 'not sure', refused: 'ruled out' } as const;

/** "straight 23 to 25; high-flare roper 23 to 31", whatever rules them out. */
function ruledOut({ refused, impossible }: Advice): string {
  const runs = refusedRuns(refused.map((entry) => ({ ...entry, rule: '' }))).map(({ style, from, to }) =>
    from === to
      ? `${styleName(style)} ${String(from)}`
      : `${styleName(style)} ${String(from)} to ${String(to)}`,
  );
  const none = impossible.map((style) => `${styleName(style)}: all`);
  return [...runs, ...none].join('; ') || 'nothing';
}
