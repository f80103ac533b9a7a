/** The quick tests that concern a folder of the model, those that tell most first: what a mutant there has to get past. */

const rules = [
  'tests/unit/rules-cinch.test.ts',
  'tests/unit/rules-stock.test.ts',
  'tests/unit/rules-horse.test.ts',
  'tests/project/lists.test.ts',
];
const whole = ['tests/truth/practice.test.ts', 'tests/property/model.test.ts'];

export const testsOf = {
  math: [
    'tests/truth/statistics.test.ts',
    'tests/truth/geometry-elliptic.test.ts',
    'tests/truth/geometry-ellipse.test.ts',
    'tests/truth/geometry-strap.test.ts',
    'tests/truth/worth.test.ts',
    'tests/truth/geometry-newton.test.ts',
    'tests/truth/geometry-pinhole.test.ts',
    'tests/truth/homography.test.ts',
    'tests/truth/homography-far.test.ts',
    'tests/truth/logistic.test.ts',
    'tests/truth/normal-pair.test.ts',
  ],
  horse: [
    'tests/unit/facts-horse.test.ts',
    'tests/unit/facts-saddle.test.ts',
    'tests/unit/facts-weigh.test.ts',
    'tests/unit/photo-remarks.test.ts',
    'tests/unit/facts-barrel.test.ts',
    'tests/unit/facts-photo.test.ts',
    'tests/truth/horse.test.ts',
    'tests/truth/photo.test.ts',
    ...whole,
    'tests/property/photo.test.ts',
    'tests/property/spread.test.ts',
  ],
  rules: [...rules, 'tests/truth/practice.test.ts'],
  cinch: [
    'tests/truth/laid.test.ts',
    'tests/truth/low-flare.test.ts',
    'tests/truth/cord.test.ts',
    'tests/truth/laid-clearance.test.ts',
    'tests/truth/gap.test.ts',
    'tests/property/elbow-gap.test.ts',
    'tests/truth/clearance.test.ts',
    'tests/truth/practice.test.ts',
  ],
  advice: [
    'tests/unit/ranking.test.ts',
    'tests/unit/advice-truths.test.ts',
    'tests/unit/advice.test.ts',
    'tests/unit/advice-edges.test.ts',
    'tests/unit/causes.test.ts',
    'tests/unit/report-check.test.ts',
    'tests/unit/report-counter.test.ts',
    'tests/unit/told-alike.test.ts',
    'tests/golden/golden.test.ts',
    ...whole,
    'tests/property/spread.test.ts',
  ],
};
