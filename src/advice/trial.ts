/** Everything the shop could tie meets the rules. */
import { groundOf } from '../fit/ground.ts';
import type { CaseFacts } from '../rules/rule.ts';
import { candidatesFor } from './candidates.ts';
import { judgeFor, type Judged } from './judge.ts';

/** Every candidate of an order, judged, in the order in which they are made. */
export const judgedFor = (facts: CaseFacts): Judged[] =>
  candidatesFor(groundOf(facts), facts.shop).map(judgeFor(facts));
