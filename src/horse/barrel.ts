/** The barrel as an ellipse, by girth and shape or depth. */
import { solveEllipse, solveRatioFromDepth, type Ellipse } from '../math/ellipse.ts';
import type { Horse } from '../order/types.ts';
import type { Model } from '../numbers/numbers.ts';
import { type Estimate, type Working, short } from './estimate.ts';
import { weighed } from './weigh.ts';

export interface Barrel {
  /** Width over depth. */
  readonly ratio: Estimate;
  readonly ellipse: Ellipse;
}

/** A taped depth is weak evidence, averaged with the usual. */
function barrelRatio(said: Horse['barrel'], girth: number, model: Model): Estimate {
  const sd = model['ratio-sd'];
  if (said === undefined)
    return { value: model['ratio-average'], sd, kind: 'assumed', basis: 'average barrel' };
  if (typeof said === 'string') {
    return { value: model[`ratio-${said}`], sd, kind: 'told', basis: `customer says ${said} barrel` };
  }
  const solved = solveRatioFromDepth(girth, said.depth);
  if (solved === undefined) {
    return {
      value: model['ratio-average'],
      sd,
      kind: 'assumed',
      basis: 'average barrel; that girth and depth do not go together',
    };
  }
  return weigh(model['ratio-average'], solved, model);
}

function weigh(prior: number, solved: number, model: Model): Estimate {
  const a = model['ratio-sd'] ** -2;
  const b = model['ratio-from-depth-sd'] ** -2;
  const value = Math.min(1.1, Math.max(0.45, (a * prior + b * solved) / (a + b)));
  const basis = `${short(solved)} by girth and depth, weak evidence, averaged with the usual`;
  return { value, sd: (a + b) ** -0.5, kind: 'measured', basis };
}

/** Has exactly this girth. */
export function barrelOf(horse: Horse, girth: number, model: Model): Barrel {
  const ratio = barrelRatio(horse.barrel, girth, model);
  return { ratio, ellipse: solveEllipse(girth, ratio.value) };
}

/** Averages in the photo's depth; a taped depth wins. */
export function withPhotoDepth(barrel: Barrel, { girth, depth }: PhotoDepth, model: Model): Barrel {
  const { ratio } = barrel;
  const solved = ratio.kind === 'measured' ? undefined : solveRatioFromDepth(girth.value, depth.value);
  if (solved === undefined) return barrel;
  const at = (g: number, d: number): number => solveRatioFromDepth(g, d) ?? solved;
  const byDepth = at(girth.value, depth.value + depth.sd) - at(girth.value, depth.value - depth.sd);
  const byGirth = at(girth.value + girth.sd, depth.value) - at(girth.value - girth.sd, depth.value);
  const sd = Math.hypot(model['ratio-from-depth-sd'], byDepth / 2, byGirth / 2);
  const basis = `${short(solved)} by depth in the photo, weak evidence, averaged with: ${ratio.basis}`;
  const both = weighed(ratio, { value: solved, sd }, basis);
  const value = Math.min(1.1, Math.max(0.45, both.value));
  return { ratio: { ...both, value }, ellipse: solveEllipse(girth.value, value) };
}

interface PhotoDepth {
  readonly girth: Estimate;
  readonly depth: Pick<Estimate, 'value' | 'sd'>;
}

/** Working of the half-axes. */
export function barrelWorking(barrel: Barrel, girth: number): Working[] {
  const { halfWidth, halfDepth } = barrel.ellipse;
  return [
    {
      symbol: 'a',
      sum: `half-width of the ellipse with perimeter ${short(girth)} and ratio ${short(barrel.ratio.value)}`,
      result: `${short(halfWidth)} in`,
    },
    {
      symbol: 'b',
      sum: `${short(halfWidth)} / ${short(barrel.ratio.value)}`,
      result: `${short(halfDepth)} in`,
    },
  ];
}
