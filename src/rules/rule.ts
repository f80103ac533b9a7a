/** A rule: one question, and a pure judgment of one cinch. */
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

export interface Verdict<F = CaseFacts, C = Candidate> {
  readonly judgement: Judgement;
  /** Worded when read: many cinches are judged, few shown. */
  readonly reason: (facts: F, candidate: C) => Phrase;
  /** From the nearest bound; positive on the better side. */
  readonly margin?: number;
}

/** `source` names an entry of `sources`. */
export type Evidence =
  | { readonly basis: 'published'; readonly source: string; readonly where: string }
  | {
      readonly basis: 'practice';
      readonly source: string;
      readonly agreement: 'settled' | 'disputed';
      readonly dissent?: string;
    }
  | { readonly basis: 'choice'; readonly source: string; readonly why: string };

export interface CaseFacts extends Facts {
  readonly shop: Shop;
  readonly shelf: Shelf;
  readonly current: Current;
}

/** As far as somebody described it. */
export interface Current {
  readonly frame: { readonly width: number; readonly low: number } | undefined;
  readonly cords: Seen<Candidate, 'elbowWidth' | 'clearance.likely'> | undefined;
}

export type FactPath = PathOf<CaseFacts>;
export type PartPath = PathOf<Candidate>;

export interface Rule<F extends string = string, C extends string = string> {
  /** Same as the file name, never reused. */
  readonly id: string;
  readonly question: string;
  /** What `judge` receives; it must handle a missing path marked "?". */
  readonly reads: readonly F[];
  readonly looks: readonly C[];
  readonly evidence: readonly Evidence[];
  readonly can: readonly Judgement[];
  readonly judge: (
    facts: Seen<CaseFacts, F>,
    candidate: Seen<Candidate, C>,
  ) => Verdict<Seen<CaseFacts, F>, Seen<Candidate, C>>;
  /** At least one per entry of `can`; tests, and shown in docs/rules.md. */
  readonly examples: readonly {
    readonly shows: string;
    readonly facts: Seen<CaseFacts, F>;
    readonly candidate: Seen<Candidate, C>;
    readonly gives: Judgement;
  }[];
  readonly since: string;
}

/** Judges any facts and cinch. */
export interface AnyRule extends Omit<Rule, 'judge' | 'examples'> {
  readonly judge: (facts: CaseFacts, candidate: Candidate) => Verdict;
  readonly examples: readonly {
    readonly shows: string;
    readonly facts: object;
    readonly candidate: object;
    readonly gives: Judgement;
  }[];
}

/** Names the type parameters once, so `judge` sees exactly `reads` and `looks`. */
export const rule = <const F extends FactPath, const C extends PartPath>(entry: Rule<F, C>): Rule<F, C> =>
  entry;
