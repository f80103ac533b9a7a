/** The cutting plan of a shared shelf, and of what we buy. */
import type { Shop } from '../order/types.ts';
import { byText } from '../units/by-text.ts';
import { pick } from '../units/pick.ts';
import { isProven, planCuts, planOf } from './cutting/plan.ts';
import type { CuttingPlan, MaterialPlan, Proven, Score } from './cutting/types.ts';
import { cordKey, cuttingTask, type TicketCut } from './cuts.ts';

/** Both plans as one. */
export function shelfPlan(
  cuts: readonly TicketCut[],
  fromShelf: ReadonlySet<string>,
  shop: Shop,
): CuttingPlan {
  const of = (here: boolean) =>
    cuttingTask(
      cuts.filter(({ id }) => fromShelf.has(id) === here),
      shop,
    );
  const shelf = planCuts({ ...of(true), buyable: [] });
  const bought = planCuts({ ...of(false), onHand: [] });
  const others = new Map(bought.materials.map((material) => [cordKey(material), material]));
  const both = shelf.materials.map((material) => {
    const other = others.get(cordKey(material));
    if (other === undefined) return material;
    return joined(material, other, other.short.length === 0 ? 0 : leastShort(cuts, material, shop));
  });
  const here = new Set(shelf.materials.map(cordKey));
  const rest = bought.materials.filter((material) => !here.has(cordKey(material)));
  const materials = [...both, ...rest].sort((a, b) => byText(a.color, b.color) || a.ply - b.ply);
  return planOf(materials);
}

/** Pieces short in any plan, whoever goes first. */
function leastShort(cuts: readonly TicketCut[], material: MaterialPlan, shop: Shop): number {
  const own = cuts.filter((cut) => cordKey(cut) === cordKey(material));
  return pick(planCuts(cuttingTask(own, shop)).materials, 0).score.short.bound;
}

function joined(a: MaterialPlan, b: MaterialPlan, leastShort: number): MaterialPlan {
  const sum = (part: keyof Score): Proven => ({
    value: a.score[part].value + b.score[part].value,
    bound: a.score[part].bound + b.score[part].bound,
  });
  const score = {
    short: { value: sum('short').value, bound: leastShort },
    ...{ bought: sum('bought'), opened: sum('opened'), waste: sum('waste') },
  };
  return {
    ...a,
    putUps: [...a.putUps, ...b.putUps],
    short: [...a.short, ...b.short],
    toBuy: b.toBuy,
    score,
    proven: isProven(score),
    returned: a.returned + b.returned,
  };
}
