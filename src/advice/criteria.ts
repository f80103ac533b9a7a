/** Why one spec comes before another: criteria in turn, never added up. */
import { isTied, stepsOutside } from '../horse/practice.ts';
import { isSore } from '../horse/sore.ts';
import { rubsAgain } from '../rules/better-than-now.ts';
import type { CaseFacts } from '../rules/rule.ts';
import { enoughFor } from '../rules/roping-strength.ts';
import { bandOf, usualWords } from '../rules/usual-strands.ts';
import { chance, count, listed, say, type Phrase } from '../units/phrase.ts';
import type { Judged } from './judge.ts';
import { hasCloseGroove } from './welfare.ts';

export interface Criterion {
  readonly id: string;
  /** Smaller comes first. */
  readonly key: (judged: Judged) => number;
  readonly because: (a: Judged, b: Judged) => Phrase;
}

const sureness = ({ candidate }: Judged): number => candidate.clearance.likely;

const surer: Criterion['because'] = (a, b) =>
  say`surer to clear the elbow, ${chance(a.candidate.clearance.chance)} against ${chance(b.candidate.clearance.chance)}`;

const isTooNarrow = ({ candidate: { style, strands } }: Judged, { practice }: CaseFacts): boolean =>
  style === 'straight' && strands <= practice.narrowest - 1;

const isPoor = (judged: Judged, facts: CaseFacts): boolean =>
  judged.judgementOf('elbow-clearance') === 'poor' ||
  judged.judgementOf('flare-position') === 'poor' ||
  isTooNarrow(judged, facts);

/** Where clearing is unlikely, the surest first. */
const notPoor = (facts: CaseFacts): Criterion => ({
  id: 'not poor at the elbow',
  key: (judged) =>
    isPoor(judged, facts) ? 21 - twentieths(judged) + (isTooNarrow(judged, facts) ? 21 : 0) : 0,
  because: (a, b) =>
    isTooNarrow(b, facts)
      ? say`${count(b.candidate.strands)} strands are well outside the usual on a horse of this size`
      : !isPoor(a, facts) && b.judgementOf('flare-position') === 'poor'
        ? say`a flare that starts high crowds the armpit on a full rig`
        : surer(a, b),
});

/** A frame wider than the one that rubs is worst. */
const offTheSore = (facts: CaseFacts): Criterion => ({
  id: 'off the sore',
  key: (judged) =>
    Math.max(rubsAgain(facts, judged.candidate), Number(judged.judgementOf('better-than-now') === 'poor')),
  because: () => say`a sore asks for a cinch farther off it than the current one`,
});

type IsGood = (judged: Judged) => boolean;

/** A saddle that creeps forward leaves no room for a high flare. */
function holdsTheSaddle(facts: CaseFacts, isGood: IsGood): Criterion {
  const hasRoom = !hasCloseGroove(facts);
  const why = listed(facts.slipNeed.because);
  return {
    id: 'holds the saddle',
    key: (judged) => {
      const { style, strands } = judged.candidate;
      if (style === 'straight' || stepsOutside(strands, facts.practice.roper) > 0) return 2;
      if (style === 'low-flare') return 1;
      return hasRoom && isGood(judged) ? 0 : 2;
    },
    because: ({ candidate }, other) =>
      candidate.style === other.candidate.style
        ? usualWords(facts.practice.roper)
        : candidate.style === 'high-flare'
          ? say`a flare that starts high grips best, and the elbow has room: ${why}`
          : say`a low flare grips, and leaves more room at the elbow than a high one: ${why}`,
  };
}

export const PLAIN = 'a plain cinch for a plain need';

const plainFirst: Criterion = {
  id: PLAIN,
  key: ({ candidate }) => Number(candidate.style !== 'straight'),
  because: () => say`nothing here slips`,
};

const whatPracticeTies = ({ practice }: CaseFacts): Criterion => ({
  id: 'what practice ties',
  key: ({ candidate }) => stepsOutside(candidate.strands, bandOf({ practice }, candidate)),
  because: (_, { candidate }) => {
    const band = bandOf({ practice }, candidate);
    return isTied(candidate.strands, band) || usualWords(band).values.length === 0
      ? usualWords(band)
      : say`${count(candidate.strands)} strands are well outside the usual where this ring hangs`;
  },
});

const enoughCords = (enough: number): Criterion => ({
  id: 'enough cords for the work',
  key: ({ candidate: { strands } }) => Math.max(0, enough - strands),
  because: (a, b) =>
    say`more strands for the work, ${count(a.candidate.strands)} against ${count(b.candidate.strands)}`,
});

/** A good straight with enough strands needs no weaving. */
const noIdleWeaving = (enough: number, isGood: IsGood): Criterion => ({
  id: 'no weaving that adds nothing',
  key: (judged) =>
    Number(judged.candidate.style !== 'straight' || judged.candidate.strands < enough || !isGood(judged)),
  because: () => say`a straight with enough strands to rope off of needs no weaving`,
});

/** Chances within 5 points count as equal. */
const twentieths = (judged: Judged): number => Math.floor(20 * sureness(judged) + 1e-9);

const goodAtElbow = (good: number): Criterion => ({
  id: 'good at the elbow',
  key: (judged) => (sureness(judged) >= good ? 0 : 21 - twentieths(judged)),
  because: surer,
});

/** Chances nobody can tell apart; keeps specs from trading places [choice]. */
const NEAR = 0.03;

/** The goal, or near the surest if nothing reaches it. */
function goodHere(made: readonly Judged[], before: readonly Criterion[], goal: number): number {
  const contest = before.reduce((left, { key }) => {
    const best = Math.min(...left.map(key));
    return left.filter((judged) => key(judged) === best);
  }, made);
  return Math.min(goal, Math.max(...contest.map(sureness)) - NEAR);
}

const moreStrands: Criterion = {
  id: 'wider',
  key: ({ candidate }) => -candidate.strands,
  because: (a, b) =>
    say`${a.candidate.style === 'straight' ? 'wider spreads the pressure' : 'wider across the chest'}, ${count(a.candidate.strands)} strands against ${count(b.candidate.strands)}`,
};

/** Chance from which the elbow is good. */
const goalOf = ({ order, model }: CaseFacts): number => model[isSore(order) ? 'chance-sore' : 'chance-good'];

/** Need comes before finish. */
export function criteriaFor(facts: CaseFacts, made: readonly Judged[]): readonly Criterion[] {
  const { order, slipNeed } = facts;
  const goal = goalOf(facts);
  const isGood: IsGood = (judged) => sureness(judged) >= goal && !isPoor(judged, facts);
  const enough = enoughFor(facts);
  const work = [
    enoughCords(enough),
    ...(order.use === 'roping' && slipNeed.level < 2 ? [noIdleWeaving(enough, isGood)] : []),
  ];
  const style =
    slipNeed.level >= 2 ? [holdsTheSaddle(facts, isGood)] : order.use === 'roping' ? [] : [plainFirst];
  const first = [notPoor(facts), offTheSore(facts), ...style, whatPracticeTies(facts)];
  const elbowAfter = (before: readonly Criterion[]) => goodAtElbow(goodHere(made, before, goal));
  // A sore elbow comes before ranch strands; for roping, a low flare gives both.
  return isSore(order) && order.use !== 'roping'
    ? [...first, elbowAfter(first), ...work, moreStrands]
    : [...first, ...work, elbowAfter([...first, ...work]), moreStrands];
}
