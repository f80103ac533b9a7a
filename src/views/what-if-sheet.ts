/** One order as it is and with something other, side by side. */
import type { Advice } from '../advice/advice.ts';
import { standingOf } from '../words/about-check.ts';
import { refusedRuns } from '../words/refused-runs.ts';
import { gap } from '../units/phrase.ts';
import { formatLength } from '../units/print.ts';
import { shortCaution } from '../numbers/cautions.ts';
import { bucklesText, orderName, shortStyle } from '../words/counter-words.ts';
import { counterSheet, type Sheet } from '../pages/sheet.ts';
import { chanceText, phraseText, quantityText, type Units } from '../units/text.ts';
import type { SizeResult } from '../words/types.ts';

/** An answer, and what was other; undefined for the order as it is. */
export interface WhatIf {
  readonly whatIf: string | undefined;
  readonly result: SizeResult;
}

/** An answer that there is. */
type Answered = SizeResult & { readonly ok: true };

/** The answers that could be had, one column each; an asterisk marks what differs from the first. */
export function whatIfSheet(answers: readonly WhatIf[], units: Units): Sheet {
  const read = answers.flatMap(({ whatIf, result }) => (result.ok ? [{ whatIf, result }] : []));
  const advices = read.map(({ result }) => result.advice);
  const [base] = advices;
  const welfare = new Set(advices.flatMap((advice) => advice.welfare.map((each) => phraseText(each, units))));
  const isWanted = read.some(({ result }) => result.wants !== undefined);
  const rows = Object.entries(cellOf).filter(([name]) => isWanted || name !== 'asked for');
  return counterSheet({
    title: base === undefined ? '' : orderName(base.facts.order),
    lead: [...welfare, 'answers side by side; * marks what differs from the order as it is.'].join(' '),
    blocks: [
      {
        kind: 'table',
        columns: ['', ...read.map(({ whatIf }) => whatIf ?? 'as it is')].map((head) => ({ head })),
        rows: rows.map(([name, of]) => {
          const texts = read.map(({ result }) => of(result, units));
          return [name, ...texts.map((text) => (text === texts[0] ? text : `${text} *`))];
        }),
        even: true,
        apart: true,
      },
    ],
    cautions: base?.cautions ?? [],
    foot: ['', shortCaution],
  });
}

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
  tie: ({ advice }) => (advice.first === undefined ? 'nothing' : shortStyle(advice.first.candidate.style)),
  strands: first(({ candidate }) => String(candidate.strands)),
  width: first(({ candidate }, _, units) => formatLength(candidate.width, units)),
  length: first(({ candidate }, _, units) => formatLength(candidate.length, units)),
  buckle: first(({ candidate }, { advice }, units) =>
    bucklesText(candidate.buckle, advice.facts.shop, units),
  ),
  strung: first(({ candidate }) => (candidate.layers === 2 ? 'double' : 'single')),
  chance: first(({ candidate }) => chanceText(candidate.clearance.chance)),
  clears: first(({ candidate }, _, units) => quantityText(gap(candidate.cordClearance.inches), units)),
  'asked for': ({ wants }) => (wants === undefined ? NONE : wantedWords[standingOf(wants)]),
  'ruled out': ({ advice }) => ruledOut(advice),
  'measure first': ({ advice }) => advice.firstAsk?.input ?? 'nothing',
};

const wantedWords = { passes: 'passes', 'not sure': 'not sure', refused: 'ruled out' } as const;

/** "straight 23 to 25; high-flare roper 23 to 31", whatever rules them out. */
function ruledOut({ refused, impossible }: Advice): string {
  const runs = refusedRuns(refused.map((entry) => ({ ...entry, rule: '' }))).map(({ style, from, to }) =>
    from === to
      ? `${shortStyle(style)} ${String(from)}`
      : `${shortStyle(style)} ${String(from)} to ${String(to)}`,
  );
  const none = impossible.map((style) => `${shortStyle(style)}: all`);
  return [...runs, ...none].join('; ') || 'nothing';
}
