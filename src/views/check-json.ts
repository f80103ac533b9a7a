/** `check` for scripts: one result an order, one entry for each cinch judged. */
import type { Checked } from '../advice/check.ts';
import { findingsOf, nearestOf, openOf, standingOf } from '../words/about-check.ts';
import { jsonText, rounded } from '../pages/json.ts';
import { candidateValue, failedValue, findingValue, remarksValue } from './size-json.ts';
import { phraseText } from '../units/text.ts';
import type { CheckResult } from '../words/types.ts';

export const checkSchema = 'cinchwright/check/1';

/** Whole document: `{ schema, results }`. */
export const checkJson = (results: readonly CheckResult[]): string =>
  jsonText({ schema: checkSchema, results: results.map(checkValue) });

/** One result, for one a line as well. */
export function checkValue(result: CheckResult): Record<string, unknown> {
  if (!result.ok) return failedValue(result);
  const { facts, cautions } = result.advice;
  return {
    order: facts.order.order,
    file: result.file,
    checked: result.checked.map(checkedValue),
    ...remarksValue(result.advice),
    cautions: [...cautions],
  };
}

function checkedValue(checked: Checked): Record<string, unknown> {
  const { which, asked, filled, judged, cannot, causes } = checked;
  const nearest = nearestOf(checked);
  const standing = standingOf(checked);
  return {
    which,
    asked: {
      style: asked.style ?? null,
      strands: asked.strands ?? null,
      length: asked.length === undefined ? null : rounded(asked.length),
      buckle: asked.buckle ?? null,
    },
    filled: filled.map(({ part, taken }) => ({ part, taken })),
    standing,
    passes: standing === 'passes',
    cannotTell: openOf(checked).map(({ rule }) => rule),
    cannot: cannot === undefined ? null : phraseText(cannot, 'in', 'decimals'),
    spec: judged === undefined ? null : candidateValue(judged.candidate),
    findings: findingsOf(checked).map(findingValue),
    nearest: nearest === undefined ? null : { rank: nearest.rank, ...candidateValue(nearest.candidate) },
    causes: causes.map(({ trouble, explained, words }) => ({
      trouble,
      explained: explained ?? null,
      text: phraseText(words, 'in', 'decimals'),
    })),
  };
}
