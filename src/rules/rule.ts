/** The shape of a rule: one question the bench would ask aloud, and a pure judgement of one candidate. */
import type { Facts } from '../horse/facts.ts';
import type { Candidate } from '../cinch/candidate.ts';
import type { Shop } from '../order/types.ts';
import type { Shelf } from '../cinch/shelf.ts';
import { say, type Phrase } from '../units/phrase.ts';

export type Judgement = 'good' | 'acceptable' | 'poor' | 'refuse' | 'not-applicable' | 'cannot-tell';

export const judgements: readonly Judgement[] = [
  'good',
  'acceptable',
  'poor',
  'refuse',
  'not-applicable',
  'cannot-tell',
];

/** What `judge` says of a candidate `C` by the facts `F`. */
export interface Verdict<F = CaseFacts, C = Candidate> {
  readonly judgement: Judgement;
  /** Worded when read, from the same facts and candidate: many are judged for one order and few are told. */
  readonly reason: (facts: F, candidate: C) => Phrase;
  /** How far from the nearest bound, in the unit of the thing judged; positive on the better side. */
  readonly margin?: number;
}

/** Why the rule is believed. `source` names an entry of `sources`. */
export type Evidence =
  | { readonly basis: 'published'; readonly source: string; readonly where: string }
  | {
      readonly basis: 'practice';
      readonly source: string;
      readonly agreement: 'settled' | 'disputed';
      readonly dissent?: string;
    }
  | { readonly basis: 'choice'; readonly source: string; readonly why: string };

/** What rules may see of an order: its facts, the shop's shelf, and the cinch that is ridden in now. */
export interface CaseFacts extends Facts {
  readonly shop: Shop;
  readonly shelf: Shelf;
  readonly current: Current;
}

/** What the cinch that is ridden in now tells of the next one, as far as somebody described it. */
export interface Current {
  readonly frame: { readonly width: number; readonly low: number } | undefined;
  readonly cords: Pick<Candidate, 'elbowWidth' | 'clearance'> | undefined;
}

export interface RuleExample<F extends keyof CaseFacts, C extends keyof Candidate> {
  readonly shows: string;
  readonly facts: Pick<CaseFacts, F> | Partial<Pick<CaseFacts, F>>;
  readonly candidate: Pick<Candidate, C>;
  readonly gives: Judgement;
}

export interface Rule<
  F extends keyof CaseFacts = keyof CaseFacts,
  C extends keyof Candidate = keyof Candidate,
> {
  /** Noun of the subject, equal to the file's name, never reused. */
  readonly id: string;
  readonly question: string;
  /** The facts and the parts of a candidate that `judge` receives. */
  readonly reads: readonly F[];
  readonly looks: readonly C[];
  readonly evidence: readonly Evidence[];
  readonly can: readonly Judgement[];
  readonly judge: (
    facts: Pick<CaseFacts, F>,
    candidate: Pick<Candidate, C>,
  ) => Verdict<Pick<CaseFacts, F>, Pick<Candidate, C>>;
  /** At least one for every entry of `can`; they are its tests and stand in docs/rules.md. */
  readonly examples: readonly RuleExample<F, C>[];
  readonly since: string;
}

/** A rule as the registry holds it: any rule can judge whole facts and a whole candidate. */
export interface AnyRule extends Omit<Rule, 'reads' | 'looks' | 'judge' | 'examples'> {
  readonly reads: readonly (keyof CaseFacts)[];
  readonly looks: readonly (keyof Candidate)[];
  readonly judge: (facts: CaseFacts, candidate: Candidate) => Verdict;
  readonly examples: readonly {
    readonly shows: string;
    readonly facts: Partial<CaseFacts>;
    readonly candidate: Partial<Candidate>;
    readonly gives: Judgement;
  }[];
}

/** Names the type parameters once: `judge` sees exactly what `reads` and `looks` list. */
export function rule<const F extends keyof CaseFacts, const C extends keyof Candidate>(
  entry: Rule<F, C>,
): Rule<F, C> {
  return entry;
}

/** A rule's word on a candidate; a missing fact gives cannot-tell without asking it. */
export function verdict(rule: AnyRule, facts: CaseFacts, candidate: Candidate): Verdict {
  const missing = rule.reads.find((fact) => (facts[fact] as unknown) === undefined);
  if (missing === undefined) return rule.judge(facts, candidate);
  return { judgement: 'cannot-tell', reason: () => say`${missing} is not known` };
}
