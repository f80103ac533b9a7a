/** `check` for scripts: one entry per cinch; as a table, one row per rule. */
import type { Checked } from '../advice/check.ts';
import { jsonText } from '../pages/json.ts';
import { findingsOf, openOf } from '../words/about-check.ts';
import type { Name } from '../words/names.ts';
import type { CheckResult } from '../words/types.ts';
import {
  failedRow,
  failedValue,
  findingValue,
  remarksValue,
  standingValue,
  phraseValue,
} from './shared-values.ts';
import { tableCsv, type Values } from './table.ts';

/** `{ schema, results }`. */
export const checkJson = (results: readonly CheckResult[]): string =>
  jsonText({ schema: 'cinchwright/check/1', results: results.map(checkValue) });

function checkValue(result: CheckResult): Values {
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

const checkedValue = (checked: Checked): Values => ({
  which: checked.which,
  ...standingValue(checked),
  cannotTell: openOf(checked).map(({ rule }) => rule),
  findings: findingsOf(checked).map(findingValue),
  causes: checked.causes.map(({ trouble, explained, words }) => ({
    trouble,
    explained: explained ?? null,
    text: phraseValue(words),
  })),
});

/** The cinch is as judged. */
export const checkColumns: readonly Name[] = [
  'order',
  'file',
  'which',
  'standing',
  'style',
  'strands',
  'length',
  'buckle',
  'rule',
  'judgement',
  'margin',
  'text',
  'reason',
  'problem',
];

/** The table. */
export const checkCsv = (results: readonly CheckResult[]): string =>
  tableCsv(checkColumns, results.flatMap(rowsOf));

function rowsOf(result: CheckResult): Values[] {
  if (!result.ok) return [failedRow(result)];
  const { order } = result.advice.facts.order;
  return result.checked.flatMap((checked) => {
    const { spec, ...rest } = standingValue(checked);
    const row = { order, file: result.file, which: checked.which, ...rest, ...(spec as Values | null) };
    const findings = findingsOf(checked).map((finding) => ({ ...row, ...findingValue(finding) }));
    return findings.length > 0 ? findings : [row];
  });
}
