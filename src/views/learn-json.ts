/** What outcomes taught, for scripts: inches and chances as numbers. */
import { floorOf, refitsOf, writtenOf } from '../learn/entries.ts';
import type { Learned } from '../learn/learn.ts';
import type { Range, Refit } from '../learn/refit.ts';
import { jsonText, rounded } from '../pages/json.ts';

/** Whole document. */
export const learnJson = (learned: Learned, { file, day }: { file: string; day: string }): string =>
  jsonText({
    schema: 'cinchwright/learn/1',
    file,
    day,
    shop: learned.shop.name,
    outcomes: Object.fromEntries(learned.counts.map(({ result, count }) => [result, count])),
    contrary: learned.contrary.map(({ clearance, counts }) => ({
      clearance: rounded(clearance),
      ...Object.fromEntries(counts),
    })),
    numbers: refitsOf(learned).map((refit) => refitValue(refit, learned)),
    floor: {
      inForce: learned.shop.model['floor-clearance'],
      after: floorOf(learned).value,
      moves: floorOf(learned).moves,
    },
    atFloor: {
      before: rounded(learned.atFloor.before),
      after: rounded(learned.atFloor.after),
      moved: rounded(learned.atFloor.moved),
    },
  });

function refitValue(refit: Refit, learned: Learned): Record<string, unknown> {
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
    heldOut: Object.fromEntries(
      Object.entries(heldOut).map(([name, value]) => [name, rounded(value as number)]),
    ),
    misfit,
    recommended,
    value: recommended ? writtenOf(refit, learned) : null,
    bins: bins.map((bin) =>
      Object.fromEntries(Object.entries(bin).map(([name, value]) => [name, rounded(value as number)])),
    ),
  };
}

const rangeValue = ({ value, low, high }: Range): Record<string, unknown> => ({
  value: rounded(value),
  low: rounded(low),
  high: rounded(high),
});
