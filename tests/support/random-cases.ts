/** Horses, saddles and cinches from a seed. */
import { caseFactsOf as seenBy } from '../../src/advice/current.ts';
import { factsOf } from '../../src/horse/facts.ts';
import type { Candidate } from '../../src/cinch/candidate.ts';
import { lay } from '../../src/cinch/lay.ts';
import { sideOf } from '../../src/cinch/side.ts';
import { seededRandom, type Random } from '../../src/math/random.ts';
import type { Buckle, Order, Shop } from '../../src/order/types.ts';
import type { CaseFacts } from '../../src/rules/rule.ts';
import { layersOn } from '../../src/cinch/buckles.ts';
import { defaultShop } from '../../src/cinch/default-shop.ts';
import { styleIds } from '../../src/cinch/styles.ts';
import { pick } from './draw.ts';

export interface Case {
  readonly facts: CaseFacts;
  readonly candidate: Candidate;
}

interface Draw {
  readonly seed: number;
  readonly horses: number;
  readonly cinches: number;
}

/** All that rules may see. */
export const caseFactsOf = (order: Order, shop: Shop = defaultShop): CaseFacts =>
  seenBy(factsOf(order, shop.model), shop);

/** Ponies to drafts, sensible candidates and absurd ones. */
export function casesFor({ seed, horses, cinches }: Draw): Case[] {
  const random = seededRandom(seed);
  const found: Case[] = [];
  for (let h = 0; h < horses; h++) {
    const facts = caseFactsOf(randomOrder(random, h));
    const side = sideOf(facts);
    for (let c = 0; c < cinches; c++) {
      const buckle = pick(random, defaultShop.buckles);
      const candidate = lay(randomSpec(random, buckle), side);
      if (candidate !== undefined) found.push({ facts, candidate });
    }
  }
  return found;
}

function randomSpec(random: Random, buckle: Buckle) {
  const strands = Math.round(between(random, 7, 35));
  return {
    style: pick(random, styleIds),
    strands,
    buckle,
    layers: layersOn(buckle, strands) ?? (0 as const),
    length: Math.round(between(random, 18, 42)),
  };
}

export function randomOrders(seed: number, count: number): Order[] {
  const random = seededRandom(seed);
  return Array.from({ length: count }, (_, i) => randomOrder(random, i));
}

/** Every optional part is sometimes missing. */
function randomOrder(random: Random, index: number): Order {
  const maybe = <T>(value: T): T | undefined => (random.uniform() < 0.5 ? value : undefined);
  const girth = between(random, 48, 96);
  const fraction = pick(random, [1, 7 / 8, 3 / 4, 5 / 8, 1 / 2]);
  return {
    order: `random ${index}`,
    quantity: pick(random, [1, 1, 2, 20]),
    use: maybe(pick(random, ['roping', 'ranch', 'trail', 'barrels', 'packing'] as const)),
    current: maybe({
      style: pick(random, styleIds),
      strands: pick(random, [13, 17, 21, 27]),
      length: maybe(pick(random, [26, 30, 34])),
      buckle: maybe(pick(random, defaultShop.buckles).id),
    }),
    colors: maybe({
      body: [pick(random, ['natural', 'buckskin', 'plum'])],
      accent: [pick(random, ['natural', 'turquoise', 'sage', 'plum'])],
    }),
    horse: {
      heartGirth: maybe(girth),
      height: girth * 0.83,
      elbowRoom: maybe(between(random, 2, 7)),
      barrel: maybe(pick(random, ['slab-sided', 'average', 'round'] as const)),
      withers: maybe(pick(random, ['low', 'average', 'high'] as const)),
      condition: maybe(pick(random, [1, 5, 9])),
      kind: maybe(pick(random, ['pony', 'stock', 'draft', 'mule'] as const)),
      trouble:
        random.uniform() < 0.3 ? [pick(random, ['saddle-rolls', 'elbow-gall', 'buckle-rub'] as const)] : [],
    },
    saddle: {
      rigging:
        random.uniform() < 0.3
          ? { kind: 'measured', setBack: between(random, 0, 9) }
          : { kind: 'named', name: String(fraction), fraction },
      style: maybe(pick(random, ['ring', 'flat-plate', 'in-skirt', 'dropped'] as const)),
      ringToRing: maybe(between(random, 30, 56)),
      barSpan: maybe(between(random, 10, 16)),
    },
  };
}

const between = (random: Random, low: number, high: number): number => low + (high - low) * random.uniform();

/** Average spine to ring, and ring setback on 12 in bars [common practice, no source]. */
const usual = {
  drops: { ring: 14, 'flat-plate': 14.5, 'in-skirt': 16, dropped: 17 },
  fractions: [1, 7 / 8, 3 / 4, 5 / 8, 1 / 2],
} as const;

/** Horse and saddle go together. A horse known by height has no ring-to-ring tape, which would reveal its girth. */
export function likelyOrders(seed: number, count: number, { taped }: { taped: boolean }): Order[] {
  const random = seededRandom(seed);
  return Array.from({ length: count }, (_, i) => likelyOrder(random, taped, i));
}

function likelyOrder(random: Random, taped: boolean, index: number): Order {
  const told = <T>(share: number, value: T): T | undefined =>
    random.uniform() < share || taped ? value : undefined;
  const girth = between(random, 58, 86);
  const k = girth / 72;
  const room = Math.max(1.9 * k, (4 + 0.8 * random.normal()) * k);
  const style = pick(random, ['ring', 'flat-plate', 'in-skirt', 'dropped'] as const);
  const ringToRing = girth - 2 * usual.drops[style] * k + 2 * random.normal();
  const fraction = pick(random, usual.fractions);
  const setBack = 12 * (1 - fraction) + 0.5 * random.normal();
  const named = { kind: 'named', name: String(fraction), fraction } as const;
  const heartGirth = told(0.7, girth);
  return {
    order: `likely ${index}`,
    quantity: 1,
    use: pick(random, ['roping', 'ranch', 'trail'] as const),
    horse: {
      heartGirth,
      // Model: girth in cm = 1.104 height + 15.7.
      height: (girth - 15.7 / 2.54) / 1.104,
      elbowRoom: told(0.3, room),
      barrel: pick(random, [undefined, 'slab-sided', 'average', 'round'] as const),
      trouble: random.uniform() < 0.2 ? [pick(random, ['saddle-rolls', 'elbow-gall'] as const)] : [],
    },
    saddle: {
      rigging: random.uniform() < (taped ? 0.5 : 0.2) ? { kind: 'measured', setBack } : named,
      style: told(0.5, style),
      ringToRing: heartGirth === undefined ? undefined : told(0.5, ringToRing),
    },
  };
}
