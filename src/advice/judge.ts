/** Applies the rules to one cinch. */
import type { Candidate } from '../cinch/candidate.ts';
import { rules } from '../rules/registry.ts';
import type { AnyRule, CaseFacts, Judgement, Verdict } from '../rules/rule.ts';
import type { Phrase } from '../units/phrase.ts';

export interface Finding {
  readonly rule: string;
  readonly judgement: Judgement;
  readonly reason: Phrase;
  readonly margin?: number | undefined;
}

export interface Judged {
  readonly candidate: Candidate;
  /** In the registry's order. */
  readonly findings: readonly Finding[];
  readonly judgementOf: (rule: string) => Judgement | undefined;
}

const needsClearance = ({ looks }: AnyRule): boolean => looks.some((path) => path.startsWith('clearance.'));

/** Rules that can refuse; slow clearance rules last. */
const refusing = rules
  .filter(({ can }) => can.includes('refuse'))
  .sort((a, b) => Number(needsClearance(a)) - Number(needsClearance(b)));

/** No rule refuses it. */
export const passes = (judged: Judged): boolean =>
  refusing.every(({ id }) => judged.judgementOf(id) !== 'refuse');

/** Passes, but touches the elbow too often: shown as NOT SURE. */
export const isUnsure = (judged: Pick<Judged, 'judgementOf'>): boolean =>
  judged.judgementOf('elbow-clearance') === 'poor';

/** Asks each rule once, on demand. */
export const judge = (candidate: Candidate, facts: CaseFacts): Judged => judgeBy(rules, candidate, facts);

/** By these rules only. */
export function judgeBy(asked: readonly AnyRule[], candidate: Candidate, facts: CaseFacts): Judged {
  const known = new Map<AnyRule, Verdict>();
  const verdictOf = (rule: AnyRule): Verdict => {
    const told = known.get(rule) ?? rule.judge(facts, candidate);
    known.set(rule, told);
    return told;
  };
  return {
    candidate,
    get findings() {
      return asked.map((rule): Finding => {
        const { judgement, reason, margin } = verdictOf(rule);
        return { rule: rule.id, judgement, reason: reason(facts, candidate), margin };
      });
    },
    judgementOf(id) {
      const rule = asked.find((each) => each.id === id);
      return rule && verdictOf(rule).judgement;
    },
  };
}
