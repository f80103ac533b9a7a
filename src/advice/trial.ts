/** Everything the shop could tie meets the rules. */
import { Ground } from '../fit/ground.ts';
import type { CaseFacts } from '../rules/rule.ts';
import { candidatesFor } from './candidates.ts';
import { judgeFor, type Judged } from './judge.ts';

/** Every candidate of an order, judged, in the order in which they are made. */
export const judgedFor = (facts: CaseFacts): Judged[] =>
  candidatesFor(new Ground(facts), facts.shop).map(judgeFor(facts));
