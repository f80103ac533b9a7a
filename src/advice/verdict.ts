/** What one rule says of a candidate, and how verdicts are counted: as one whole number, so that adding tallies adds their counts. */
import type { Candidate } from '../fit/candidate.ts';
import type { AnyRule, CaseFacts, Judgement, Verdict } from '../rules/rule.ts';
import { say } from '../units/phrase.ts';

/** A missing fact gives cannot-tell without asking the rule. */
export function verdict(rule: AnyRule, facts: CaseFacts, candidate: Candidate): Verdict {
  const missing = firstMissing(rule.reads, facts);
  if (missing === undefined) return rule.judge(facts, candidate);
  return { judgement: 'cannot-tell', reason: () => say`${missing} is not known` };
}

/** The first of these facts that is not known. */
export function firstMissing(
  reads: readonly (keyof CaseFacts)[],
  facts: CaseFacts,
): keyof CaseFacts | undefined {
  for (let i = 0; i < reads.length; i++) {
    const key = reads[i] as keyof CaseFacts;
    if ((facts[key] as unknown) === undefined) return key;
  }
  return undefined;
}

/*
 * A tally has five bits for each judgement. Hundreds of candidates each keep one: as objects they cost more to collect
 * than to judge.
 */
const MASK = 31;
/** Where a kind of verdict is counted in a tally. */
export const placeOf: Readonly<Record<Judgement, number>> = {
  refuse: 0,
  poor: 5,
  'cannot-tell': 10,
  acceptable: 15,
  good: 20,
  'not-applicable': 25,
};

/** Tally of one verdict, as ranking counts it: see `ownCriterion`. */
export function unitOf({ ownCriterion }: AnyRule, judgement: Judgement): number {
  const elsewhere = ownCriterion === true && judgement === 'acceptable';
  return 1 << placeOf[elsewhere ? 'good' : judgement];
}

/** Tally of so many that cannot be told. */
export const untold = (rules: number): number => rules << placeOf['cannot-tell'];

/** How many verdicts of a kind a tally counts. */
export const countIn = (tally: number, judgement: Judgement): number => countAt(tally, placeOf[judgement]);

/** The same by the place of that kind in a tally. */
export const countAt = (tally: number, place: number): number => (tally >> place) & MASK;

/** Whether any verdict of a tally is a refusal. */
export const refuses = (tally: number): boolean => (tally & MASK) !== 0;
