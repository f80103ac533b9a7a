/** The rules for scripts: one result or row per rule. */
import { jsonText } from '../pages/json.ts';
import type { AnyRule, Evidence } from '../rules/rule.ts';
import { basisText, evidenceText, firstKeys, mayRefuse } from '../words/about-rules.ts';
import type { Name } from '../words/names.ts';
import { tableCsv, type Values } from './table.ts';

/** `{ schema, results }`. */
export const rulesJson = (rules: readonly AnyRule[]): string =>
  jsonText({ schema: 'cinchwright/rules/1', results: rules.map(ruleValue) });

const ruleValue = (rule: AnyRule): Values => ({
  rule: rule.id,
  question: rule.question,
  mayRefuse: mayRefuse(rule),
  can: [...rule.can],
  reads: firstKeys(rule.reads),
  looks: firstKeys(rule.looks),
  evidence: rule.evidence.map(evidenceValue),
  examples: rule.examples.map(({ shows, gives }) => ({ shows, gives })),
  since: rule.since,
});

function evidenceValue(evidence: Evidence): Values {
  const { basis, source } = evidence;
  switch (evidence.basis) {
    case 'published':
      return { basis, source, where: evidence.where };
    case 'practice':
      return { basis, source, agreement: evidence.agreement, dissent: evidence.dissent ?? null };
    case 'choice':
      return { basis, source, why: evidence.why };
  }
}

export const rulesColumns: readonly Name[] = [
  'rule',
  'question',
  'mayRefuse',
  'can',
  'basis',
  'evidence',
  'since',
];

/** The table. */
export const rulesCsv = (rules: readonly AnyRule[]): string =>
  tableCsv(
    rulesColumns,
    rules.map((rule) => ({
      ...ruleValue(rule),
      can: rule.can.join(' '),
      basis: basisText(rule),
      evidence: rule.evidence.map(evidenceText).join('; '),
    })),
  );
