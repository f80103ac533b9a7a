/** A candidate meets the rules: every verdict, with its reason when it is read. */
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
  /** One for each rule, in the registry's order, with reasons. */
  readonly findings: readonly Finding[];
  /** Judgement of one rule. */
  readonly judgementOf: (rule: string) => Judgement | undefined;
}

const needsClearance = ({ looks }: AnyRule): boolean => looks.some((path) => path.startsWith('clearance.'));

/** Rules that may refuse; those that need no clearance first, since that takes longest to work out. */
const refusing = rules
  .filter(({ can }) => can.includes('refuse'))
  .sort((a, b) => Number(needsClearance(a)) - Number(needsClearance(b)));

/** A candidate passes when no rule refuses it. */
export const passes = (judged: Judged): boolean =>
  refusing.every(({ id }) => judged.judgementOf(id) !== 'refuse');

/** The verdicts on a candidate; each rule is asked once, when somebody wants to know. */
export const judge = (candidate: Candidate, facts: CaseFacts): Judged => judgeBy(rules, candidate, facts);

/** The same by some rules. */
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
