/** The whole of what the shop can say about one order. */
import { assumptionsOf, type Facts } from '../facts/facts.ts';
import type { Assumption } from '../facts/estimate.ts';
import { runFor } from '../facts/length.ts';
import { groundOf } from '../fit/ground.ts';
import type { Shop, Style } from '../order/types.ts';
import type { CaseFacts } from '../rules/rule.ts';
import { cautions } from '../sources/cautions.ts';
import type { Phrase } from '../units/phrase.ts';
import { asksFor, type Ask } from './ask.ts';
import { candidatesFor } from './candidates.ts';
import { criteriaFor } from './criteria.ts';
import { judge, type Judged } from './judge.ts';
import { rank, whyBefore } from './rank.ts';
import { passes, refusedOf, type Refused } from './refused.ts';

/** A spec of the short list: the best buckle and length for its style and strands. */
export interface RankedSpec extends Judged {
  readonly rank: number;
  /** Why it comes before the next one; undefined when there is no next. */
  readonly becauseOf: { readonly criterion: string; readonly words: Phrase } | undefined;
  /** Both even neighbours of its length, with the latigo run each leaves. */
  readonly evenLengths: readonly { readonly length: number; readonly run: number }[];
}

export interface Advice {
  readonly facts: CaseFacts;
  readonly assumptions: readonly Assumption[];
  /** One spec for each style and strand count that passes, best first. */
  readonly specs: readonly RankedSpec[];
  /** Every candidate, passing ones best first, then the refused ones. */
  readonly every: readonly Judged[];
  readonly refused: readonly Refused[];
  /** Styles that cannot be tied at all on this horse: there is no side left below the buckle. */
  readonly impossible: readonly Style[];
  readonly ask: readonly Ask[];
  readonly cautions: readonly string[];
}

/** Candidates meet rules; what passes is ranked. Pure; never throws behind the door. */
export function adviceOn(plain: Facts, shop: Shop): Advice {
  const facts: CaseFacts = { ...plain, shop };
  const judged = candidatesFor(groundOf(plain), shop).map((candidate) => judge(facts, candidate));
  const criteria = criteriaFor(facts);
  const passing = rank(judged.filter(passes), criteria);
  const short = bestOfEach(passing);
  const specs = short.map((entry, i): RankedSpec => {
    const next = short[i + 1];
    const becauseOf = next === undefined ? undefined : whyBefore(entry, next, criteria);
    return { ...entry, rank: i + 1, becauseOf, evenLengths: evenLengths(entry, facts) };
  });
  const tied = new Set(judged.map(({ candidate }) => candidate.style));
  return {
    facts,
    specs,
    assumptions: assumptionsOf(plain),
    every: [...passing, ...judged.filter((entry) => !passes(entry))],
    refused: refusedOf(judged),
    impossible: (['straight', 'high-flare', 'low-flare'] as const).filter((style) => !tied.has(style)),
    ask: asksFor(plain, specs[0], shop),
    cautions,
  };
}

/** The best-ranked variant of each style and strand count, in rank order. */
function bestOfEach(ranked: readonly Judged[]): Judged[] {
  const seen = new Set<string>();
  return ranked.filter(({ candidate }) => {
    const key = `${candidate.style} ${candidate.strands}`;
    if (seen.has(key)) return false;
    seen.add(key);
    return true;
  });
}

function evenLengths({ candidate }: Judged, { lengthNeed }: Facts): { length: number; run: number }[] {
  const below = 2 * Math.floor(lengthNeed.target.value / 2);
  const around =
    candidate.length % 2 === 0 ? [candidate.length - 2, candidate.length + 2] : [below, below + 2];
  return around.map((length) => ({ length, run: runFor(length, lengthNeed) }));
}
