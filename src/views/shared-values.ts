/** What several commands share, for scripts: lengths in inches, chances 0 to 1. */
import type { Advice, RankedSpec } from '../advice/advice.ts';
import type { Checked } from '../advice/check.ts';
import type { Finding } from '../advice/judge.ts';
import type { Candidate, Clearance } from '../cinch/candidate.ts';
import type { Assumption } from '../horse/estimate.ts';
import type { CinchAsked } from '../order/types.ts';
import { rounded, roundedChance } from '../pages/json.ts';
import type { Phrase } from '../units/phrase.ts';
import { phraseText } from '../units/text.ts';
import { nearestOf, standingOf } from '../words/about-check.ts';
import type { PaperResult, Unread } from '../words/types.ts';
import { problemText } from '../work/problem-text.ts';
import type { Values } from './table.ts';

/** An order we could not read, with every error. */
export const failedValue = ({ order, file, problems }: Unread): Values => ({
  order: order ?? null,
  file,
  error: { problems: problems.map(({ path: key, ...problem }) => ({ ...problem, key })) },
});

/** The same as a table row. */
export const failedRow = (unread: Unread): Values => ({
  ...failedValue(unread),
  problem: problemText(unread.problems),
});

/** A paper, why there is none, or the errors of its order. */
export function paperValue<P>(result: PaperResult<P>, valueOf: (paper: P) => Values): Values {
  if (!result.ok) return failedValue(result);
  const { order, file, paper, none } = result;
  return paper === undefined ? { order, file, reason: none } : { order, file, ...valueOf(paper) };
}

/** The same as a table row. */
export const paperRow = <P>(result: PaperResult<P>, rowOf: (paper: P) => Values): Values =>
  result.ok ? paperValue(result, rowOf) : failedRow(result);

/** Lengths with all decimals. */
export const phraseValue = (phrase: Phrase): string => phraseText(phrase, 'in', 'decimals');

/** Every number rounded. */
export const roundedValues = (values: Readonly<Record<string, number>>): Values =>
  Object.fromEntries(Object.entries(values).map(([key, value]) => [key, rounded(value)]));

/** One input with spread and basis. */
export const assumptionValue = ({ input, value, unit, basis, sd, kind }: Assumption): Values => ({
  input,
  value: rounded(value),
  unit,
  basis,
  sd: rounded(sd),
  kind,
});

/** Only with a photo, or where measurements disagree. */
export const remarksValue = ({ facts, remarks }: Advice): Values =>
  facts.photo === undefined && remarks.length === 0 ? {} : { remarks: remarks.map(phraseValue) };

/** A cinch and its clearance. */
export function candidateValue(candidate: Candidate): Values {
  const { style, strands, layers, width, buckleWidth, flareStart, length, buckle, clearance } = candidate;
  return {
    style,
    strands,
    layers,
    width: rounded(width),
    buckleWidth: rounded(buckleWidth),
    flareStart: flareStart === undefined ? null : rounded(flareStart),
    length: rounded(length),
    buckle: buckle.id,
    clearance: clearanceValue(clearance),
  };
}

/** `front` is the part that comes closest. */
export const clearanceValue = ({ inches, sd, floor, chance, station, where }: Clearance): Values => ({
  inches: rounded(inches),
  sd: rounded(sd),
  floor: rounded(floor),
  chance: roundedChance(chance),
  station: rounded(station),
  front: where,
});

/** `margin` is null for rules without one. */
export const findingValue = ({ rule, judgement, margin, reason }: Finding): Values => ({
  rule,
  judgement,
  margin: margin === undefined ? null : rounded(margin),
  text: phraseValue(reason),
});

/** Findings shown by default. */
export const lessThanGood = ({ judgement }: Finding): boolean =>
  judgement !== 'good' && judgement !== 'not-applicable';

/** With the smallest change that passes. */
export function standingValue(checked: Checked): Values {
  const { asked, filled, judged, cannot } = checked;
  return {
    asked: cinchValue(asked),
    filled: cinchValue(Object.fromEntries(filled.map(({ part, taken }) => [part, taken]))),
    standing: standingOf(checked),
    reason: cannot === undefined ? null : phraseValue(cannot),
    spec: judged === undefined ? null : candidateValue(judged.candidate),
    nearest: nearestValue(nearestOf(checked)),
  };
}

const cinchValue = ({ style, strands, length, buckle }: CinchAsked): Values => ({
  style: style ?? null,
  strands: strands ?? null,
  length: length === undefined ? null : rounded(length),
  buckle: buckle ?? null,
});

const nearestValue = (spec: RankedSpec | undefined): Values | null =>
  spec === undefined ? null : { rank: spec.rank, ...candidateValue(spec.candidate) };
