/** Everything the shop could tie for one order meets the rules: style x strands x buckle that takes it x length step. */
import { lengthSteps } from '../facts/length.ts';
import { Ground } from '../fit/ground.ts';
import { layOn, type LaidCandidate } from '../fit/lay.ts';
import type { Buckle, Shop } from '../order/types.ts';
import type { CaseFacts } from '../rules/rule.ts';
import { bySize, layersOn, type Layers } from '../stock/buckles.ts';
import { styleIds } from '../stock/styles.ts';
import { countIn, Judge, MOST_RULES, type Judged } from './judge.ts';
import type { Criterion } from './criteria.ts';

/** Strands on a buckle that takes them. */
interface Tied {
  readonly strands: number;
  readonly buckle: Buckle;
  readonly layers: Layers;
}

/** All candidates of one order, laid and judged, in a fixed order that does not depend on the order of the shop's lists. */
export class Trial {
  readonly #judge: Judge;
  readonly #laid: LaidCandidate[] = [];
  readonly #tallies: number[] = [];

  constructor(facts: CaseFacts) {
    const ground = new Ground(facts);
    const lengths = lengthSteps(facts.lengthNeed.target.value, facts.shop.lengths);
    const { all, counts } = tiedBy(facts.shop);
    this.#judge = new Judge(facts, {
      strands: counts,
      buckles: facts.shop.buckles.length,
      lengths: lengths.length,
    });
    for (const { strands, buckle, layers } of all) {
      const hangs = lengths.map((length) => ground.hang(buckle, length));
      for (const style of styleIds) {
        const made = { style, strands, layers };
        for (const hang of hangs) this.#add(layOn(hang, made, ground));
      }
    }
  }

  #add(candidate: LaidCandidate | undefined): void {
    if (candidate === undefined) return;
    this.#laid.push(candidate);
    this.#tallies.push(this.#judge.tallyOf(candidate));
  }

  /** All that can be tied, in the order in which they were laid. */
  get all(): Judged[] {
    return this.#laid.map((candidate, i) => this.#judge.judged(candidate, this.#tallies[i]));
  }

  /**
   * What passes, by style and strand count. Of each only those that the first criteria leave, as far as these count
   * verdicts.
   */
  leading(criteria: readonly Criterion[]): Judged[][] {
    const other = criteria.findIndex(({ counts }) => counts === undefined);
    const counted = criteria.slice(0, other).flatMap(({ counts }) => counts ?? []);
    const groups = new Map<number, { least: number; first: Judged[] }>();
    for (let i = 0; i < this.#laid.length; i++) {
      const tally = this.#tallies[i] as number;
      if (countIn(tally, 'refuse') > 0) continue;
      let own = 0;
      for (const judgement of counted) own = MOST_RULES * own + countIn(tally, judgement);
      const candidate = this.#laid[i] as LaidCandidate;
      const key = candidate.strands * styleIds.length + candidate.styleNo;
      let group = groups.get(key);
      if (group === undefined || own < group.least) groups.set(key, (group = { least: own, first: [] }));
      if (own === group.least) group.first.push(this.#judge.judged(candidate, tally));
    }
    return [...groups.values()].map(({ first }) => first);
  }
}

/** What a shop ties: fewest strands first, then the smallest buckle. */
interface TiedList {
  readonly all: readonly Tied[];
  /** How many different strand counts. */
  readonly counts: number;
}

// A backlog asks the same shop again and again.
const known = new WeakMap<Shop, TiedList>();

function tiedBy(shop: Shop): TiedList {
  let tied = known.get(shop);
  if (tied === undefined) known.set(shop, (tied = listTied(shop)));
  return tied;
}

function listTied(shop: Shop): TiedList {
  const buckles = [...shop.buckles].sort(bySize);
  const all: Tied[] = [];
  const first = shop.strands.min + ((shop.strands.min + 1) % 2);
  for (let strands = first; strands <= shop.strands.max; strands += 2) {
    for (const buckle of buckles) {
      const layers = layersOn(buckle, strands);
      if (layers !== undefined) all.push({ strands, buckle, layers });
    }
  }
  return { all, counts: new Set(all.map(({ strands }) => strands)).size };
}
