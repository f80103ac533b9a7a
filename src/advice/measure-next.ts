/** What to measure next, as if the tape read what was assumed. */
import { factsOf, type Facts } from '../horse/facts.ts';
import type { Candidate } from '../cinch/candidate.ts';
import { lay } from '../cinch/lay.ts';
import { sideOf } from '../cinch/side.ts';
import type { Order } from '../order/types.ts';
import { howToMeasure } from '../numbers/how-to-measure.ts';
import type { CaseFacts } from '../rules/rule.ts';
import { criteriaFor } from './criteria.ts';
import { caseFactsOf } from './current.ts';
import { judge, type Judged } from './judge.ts';
import { rank } from './rank.ts';

export interface Ask {
  readonly input: 'elbow room' | 'ring set-back' | 'ring to ring' | 'heart girth' | 'barrel shape';
  readonly how: string;
  readonly beforeCutting: boolean;
  /** Of the first spec, inches. */
  readonly sdNow: number;
  readonly sdThen: number;
  readonly chanceNow: number;
  readonly chanceThen: number;
  /** Not capped. */
  readonly likelyThen: number;
  /** Strands that would then come first; undefined when no more than now. */
  readonly couldEarn: number | undefined;
}

const WORTH_ASKING = 0.03;

/** Sets the length, may allow more strands, or makes our first surer. */
export const isUseful = ({ beforeCutting, couldEarn, chanceThen, chanceNow }: Ask): boolean =>
  beforeCutting || couldEarn !== undefined || chanceThen - chanceNow > WORTH_ASKING;

interface Measurement {
  readonly input: Ask['input'];
  readonly how: string;
  readonly open: (facts: Facts) => boolean;
  /** As if measured and read as assumed. */
  readonly answered: (facts: Facts) => Order;
}

const horse = ({ order }: Facts, change: Partial<Order['horse']>): Order => ({
  ...order,
  horse: { ...order.horse, ...change },
});
const saddle = ({ order }: Facts, change: Partial<Order['saddle']>): Order => ({
  ...order,
  saddle: { ...order.saddle, ...change },
});

const questions: readonly Measurement[] = [
  {
    input: 'ring to ring',
    how: howToMeasure['ring to ring'],
    open: (facts) => !facts.ring.taped,
    answered: (facts) => saddle(facts, { ringToRing: facts.lengthNeed.ringToRing.value }),
  },
  {
    input: 'elbow room',
    how: howToMeasure['elbow room'],
    open: (facts) => facts.room.kind !== 'measured',
    answered: (facts) => horse(facts, { elbowRoom: facts.room.value }),
  },
  {
    input: 'ring set-back',
    how: 'from full position (under the front of the fork) back to the middle of the ring',
    open: (facts) => facts.ring.setBack.kind !== 'measured',
    answered: (facts) => saddle(facts, { rigging: { kind: 'measured', setBack: facts.ring.setBack.value } }),
  },
  {
    input: 'heart girth',
    how: 'around the barrel just behind the elbow and withers, horse breathing out; say where the tape lay',
    open: (facts) => facts.girth.kind !== 'measured',
    answered: (facts) => horse(facts, { heartGirth: facts.girth.value }),
  },
  {
    input: 'barrel shape',
    how: 'seen from the front: slab-sided, average or round',
    open: (facts) => facts.order.horse.barrel === undefined,
    answered: (facts) => horse(facts, { barrel: 'average' }),
  },
];

/** Before cutting first, then the surest. */
export function asksFor(facts: CaseFacts, specs: readonly Judged[]): Ask[] {
  const [first] = specs;
  const isWider = ({ candidate: { style, strands } }: Judged): boolean =>
    style === first?.candidate.style && strands > first.candidate.strands;
  const scene: Compared | undefined =
    first === undefined ? undefined : { first, wider: specs.filter(isWider) };
  const asks = questions
    .filter((question) => question.open(facts))
    .map((question) => askOne(question, facts, scene));
  return asks.sort(
    (a, b) => Number(b.beforeCutting) - Number(a.beforeCutting) || b.likelyThen - a.likelyThen,
  );
}

/** The first question alone, for tables. */
export function firstAskFor(facts: Facts, first: Judged | undefined): Pick<Ask, 'input' | 'how'> | undefined {
  const open = questions.filter((question) => question.open(facts));
  const [only] = open;
  if (only === undefined || isBeforeCutting(only)) return only;
  const likely = open.map((question) => likelyThen(question, facts, first));
  return open[likely.indexOf(Math.max(...likely))];
}

/** `wider` ones are of its style. */
interface Compared {
  readonly first: Judged;
  readonly wider: readonly Judged[];
}

const isBeforeCutting = ({ input }: Measurement): boolean => input === 'ring to ring';

/** Once this is measured. */
function laidThen({ answered }: Measurement, facts: Facts, { candidate }: Judged): Candidate {
  return lay(candidate, sideOf(factsOf(answered(facts), facts.model))) ?? candidate;
}

const likelyThen = (question: Measurement, facts: Facts, first: Judged | undefined): number =>
  first === undefined ? 0 : laidThen(question, facts, first).clearance.likely;

function askOne(question: Measurement, facts: CaseFacts, scene: Compared | undefined): Ask {
  const { input, how } = question;
  const beforeCutting = isBeforeCutting(question);
  if (scene === undefined) {
    const nothing = { sdNow: 0, sdThen: 0, chanceNow: 0, chanceThen: 0, likelyThen: 0, couldEarn: undefined };
    return { input, how, beforeCutting, ...nothing };
  }
  const now = scene.first.candidate;
  const then = laidThen(question, facts, scene.first);
  // Spreads of strands and frame do not compare.
  const part = now.clearance.where === 'buckle' ? 'frameClearance' : 'cordClearance';
  return {
    input,
    how,
    beforeCutting,
    sdNow: now[part].sd,
    sdThen: then[part].sd,
    chanceNow: now.clearance.chance,
    chanceThen: then.clearance.chance,
    likelyThen: then.clearance.likely,
    couldEarn: earned(question, facts, scene),
  };
}

function earned({ answered }: Measurement, facts: CaseFacts, { first, wider }: Compared): number | undefined {
  if (wider.length === 0) return undefined;
  const then = caseFactsOf(factsOf(answered(facts), facts.model), facts.shop);
  const side = sideOf(then);
  const laid = [first, ...wider].flatMap(({ candidate }) => lay(candidate, side) ?? []);
  const judged = laid.map((candidate) => judge(candidate, then));
  const strands = rank(judged, criteriaFor(then, judged))[0]?.candidate.strands ?? 0;
  return strands > first.candidate.strands ? strands : undefined;
}
