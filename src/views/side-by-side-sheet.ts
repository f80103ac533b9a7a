/** Answers side by side, one column each. */
import type { Advice } from '../advice/advice.ts';
import { shortCaution } from '../numbers/cautions.ts';
import { left, counterSheet, paragraph, withoutEmpty, type Sheet } from '../pages/sheet.ts';
import { visible } from '../units/clean.ts';
import { gap, plural } from '../units/phrase.ts';
import { formatLength } from '../units/print.ts';
import { capital, chanceText, phraseText, quantityText, type Units } from '../units/text.ts';
import { fit } from '../units/width.ts';
import { standingOf } from '../words/about-check.ts';
import { isUnsure } from '../advice/judge.ts';
import { bucklesText, orderName, shortStyle } from '../words/counter-words.ts';
import { refusedRuns } from '../words/refused-runs.ts';
import type { SizeResult } from '../words/types.ts';
import { riggingText } from '../words/words.ts';

type Answered = SizeResult & { readonly ok: true };

interface Beside {
  readonly head: string;
  readonly result: Answered;
}

/** Several orders. */
export function sideBySideSheet(results: readonly SizeResult[], units: Units): Sheet {
  const columns = results.flatMap((result) => (result.ok ? [{ head: headOf(result), result }] : []));
  const [base] = columns;
  const from = base === undefined ? '' : base.head;
  return besideSheet(columns, { title: plural(columns.length, 'order'), from, units });
}

/** `whatIf` is undefined for the order as it is. */
export interface WhatIf {
  readonly whatIf: string | undefined;
  readonly result: SizeResult;
}

/** One order and its changes. */
export function whatIfSheet(answers: readonly WhatIf[], units: Units): Sheet {
  const columns = answers.flatMap(({ whatIf = 'as it is', result }) =>
    result.ok ? [{ head: whatIf, result }] : [],
  );
  const [base] = columns;
  const title = base === undefined ? '' : orderName(base.result.advice.facts.order);
  return besideSheet(columns, { title, from: 'the order as it is', units });
}

const headOf = ({ advice }: Answered): string => {
  const { order, horse } = advice.facts.order;
  return [fit(visible(order), 18), fit(visible(horse.name ?? ''), 20)].join(' ').trim();
};

/** An asterisk marks what differs from the first; what all share is below. */
function besideSheet(
  columns: readonly Beside[],
  { title, from, units }: { readonly title: string; readonly from: string; readonly units: Units },
): Sheet {
  const rows = Object.entries(cellOf).map(([name, of]) => [
    name,
    ...columns.map(({ result }) => of(result, units)),
  ]);
  const told = rows.filter((row) => row.slice(1).some((text) => text !== ''));
  const isSame = ([, first, ...others]: readonly string[]): boolean =>
    others.length > 0 && others.every((text) => text === first);
  const same = told.filter(isSame).map(([name = '', text = '']) => `${name} ${text}`);
  const welfare = welfareTexts(columns, units);
  const lead = `answers side by side; * marks what differs from ${from}.`;
  return counterSheet({
    title,
    lead: welfare.length === 0 ? lead : `${welfare.join(' ')} ${capital(lead)}`,
    blocks: withoutEmpty([
      {
        kind: 'table',
        columns: left('', ...columns.map(({ head }) => head)),
        rows: told
          .filter((row) => !isSame(row))
          .map(([name = '', ...texts]) => [
            name,
            ...texts.map((text) => marked(text || NONE, texts[0] || NONE)),
          ]),
        even: true,
        apart: true,
      },
      paragraph(same.length === 0 ? '' : `The same in all: ${same.join('; ')}.`),
    ]),
    cautions: columns[0]?.result.advice.cautions ?? [],
    foot: ['', shortCaution],
  });
}

const NONE = '-';

const marked = (text: string, first: string): string => (text === first ? text : `${text} *`);

/** In full when all have the same, else in short with names. */
function welfareTexts(columns: readonly Beside[], units: Units): string[] {
  const texts = columns.map(({ result }) => result.advice.welfare.map((phrase) => phraseText(phrase, units)));
  const [first = []] = texts;
  if (texts.every((each) => each.join() === first.join())) return first;
  return texts.flatMap(([text], i) => {
    const [short] = /^(?:[^.]*\. ?){1,2}/.exec(text ?? '') ?? [];
    return short === undefined ? [] : [`${columns[i]?.head ?? ''}: ${short.trim()}`];
  });
}

/** Empty when the order has no such thing. */
type Cell = (result: Answered, units: Units) => string;

const first =
  (of: (spec: NonNullable<Advice['first']>, result: Answered, units: Units) => string): Cell =>
  (result, units) => {
    const spec = result.advice.first;
    return spec === undefined ? '' : of(spec, result, units);
  };

const cellOf: Readonly<Record<string, Cell>> = {
  rigging: ({ advice }, units) =>
    riggingText(advice.facts.order.saddle, units).replaceAll(/ (?:position|rigging)/g, ''),
  tie: ({ advice }) => {
    const { first } = advice;
    if (first === undefined) return 'nothing';
    const { style, strands } = first.candidate;
    return `${shortStyle(style)} ${String(strands)}${isUnsure(first) ? ', NOT SURE' : ''}`;
  },
  width: first(({ candidate }, _, units) => formatLength(candidate.width, units)),
  length: first(({ candidate }, _, units) => formatLength(candidate.length, units)),
  'ring to ring': ({ advice }) => (advice.facts.lengthNeed.measured ? 'taped' : 'DO NOT CUT'),
  buckle: first(({ candidate }, { advice }, units) =>
    bucklesText(candidate.buckle, advice.facts.shop, units),
  ),
  strung: first(({ candidate }) => (candidate.layers === 2 ? 'double' : 'single')),
  chance: first(({ candidate }) => chanceText(candidate.clearance.chance)),
  clears: first(({ candidate }, _, units) => quantityText(gap(candidate.cordClearance.inches), units)),
  'asked for': ({ wants }) => (wants === undefined ? '' : wantedWords[standingOf(wants)]),
  'ruled out': ({ advice }) => ruledOut(advice),
  'measure first': ({ advice }) => advice.firstAsk?.input ?? 'nothing',
};

const wantedWords = { passes: 'passes', 'not sure': 'not sure', refused: 'ruled out' } as const;

/** "straight 23 to 25; high flare 23 to 31", whatever the rule. */
function ruledOut({ refused, impossible }: Advice): string {
  const runs = refusedRuns(refused.map((entry) => ({ ...entry, rule: '' }))).map(({ style, from, to }) =>
    from === to
      ? `${shortStyle(style)} ${String(from)}`
      : `${shortStyle(style)} ${String(from)} to ${String(to)}`,
  );
  const none = impossible.map((style) => `${shortStyle(style)}: all`);
  return [...runs, ...none].join('; ') || 'nothing';
}
