/** The shape of a rule: one question the bench would ask aloud, and a pure judgement of one candidate. */
import type { Facts } from '../horse/facts.ts';
import type { Candidate } from '../cinch/candidate.ts';
import type { Shop } from '../order/types.ts';
import type { Shelf } from '../cinch/shelf.ts';
import type { Phrase } from '../units/phrase.ts';
import type { PathOf, Seen } from './paths.ts';

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
  readonly cords: Seen<Candidate, 'elbowWidth' | 'clearance.likely'> | undefined;
}

/** Paths of the facts, and of the parts of a candidate, that a rule may name. */
export type FactPath = PathOf<CaseFacts>;
export type PartPath = PathOf<Candidate>;

export interface Rule<F extends string = string, C extends string = string> {
  /** Noun of the subject, equal to the file's name, never reused. */
  readonly id: string;
  readonly question: string;
  /** The facts and the parts of a candidate that `judge` receives; what may be missing has a "?", and `judge` has to say what then. */
  readonly reads: readonly F[];
  readonly looks: readonly C[];
  readonly evidence: readonly Evidence[];
  readonly can: readonly Judgement[];
  readonly judge: (
    facts: Seen<CaseFacts, F>,
    candidate: Seen<Candidate, C>,
  ) => Verdict<Seen<CaseFacts, F>, Seen<Candidate, C>>;
  /** At least one for every entry of `can`; they are its tests and stand in docs/rules.md. */
  readonly examples: readonly {
    readonly shows: string;
    readonly facts: Seen<CaseFacts, F>;
    readonly candidate: Seen<Candidate, C>;
    readonly gives: Judgement;
  }[];
  readonly since: string;
}

/** A rule as the registry holds it: any rule can judge whole facts and a whole candidate. */
export interface AnyRule extends Omit<Rule, 'judge' | 'examples'> {
  readonly judge: (facts: CaseFacts, candidate: Candidate) => Verdict;
  readonly examples: readonly {
    readonly shows: string;
    readonly facts: object;
    readonly candidate: object;
    readonly gives: Judgement;
  }[];
}

/** Names the type parameters once: `judge` sees exactly what `reads` and `looks` list. */
export const rule = <const F extends FactPath, const C extends PartPath>(entry: Rule<F, C>): Rule<F, C> =>
  entry;
