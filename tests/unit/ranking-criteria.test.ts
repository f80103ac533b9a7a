/** Why one cinch comes before another: made-up ones that differ in what a criterion looks at, in the order of the criteria. */
import { describe, expect, it } from 'vitest';
import { criteriaFor } from '../../src/advice/criteria.ts';
import type { Judged } from '../../src/advice/judge.ts';
import { rank, whyBefore } from '../../src/advice/rank.ts';
import type { Candidate } from '../../src/cinch/candidate.ts';
import { phraseText } from '../../src/units/text.ts';
import { orderOf, rigging, shopWith } from '../support/orders.ts';
import { caseFactsOf } from '../support/random-cases.ts';

/** A cinch of which only what ranking looks at is known: its chance, and rules that find it poor. */
const tied = (
  [style, strands, likely]: readonly [Candidate['style'], number, number],
  { poor = [] as readonly string[], frameWidth = 3.75 } = {},
) =>
  ({
    candidate: {
      style,
      strands,
      length: 32,
      clearance: { likely, chance: likely },
      buckle: { frameWidth },
      low: 12,
    },
    judgementOf: (rule: string) => (poor.includes(rule) ? 'poor' : 'good'),
  }) as unknown as Judged;

/** The order of design 3.6: each row is best first, for a reason that comes before whatever else speaks for the others. */
describe('of made cinches', () => {
  const on = (position: Parameters<typeof rigging>[0], change: Parameters<typeof orderOf>[0] = {}) =>
    caseFactsOf(orderOf({ ...change, saddle: { rigging: rigging(position) } }));
  const atElbow = { poor: ['elbow-clearance'] };
  const rubbing = { style: 'straight', strands: 17, buckle: 'plain 3', length: 32 } as const;
  const rubbed = on('7/8', { horse: { trouble: ['buckle-rub'] }, current: rubbing });
  const { width, low } = rubbed.current.frame!;
  const frame = (frameWidth: number, strands: number, up = 0) => {
    const made = tied(['straight', strands, 0.9], { frameWidth });
    return { ...made, candidate: { ...made.candidate, low: low + up } };
  };
  const sore = { trouble: ['elbow-gall'] } as const;
  const slips = { trouble: ['saddle-rolls'] } as const;
  const creeps = { trouble: ['saddle-rolls', 'creeps-forward'] } as const;

  it.each([
    [
      'one not poor comes first, then the surest of the poor, and last what nobody ties',
      on('full'),
      [
        tied(['straight', 13, 0.9]),
        tied(['straight', 17, 0.58], atElbow),
        tied(['straight', 15, 0.52], atElbow),
        tied(['straight', 11, 0.99]),
      ],
    ],
    [
      'a high flare that crowds the armpit holds no saddle',
      on('full', { horse: slips }),
      [tied(['straight', 17, 0.9]), tied(['high-flare', 19, 0.95], { poor: ['flare-position'] })],
    ],
    [
      'one wider than the cinch that galls comes last',
      on('7/8', { horse: sore }),
      [tied(['straight', 17, 0.92]), tied(['straight', 19, 0.95], { poor: ['better-than-now'] })],
    ],
    [
      'of two frames that rub again the one no wider than now comes first, after those narrower or higher',
      rubbed,
      [frame(width, 19, 1), frame(width - 0.25, 17), frame(width, 17), frame(width + 0.25, 19)],
    ],
    [
      'where a saddle slips a good high flare comes first, then the low flare, then what holds no better',
      on('7/8', { horse: slips }),
      [
        tied(['high-flare', 19, 0.82]),
        tied(['low-flare', 21, 0.95]),
        tied(['high-flare', 23, 0.79]),
        tied(['straight', 19, 0.95]),
      ],
    ],
    [
      'where it creeps forward, too, there is no room for a high flare',
      on('7/8', { horse: creeps }),
      [tied(['low-flare', 19, 0.9]), tied(['high-flare', 21, 0.95])],
    ],
    [
      'to rope, the fewest missing cords come first',
      on('7/8', { use: 'roping', horse: { barrel: 'round' } }),
      [tied(['straight', 19, 0.65]), tied(['straight', 17, 0.9]), tied(['straight', 15, 0.95])],
    ],
    [
      'to rope, a good straight with enough cords comes before a roper',
      on('7/8', { use: 'roping' }),
      [tied(['straight', 19, 0.8]), tied(['low-flare', 23, 0.95])],
    ],
    [
      'where it slips, too, weaving is not idle',
      on('7/8', { use: 'roping', horse: creeps }),
      [tied(['high-flare', 23, 0.9]), tied(['straight', 19, 0.9])],
    ],
    [
      'chances that nobody can tell apart leave the wider first, and of four in five no more is asked',
      on('7/8'),
      [tied(['straight', 19, 0.8]), tied(['straight', 17, 0.95])],
    ],
    [
      'where the surest hardly reaches four in five the wider, a little less sure, is no worse',
      on('7/8'),
      [tied(['straight', 19, 0.79]), tied(['straight', 17, 0.81])],
    ],
    [
      'where none reaches it the wider may be less sure by 3 in 100, not by more; below, 65 and 66 are alike',
      on('center-fire', { horse: { barrel: 'round' } }),
      [
        tied(['straight', 21, 0.73]),
        tied(['straight', 19, 0.75]),
        tied(['straight', 25, 0.65]),
        tied(['straight', 23, 0.66]),
      ],
    ],
    [
      'one that practice does not tie, however sure, raises no demand',
      on('7/8'),
      [tied(['straight', 19, 0.68]), tied(['straight', 17, 0.7]), tied(['straight', 13, 0.99])],
    ],
    [
      'nor does one with too few cords',
      on('7/8', { use: 'ranch' }),
      [tied(['straight', 19, 0.68]), tied(['straight', 17, 0.7]), tied(['straight', 15, 0.99])],
    ],
    [
      'a galled horse needs nine in ten',
      on('7/8', { horse: sore }),
      [tied(['straight', 17, 0.91]), tied(['straight', 15, 0.96]), tied(['straight', 19, 0.85])],
    ],
    [
      'its elbow comes before cords for ranch work',
      on('7/8', { horse: sore, use: 'ranch' }),
      [tied(['straight', 15, 0.95]), tied(['straight', 17, 0.85])],
    ],
    [
      'the cords come first for a sound one',
      on('7/8', { use: 'ranch' }),
      [tied(['straight', 17, 0.65]), tied(['straight', 15, 0.95])],
    ],
    [
      'and to rope even for a galled one, which has a low flare for both',
      on('7/8', { horse: sore, use: 'roping' }),
      [tied(['straight', 19, 0.85]), tied(['straight', 17, 0.95])],
    ],
  ])('%s', (_, facts, best) => {
    const criteria = criteriaFor(facts, best);
    expect(rank(best, criteria)).toEqual(best);
    expect(rank(best.toReversed(), criteria)).toEqual(best);
  });

  const straight = (strands: number, likely = 0.9) => tied(['straight', strands, likely]);
  const seventeen = caseFactsOf(
    orderOf({ use: 'roping', saddle: { rigging: rigging('7/8') } }),
    shopWith({ 'roper-fewest': 17 }),
  );
  const flare = (strands: number, style: Candidate['style'] = 'low-flare') => tied([style, strands, 0.9]);
  it.each([
    [on('full'), straight(15), straight(11), '11 strands are well outside the usual on a horse of this size'],
    [
      on('full'),
      tied(['straight', 15, 0.55], atElbow),
      tied(['high-flare', 19, 0.5], { poor: ['flare-position'] }),
      'surer to clear the elbow, 55% against 50%',
    ],
    [
      on('full'),
      straight(15),
      tied(['straight', 17, 0.5], atElbow),
      'surer to clear the elbow, 90% against 50%',
    ],
    [
      rubbed,
      frame(width - 0.25, 15),
      frame(width, 17),
      'a sore asks for a cinch farther off it than the current one',
    ],
    [on('7/8', { use: 'roping' }), straight(19), straight(17), 'more strands for the work, 19 against 17'],
    [on('full'), straight(17), straight(21), '21 strands are well outside the usual where this ring hangs'],
    [on('full'), straight(17), straight(13), '15 to 17 strands are usual where this ring hangs'],
    [on('full', { horse: slips }), flare(21), flare(31), '19 to 21 strands are usual where this ring hangs'],
    [
      on('full', { horse: { heartGirth: 50 } }),
      flare(19),
      flare(21),
      'ropers are too wide for a horse this small',
    ],
    // In a shop that ties ropers of 17, neither has the 19 it needs to rope.
    [seventeen, straight(17), flare(17), 'otherwise equal; the simpler style goes first'],
    [on('7/8'), straight(17), straight(17), 'otherwise equal; fewer strands go first'],
  ])('%# why', (...[facts, a, b, words]) => {
    expect(phraseText(whyBefore(a, b, criteriaFor(facts, [a, b])).words, 'in')).toBe(words);
  });
});
