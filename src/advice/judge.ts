/** A candidate meets the rules: how many verdicts of each kind, and every verdict with its reason when it is read. */
import type { Candidate } from '../fit/candidate.ts';
import { rules } from '../rules/registry.ts';
import type { AnyRule, CaseFacts, Judgement } from '../rules/rule.ts';
import type { Phrase } from '../units/phrase.ts';
import { countIn, unitOf, verdict } from './verdict.ts';

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
  /** How many rules came to this judgement, as ranking counts them: see `ownCriterion`. */
  readonly countOf: (judgement: Judgement) => number;
  /** Judgement of one rule. */
  readonly judgementOf: (rule: string) => Judgement | undefined;
}

const byId = new Map(rules.map((rule) => [rule.id, rule]));

/** The rule of that name. */
export const ruleOf = (id: string): AnyRule | undefined => byId.get(id);

/** The verdicts on a candidate, each reached when somebody asks. */
export class Seen implements Judged {
  readonly candidate: Candidate;
  readonly #facts: CaseFacts;
  #tally: number | undefined;

  /** @param tally all its verdicts, where they were counted before */
  constructor(facts: CaseFacts, candidate: Candidate, tally?: number) {
    this.candidate = candidate;
    this.#facts = facts;
    this.#tally = tally;
  }

  get findings(): readonly Finding[] {
    return rules.map((rule) => {
      const { judgement, reason, margin } = verdict(rule, this.#facts, this.candidate);
      return { rule: rule.id, judgement, reason: reason(this.#facts, this.candidate), margin };
    });
  }

  countOf(judgement: Judgement): number {
    this.#tally ??= rules.reduce((sum, rule) => sum + unitOf(rule, this.#judgementBy(rule)), 0);
    return countIn(this.#tally, judgement);
  }

  judgementOf(id: string): Judgement | undefined {
    const rule = ruleOf(id);
    return rule === undefined ? undefined : this.#judgementBy(rule);
  }

  #judgementBy(rule: AnyRule): Judgement {
    return verdict(rule, this.#facts, this.candidate).judgement;
  }
}
