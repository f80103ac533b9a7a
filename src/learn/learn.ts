/** Outcomes of a shop become two numbers of its model, with how far to trust them. Pure: the same outcomes give the same. */
import type { Outcome } from '../order/outcome-types.ts';
import type { Problem } from '../order/problem.ts';
import type { Buckle, Order, Shop } from '../order/types.ts';
import { chanceOf } from '../geometry/logistic.ts';
import { outcomeResults, type OutcomeResult } from '../sources/outcome-results.ts';
import { bySize, layersOn } from '../stock/buckles.ts';
import { evidenceOf, type Evidence } from './evidence.ts';
import { clearanceLearning, giveLearning, rubOdds } from './models.ts';
import { refit, type Refit } from './refit.ts';

export interface Learned {
  readonly shop: Shop;
  readonly evidence: readonly Evidence[];
  /** How many of each result. */
  readonly counts: readonly { readonly result: OutcomeResult; readonly count: number }[];
  readonly clearance: Refit;
  readonly give: Refit;
  /** Chance of coming to rub by clearance over k, before and after, for a picture. */
  readonly curve: readonly { readonly clearance: number; readonly before: number; readonly after: number }[];
  /** The same at the least clearance, below which a spec is refused. */
  readonly atFloor: { readonly before: number; readonly after: number };
}

/** What evidence teaches. */
export function learnFrom(evidence: readonly Evidence[], shop: Shop): Learned {
  const clearance = refit(clearanceLearning(evidence));
  const at = (inches: number): { before: number; after: number } => ({
    before: rubChance(inches, clearance.numbersBefore),
    after: rubChance(inches, clearance.numbers),
  });
  return {
    shop,
    evidence,
    counts: outcomeResults.map((result) => ({
      result,
      count: evidence.filter((each) => each.result === result).length,
    })),
    clearance,
    curve: Array.from({ length: 41 }, (_, i) => ({ clearance: 0.5 + i / 20, ...at(0.5 + i / 20) })),
    atFloor: at(shop.model['floor-clearance']),
    give: refit(giveLearning(evidence, shop.model)),
  };
}

/** Chance that a cinch whose clearance (over k) is known without a spread comes to rub, by the numbers of a refit. */
const rubChance = (clearance: number, [required = 0, logSoftness = 0]: readonly number[]): number =>
  chanceOf(rubOdds({ value: clearance, sd: 0 }, { required, logSoftness }, []));

export type EvidenceRead =
  | { readonly ok: true; readonly evidence: readonly Evidence[] }
  | { readonly ok: false; readonly problems: readonly Problem[] };

/**
 * Outcomes against the orders they are about and the shop that tied them. Faults: an order that is not among `orders`, a buckle the
 * shop does not have or that does not take the strands, a cinch that cannot be laid on that horse.
 */
export function evidenceFrom(
  outcomes: readonly Outcome[],
  orders: ReadonlyMap<string, Order>,
  shop: Shop,
): EvidenceRead {
  const problems: Problem[] = [];
  const evidence = outcomes.flatMap((outcome) => {
    const read = evidenceOfOne(outcome, orders, shop);
    if (read.ok) return [read.evidence];
    problems.push(read.problem);
    return [];
  });
  return problems.length > 0 ? { ok: false, problems } : { ok: true, evidence };
}

type One = { ok: true; evidence: Evidence } | { ok: false; problem: Problem };

function evidenceOfOne(outcome: Outcome, orders: ReadonlyMap<string, Order>, shop: Shop): One {
  const { tied, days, result } = outcome;
  const order = orderFor(outcome, orders);
  if (order === undefined) return unknownOrder(outcome, orders);
  const buckle = buckleFor(outcome, shop);
  if (!buckle.ok) return buckle;
  const layers = layersOn(buckle.buckle, tied.strands);
  if (layers === undefined) {
    const expected = `strands that the buckle ${buckle.buckle.id} takes: no shop could tie this`;
    return fault(outcome, ['tied', 'strands'], { expected });
  }
  const { style, strands, length } = tied;
  const spec = { style, strands, length, buckle: buckle.buckle, layers };
  const evidence = evidenceOf({ order, spec, days, result }, shop.model);
  if (evidence !== undefined) return { ok: true, evidence };
  const expected = `a cinch that can be tied: a ${style} of this length has no side left below the buckle to flare in`;
  return fault(outcome, ['tied', 'length'], { expected });
}

function fault(outcome: Outcome, path: readonly string[], words: { expected: string; hint?: string }): One {
  return { ok: false, problem: outcome.locate({ path: '', ...words }, path) };
}

/** The pair of the outcome itself comes before that of the order of the same number. */
function orderFor({ order, pair }: Outcome, orders: ReadonlyMap<string, Order>): Order | undefined {
  if (pair !== undefined) return { order: order ?? '', quantity: 1, ...pair };
  return order === undefined ? undefined : orders.get(order);
}

function unknownOrder(outcome: Outcome, orders: ReadonlyMap<string, Order>): One {
  const many = String(orders.size);
  return fault(outcome, ['order'], {
    expected:
      orders.size === 0
        ? 'a horse and a saddle in the outcome: no orders were named'
        : `an order among those that --orders names (${many})`,
    hint:
      orders.size === 0
        ? 'name the files or folders with the orders: --orders orders/'
        : 'or write the horse and the saddle into the outcome',
  });
}

/** The buckle named, or the smallest that takes the strands. */
function buckleFor(
  outcome: Outcome,
  { buckles }: Shop,
): { ok: true; buckle: Buckle } | (One & { ok: false }) {
  const { buckle: id, strands } = outcome.tied;
  const names = buckles.map((each) => each.id);
  const found =
    id === undefined
      ? [...buckles].sort(bySize).find((each) => layersOn(each, strands) !== undefined)
      : buckles.find((each) => each.id === id);
  if (found !== undefined) return { ok: true, buckle: found };
  const path = ['tied', id === undefined ? 'strands' : 'buckle'];
  const expected =
    id === undefined
      ? 'strands that some buckle of the shop file takes: no shop could tie this'
      : `a buckle of the shop file: ${names.join(', ')}`;
  return { ok: false, problem: outcome.locate({ path: '', expected }, path) };
}
