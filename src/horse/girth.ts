/** Heart girth, taped or from height, and size factor k. */
import type { Horse, Order } from '../order/types.ts';
import type { Model } from '../numbers/numbers.ts';
import { draftGirthRatio, girthByCondition, heightGirthFit } from '../numbers/girth-fit.ts';
import { type Estimate, type Working, short } from './estimate.ts';
import { ringTapesWorking, type Girth } from './girth-by-ring.ts';

const CM = 2.54;

/** Inches, taped or from height. */
export function girthOf(horse: Horse, model: Model): Estimate {
  const { height, kind, condition } = horse;
  const fitted = height === undefined ? undefined : girthFromHeight(height, kind, condition);
  if (horse.heartGirth === undefined) return fitted ?? averageGirth(model);
  const taped = model['girth-taped-sd'];
  return {
    value: horse.heartGirth,
    sd: Math.min(taped, fitted?.sd ?? taped),
    kind: 'measured',
    basis: 'taped',
  };
}

const conditionFactor = (condition: number = girthByCondition.usual): number =>
  1 + girthByCondition.perPoint * (condition - girthByCondition.usual);

/** Inches. Spreads of fit and breed add in quadrature. */
export function girthFromHeight(height: number, kind: Horse['kind'], condition?: number): Estimate {
  const cm = height * CM;
  const { slope, intercept, fitSd, withinBreedSd, otherKindFactor } = heightGirthFit;
  const spread = (line: number): number => Math.hypot(line * fitSd, withinBreedSd) / CM;
  const factor = conditionFactor(condition);
  const scored = (animal: string): string =>
    condition === undefined ? '' : `, for a ${animal} of condition ${condition}`;
  if (kind === 'draft') {
    const value = (factor * draftGirthRatio * cm) / CM;
    const basis = `from height, by the average of one published draft breed${scored('horse')}`;
    return { value, sd: spread(otherKindFactor), kind: 'assumed', basis };
  }
  const value = (factor * (slope * cm + intercept)) / CM;
  if (kind === 'pony' || kind === 'mule' || kind === 'donkey') {
    const basis = `from height, by a fit for light horses${scored(kind)}; we found no figure for a ${kind}`;
    return { value, sd: spread(otherKindFactor), kind: 'assumed', basis };
  }
  const basis = `from height, by a fit to published breed averages${scored('horse')}`;
  return { value, sd: spread(1), kind: 'assumed', basis };
}

/** A checked order never gets here. */
function averageGirth(model: Model): Estimate {
  return { value: model['average-girth'], sd: 6, kind: 'assumed', basis: 'neither height nor girth given' };
}

/** Girth over the average horse's. */
export const sizeFactor = (girth: number, model: Model): number => girth / model['average-girth'];

function heightWorking({ height, kind, condition }: Horse, symbol: string): Working[] {
  if (height === undefined) return [];
  const { slope, intercept } = heightGirthFit;
  const cm = short(height * CM);
  const sum = kind === 'draft' ? `${draftGirthRatio} x ${cm} cm` : `${slope} x ${cm} cm + ${intercept} cm`;
  const usual = short(girthFromHeight(height, kind).value);
  const factor = conditionFactor(condition);
  if (factor === 1) return [{ symbol, sum, result: `${usual} in` }];
  const { value } = girthFromHeight(height, kind, condition);
  return [
    { symbol: `G at condition ${girthByCondition.usual}`, sum, result: `${usual} in` },
    { symbol, sum: `${usual} x ${short(factor)}`, result: `${short(value)} in` },
  ];
}

/** Girth and size factor. */
export function girthWorking(girth: Girth, { horse, saddle }: Order, model: Model): Working[] {
  const byRing = ringTapesWorking(girth, saddle, model);
  const lines =
    girth.kind === 'measured' ? [] : heightWorking(horse, byRing.length > 0 ? 'G by height' : 'G');
  const k = sizeFactor(girth.value, model);
  return [
    ...lines,
    ...byRing,
    { symbol: 'k', sum: `${short(girth.value)} / ${model['average-girth']}`, result: short(k) },
  ];
}
