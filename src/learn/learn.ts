/** Turns a shop's outcomes into two numbers of its model. */
import type { Outcome, OutcomeParts } from '../order/outcome-types.ts';
import type { Problem } from '../yaml/problem.ts';
import type { Buckle, Order, Shop } from '../order/types.ts';
import { chanceOf } from '../math/logistic.ts';
import { outcomeResults, type OutcomeResult } from '../numbers/outcome-results.ts';
import { bySize, layersOn, type Layers } from '../cinch/buckles.ts';
import { contraries, type Contrary } from './alike.ts';
import { floorOf } from './entries.ts';
import { evidenceOf, type Evidence } from './evidence.ts';
import { clearanceLearning, giveLearning, rubOdds } from './models.ts';
import { refit, type Refit } from './refit.ts';

export interface Learned {
  readonly shop: Shop;
  readonly evidence: readonly Evidence[];
  readonly counts: readonly { readonly result: OutcomeResult; readonly count: number }[];
  readonly contrary: readonly Contrary[];
  readonly clearance: Refit;
  readonly give: Refit;
  /** Chance of a rub by clearance over k, for a picture. */
  readonly curve: readonly { readonly clearance: number; readonly before: number; readonly after: number }[];
  /** The same at the least clearance; `moved` is after, at the new one. */
  readonly atFloor: { readonly before: number; readonly after: number; readonly moved: number };
}

/** Fits both numbers. */
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
    contrary: contraries(evidence),
    clearance,
    curve: Array.from({ length: 41 }, (_, i) => ({ clearance: 0.5 + i / 20, ...at(0.5 + i / 20) })),
    atFloor: {
      ...at(shop.model['floor-clearance']),
      moved: at(floorOf({ clearance, shop }).value).after,
    },
    give: refit(giveLearning(evidence, shop.model)),
  };
}

/** At an exact clearance over k. */
const rubChance = (clearance: number, [required = 0, logSoftness = 0]: readonly number[]): number =>
  chanceOf(rubOdds({ value: clearance, sd: 0 }, { required, logSoftness }, []));

export type EvidenceRead =
  | { readonly ok: true; readonly evidence: readonly Evidence[] }
  | { readonly ok: false; readonly problems: readonly Problem[] };

/**
 * Problems: unknown order, buckle that the shop lacks or that does not take the strands, cinch that does not
 * fit.
 */
export function evidenceFrom(
  outcomes: readonly Outcome[],
  orders: ReadonlyMap<string, Order>,
  shop: Shop,
): EvidenceRead {
  const problems: Problem[] = [];
  const evidence = outcomes.flatMap((outcome) => {
    const faults = partFaults({ ...outcome, hasPair: outcome.pair !== undefined }, orders, shop);
    const read = faults.length > 0 ? faults : laidOf(outcome, orders, shop);
    if (!Array.isArray(read)) return [read];
    problems.push(...read);
    return [];
  });
  return problems.length > 0 ? { ok: false, problems } : { ok: true, evidence };
}

/** Checked even when the rest cannot be read. */
export function partFaults(
  { order, hasPair, tied, locate }: OutcomeParts,
  orders: ReadonlyMap<string, Order>,
  shop: Shop,
): Problem[] {
  const unknown = order !== undefined && !hasPair && !orders.has(order) ? [unknownOrder(locate, orders)] : [];
  const buckle = tied === undefined ? undefined : buckleFor({ tied, locate }, shop);
  return [...unknown, ...(buckle?.ok === false ? [buckle.problem] : [])];
}

function laidOf(outcome: Outcome, orders: ReadonlyMap<string, Order>, shop: Shop): Evidence | Problem[] {
  const { tied, days, result, locate } = outcome;
  const order = orderFor(outcome, orders);
  const buckle = buckleFor(outcome, shop);
  if (order === undefined || !buckle.ok) return [];
  const { style, strands, length } = tied;
  const spec = { style, strands, length, buckle: buckle.buckle, layers: buckle.layers };
  const evidence = evidenceOf({ order, spec, days, result }, shop.model);
  if (evidence !== undefined) return evidence;
  const expected = `a longer cinch: a ${style} this short has no room below the buckle to flare`;
  return [locate({ path: '', expected }, ['tied', 'length'])];
}

/** The outcome's own horse and saddle come first. */
function orderFor({ order, pair }: Outcome, orders: ReadonlyMap<string, Order>): Order | undefined {
  if (pair !== undefined) return { order: order ?? '', quantity: 1, ...pair };
  return order === undefined ? undefined : orders.get(order);
}

function unknownOrder(locate: Outcome['locate'], orders: ReadonlyMap<string, Order>): Problem {
  const none = orders.size === 0;
  const expected = none
    ? 'a horse and a saddle in the outcome, as no orders were named'
    : 'an order number found in --orders';
  const hint = none
    ? 'name the order files or folders: --orders orders/'
    : 'or write the horse and the saddle into the outcome';
  return locate({ path: '', expected, hint }, ['order']);
}

type BuckleRead = { ok: true; buckle: Buckle; layers: Layers } | { ok: false; problem: Problem };

function buckleFor({ tied, locate }: Pick<Outcome, 'tied' | 'locate'>, { buckles }: Shop): BuckleRead {
  const { buckle: id, strands } = tied;
  const found =
    id === undefined
      ? [...buckles].sort(bySize).find((each) => layersOn(each, strands) !== undefined)
      : buckles.find((each) => each.id === id);
  const layers = found === undefined ? undefined : layersOn(found, strands);
  if (found !== undefined && layers !== undefined) return { ok: true, buckle: found, layers };
  const byName = id !== undefined && found === undefined;
  const expected = byName
    ? `a buckle in the shop file: ${buckles.map((each) => each.id).join(', ')}`
    : found === undefined
      ? 'a strand count that some buckle in the shop file takes'
      : `a strand count that the ${found.id} buckle takes`;
  return { ok: false, problem: locate({ path: '', expected }, ['tied', byName ? 'buckle' : 'strands']) };
}
