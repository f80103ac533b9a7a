/** A candidate meets the rules: every verdict, and how many of each. */
import type { Candidate } from '../fit/candidate.ts';
import type { AnyRule, CaseFacts, Judgement, Verdict } from '../rules/rule.ts';
import { rules } from '../rules/registry.ts';
import { say } from '../units/phrase.ts';

export interface Finding extends Verdict {
  readonly rule: string;
}

export interface Judged {
  readonly candidate: Candidate;
  /** One for each rule, in the registry's order. */
  readonly findings: readonly Finding[];
  readonly counts: Readonly<Record<Judgement, number>>;
}

/** Verdicts of all rules on one candidate. */
export function judge(facts: CaseFacts, candidate: Candidate): Judged {
  const counts = { good: 0, acceptable: 0, poor: 0, refuse: 0, 'not-applicable': 0, 'cannot-tell': 0 };
  const findings: Finding[] = new Array<Finding>(rules.length);
  for (let i = 0; i < rules.length; i++) {
    const rule = rules[i] as AnyRule;
    const { judgement, reason, margin } = verdict(rule, facts, candidate);
    counts[judgement]++;
    findings[i] =
      margin === undefined
        ? { rule: rule.id, judgement, reason }
        : { rule: rule.id, judgement, reason, margin };
  }
  return { candidate, findings, counts };
}

/** A missing fact gives cannot-tell without asking the rule. */
function verdict(rule: AnyRule, facts: CaseFacts, candidate: Candidate): Verdict {
  for (const key of rule.reads) {
    if ((facts[key] as unknown) === undefined)
      return { judgement: 'cannot-tell', reason: say`${key} is not known` };
  }
  return rule.judge(facts, candidate);
}

/** The verdict of one rule. */
export const findingOf = (judged: Judged, rule: string): Finding | undefined =>
  judged.findings.find((finding) => finding.rule === rule);
