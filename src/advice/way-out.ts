/** When nothing passes: how far back the ring must hang. */
import { factsOf } from '../horse/facts.ts';
import type { CaseFacts } from '../rules/rule.ts';
import { criteriaFor } from './criteria.ts';
import { caseFactsOf } from './current.ts';
import type { Judged } from './judge.ts';
import { make } from './make.ts';
import { rank } from './rank.ts';

export interface WayOut {
  /** Inches farther back. */
  readonly further: number;
  readonly first: Judged;
}

/** Inches on the average horse; at most half a bar span. */
const STEP = 0.25;
const MOST = 6;

/** The least set-back where something passes, not poor at the elbow. */
export function wayOut(facts: CaseFacts): WayOut | undefined {
  const now = facts.ring.setBack.value;
  for (let further = STEP; further <= MOST; further += STEP) {
    const first = firstAt(now + further * facts.k, facts);
    if (first !== undefined) return { further: further * facts.k, first };
  }
  return undefined;
}

function firstAt(setBack: number, { order, model, shop }: CaseFacts): Judged | undefined {
  const rigging = { kind: 'measured', setBack } as const;
  const moved = { ...order, saddle: { ...order.saddle, rigging } };
  const facts = caseFactsOf(factsOf(moved, model), shop);
  const made = make(facts).flatMap((tied) => (tied.made === undefined ? [] : [tied.made]));
  const [first] = rank(made, criteriaFor(facts, made));
  return first?.judgementOf('elbow-clearance') === 'poor' ? undefined : first;
}
