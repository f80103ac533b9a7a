/** The rules for scripts. */
import type { AnyRule, Evidence } from '../rules/rule.ts';
import { firstKeys } from '../words/about-rules.ts';
import { jsonText } from '../pages/json.ts';

export const rulesSchema = 'cinchwright/rules/1';

/** Whole document: `{ schema, results }`, one result a rule. */
export const rulesJson = (rules: readonly AnyRule[]): string =>
  jsonText({ schema: rulesSchema, results: rules.map(ruleValue) });

const ruleValue = (rule: AnyRule): Record<string, unknown> => ({
  rule: rule.id,
  question: rule.question,
  can: [...rule.can],
  reads: firstKeys(rule.reads),
  looks: firstKeys(rule.looks),
  evidence: rule.evidence.map(evidenceValue),
  examples: rule.examples.map(({ shows, gives }) => ({ shows, gives })),
  since: rule.since,
});

function evidenceValue(evidence: Evidence): Record<string, unknown> {
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
