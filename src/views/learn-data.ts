/** What past cinches tell us, for scripts. */
import { floorOf, refitsOf, writtenOf } from '../learn/entries.ts';
import type { Learned } from '../learn/learn.ts';
import type { HeldOut, Range, Refit } from '../learn/refit.ts';
import type { Bin } from '../learn/calibration.ts';
import { jsonText, rounded } from '../pages/json.ts';
import { roundedValues } from './shared-values.ts';
import type { Values } from './table.ts';

/** The whole document. */
export const learnJson = (learned: Learned, { file, day }: { file: string; day: string }): string =>
  jsonText({
    schema: 'cinchwright/learn/1',
    file,
    day,
    shop: learned.shop.name,
    counts: learned.counts.map(({ result, count }) => ({ result, count })),
    contrary: learned.contrary.map(({ clearance, counts }) => ({
      clearance: { inches: rounded(clearance) },
      counts: [...counts].map(([result, count]) => ({ result, count })),
    })),
    numbers: refitsOf(learned).map((refit) => refitValue(refit, learned)),
    floorClearance: { inForce: learned.shop.model['floor-clearance'], ...floorOf(learned) },
    atFloor: roundedValues(learned.atFloor),
  });

function refitValue(refit: Refit, learned: Learned): Values {
  const { key, before, after, outcomes, complaints, strength, settled, heldOut, bins, recommended, misfit } =
    refit;
  return {
    key,
    inForce: learned.shop.model[key],
    before: rangeValue(before),
    after: rangeValue(after),
    outcomes,
    complaints,
    strength: rounded(strength),
    settled: rounded(settled),
    heldOut: heldOutValue(heldOut),
    misfit,
    recommended,
    value: recommended ? writtenOf(refit, learned) : null,
    bins: bins.map(binValue),
  };
}

const heldOutValue = ({ error, ...scores }: HeldOut): Values => ({
  ...roundedValues(scores),
  standardError: rounded(error),
});

/** `complaint`: chance of one sooner or later; `byChance`: chance of this many or more. */
const binValue = ({ count, chance, low, high, tail, ...shares }: Bin): Values => ({
  count,
  complaint: rounded(chance),
  ...roundedValues(shares),
  cameLow: rounded(low),
  cameHigh: rounded(high),
  byChance: rounded(tail),
});

const rangeValue = ({ value, low, high }: Range): Values => roundedValues({ value, low, high });
