/** The materials of a backlog for scripts, sorted by order number, lengths in inches. */
import { phraseText } from '../units/text.ts';
import type { CutPutUp, MaterialPlan } from '../work/cutting/types.ts';
import type { Buy, CordNeed, Materials } from '../work/materials.ts';
import type { Share } from '../work/shelf.ts';
import type { BacklogResult } from '../words/about-backlog.ts';
import { inchesOf } from '../units/feet.ts';
import { jsonText } from '../pages/json.ts';
import { candidateValue, failedValue } from './shared-values.ts';
import type { Values } from './table.ts';
import { lengthBasis } from '../work/row.ts';

/** `{ schema, results, cord, hardware, buy, plan }`. */
export function materialsJson(materials: Materials, results: readonly BacklogResult[]): string {
  const { day, cords, hardware, buy, plan } = materials;
  return jsonText({
    schema: 'cinchwright/materials/1',
    day,
    results: results.map((result) => resultValue(result, materials.shares)),
    cord: cords.map(cordValue),
    hardware: hardware.map(({ kind, id, metal, needed, onHand, short, orderable, orders }) => ({
      kind,
      id,
      metal: metal ?? null,
      needed,
      onHand,
      short,
      orderable,
      orders: [...orders],
    })),
    buy: buy.map(buyValue),
    plan: {
      proven: plan.proven,
      gap: plan.gap,
      materials: plan.materials.map((material) => materialValue(material, materials)),
    },
  });
}

/** The same in every document about a backlog. */
export function resultValue(result: BacklogResult, shares: ReadonlyMap<string, Share>): Values {
  if (!result.ok) return failedValue(result);
  const { file, order, paper, none } = result;
  if (paper === undefined) return { order, file, reason: none };
  return {
    order: paper.key,
    file,
    takes: paper.takes,
    quantity: paper.ticket.quantity,
    lengthBasis: lengthBasis(paper.ticket.measured),
    spec: candidateValue(paper.candidate),
    ...(paper.doubts.length === 0
      ? {}
      : { remarks: paper.doubts.map((doubt) => phraseText(doubt, 'in', 'decimals')) }),
    ...(paper.welfare.length === 0
      ? {}
      : { welfare: paper.welfare.map((phrase) => phraseText(phrase, 'in', 'decimals')) }),
    ...shelfValue(shares.get(paper.key)),
  };
}

/** Cord lengths in inches. */
export const shelfValue = (share: Share | undefined): Values => ({
  shelf: share?.shelf ?? null,
  waits: (share?.lacks ?? []).map(({ kind, name, ply, amount, supply, comes, swap }) => ({
    kind,
    ...(kind === 'cord'
      ? { color: name, ply: ply ?? null, length: inchesOf(amount) }
      : { id: name, count: amount }),
    supply,
    comes: comes ?? null,
    ...(swap === undefined ? {} : { swap }),
  })),
});

const cordValue = ({ color, ply, pieces, needed, onHand, near, lots, short, orders }: CordNeed): Values => ({
  color: color ?? null,
  ply,
  count: pieces,
  length: inchesOf(needed),
  lengthOnHand: onHand === undefined ? null : inchesOf(onHand),
  nearestColor: near ?? null,
  lots: lots.map((lot) => ({
    lot: lot.bought || lot.lot === '' ? null : lot.lot,
    origin: lot.bought ? 'bought' : 'shelf',
    count: lot.pieces,
    length: inchesOf(lot.length),
  })),
  shortages: short.map(({ order, why, total, pieces: own }) => ({
    order,
    reason: why,
    count: own.length,
    length: inchesOf(total),
  })),
  orders: [...orders],
});

function buyValue(buy: Buy): Values {
  switch (buy.kind) {
    case 'put-up':
      return {
        kind: buy.kind,
        color: buy.color,
        ply: buy.ply,
        count: buy.count,
        length: inchesOf(buy.length),
        comes: buy.comes ?? null,
      };
    case 'cord':
      return {
        kind: buy.kind,
        color: buy.color,
        ply: buy.ply,
        length: inchesOf(buy.length),
        longest: inchesOf(buy.longest),
        comes: buy.comes ?? null,
      };
    default:
      return { kind: buy.kind, id: buy.id, count: buy.count, comes: buy.comes ?? null };
  }
}

function materialValue(material: MaterialPlan, materials: Materials): Values {
  const { color, ply, putUps, score, proven, returned } = material;
  return {
    color,
    ply,
    proven,
    short: { ...score.short },
    bought: { ...score.bought },
    opened: { ...score.opened },
    waste: { value: inchesOf(score.waste.value), bound: inchesOf(score.waste.bound) },
    returned: inchesOf(returned),
    putUps: putUps.map((putUp) => putUpValue(putUp, materials)),
  };
}

const putUpValue = (
  { origin, lot, copy, length, pieces, leftover, goesBack }: CutPutUp,
  { cuts }: Materials,
): Values => ({
  origin,
  lot: origin === 'bought' || lot === '' ? null : lot,
  copy,
  length: inchesOf(length),
  cuts: pieces.map(({ cut, number, order, length: own }) => ({
    order,
    note: cuts.get(cut)?.use ?? null,
    number,
    length: inchesOf(own),
  })),
  leftover: inchesOf(leftover),
  goesBack,
});
