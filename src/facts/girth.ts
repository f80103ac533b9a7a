/** Heart girth: taped, or estimated from the height; and the size factor k that goes with it. */
import type { Horse, Order } from '../order/types.ts';
import type { Model } from '../sources/numbers.ts';
import { heightGirthFit, draftGirthRatio } from '../sources/girth-fit.ts';
import { type Estimate, type Working, short } from './estimate.ts';
import { ringTapesWorking, type Girth } from './girth-by-ring.ts';

const CM = 2.54;

/** Heart girth in inches. Needs `heartGirth` or `height`; the door guarantees one of them. */
export function girthOf(horse: Horse, model: Model): Estimate {
  const fitted = horse.height === undefined ? undefined : girthFromHeight(horse.height, horse.kind);
  if (horse.heartGirth === undefined) return fitted ?? averageGirth(model);
  const taped = model['girth-taped-sd'];
  return {
    value: horse.heartGirth,
    sd: Math.min(taped, fitted?.sd ?? taped),
    kind: 'measured',
    basis: 'taped',
  };
}

/** The fit on published breed means; its own spread and that within a breed add up. Inches in, inches out. */
export function girthFromHeight(height: number, kind: Horse['kind']): Estimate {
  const cm = height * CM;
  const { slope, intercept, fitSd, withinBreedSd, otherKindFactor } = heightGirthFit;
  const spread = Math.hypot(fitSd, withinBreedSd) / CM;
  if (kind === 'draft') {
    const basis = 'from height, by the mean of one published draft breed';
    return { value: (draftGirthRatio * cm) / CM, sd: spread * otherKindFactor, kind: 'assumed', basis };
  }
  const value = (slope * cm + intercept) / CM;
  if (kind === 'pony' || kind === 'mule' || kind === 'donkey') {
    const basis = `from height, by a fit for light horses; no figure was found for a ${kind}`;
    return { value, sd: spread * otherKindFactor, kind: 'assumed', basis };
  }
  return { value, sd: spread, kind: 'assumed', basis: 'from height, by a fit on published breed means' };
}

/** Unreachable behind the door, kept so that the function is total. */
function averageGirth(model: Model): Estimate {
  return { value: model['average-girth'], sd: 6, kind: 'assumed', basis: 'neither height nor girth given' };
}

/** Size factor: girth over that of the average horse. */
export const sizeFactor = (girth: number, model: Model): number => girth / model['average-girth'];

/** How the girth and size factor came about. */
export function girthWorking(girth: Girth, { horse, saddle }: Order, model: Model): Working[] {
  const byRing = ringTapesWorking(girth, saddle, model);
  const lines: Working[] = [];
  if (girth.kind !== 'measured' && horse.height !== undefined) {
    const { slope, intercept } = heightGirthFit;
    const cm = short(horse.height * CM);
    const sum =
      horse.kind === 'draft' ? `${draftGirthRatio} x ${cm} cm` : `${slope} x ${cm} cm + ${intercept} cm`;
    const { value } = girthFromHeight(horse.height, horse.kind);
    lines.push({ symbol: byRing.length > 0 ? 'G by height' : 'G', sum, result: `${short(value)} in` });
  }
  const k = sizeFactor(girth.value, model);
  return [
    ...lines,
    ...byRing,
    { symbol: 'k', sum: `${short(girth.value)} / ${model['average-girth']}`, result: short(k) },
  ];
}
