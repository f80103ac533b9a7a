/** What to measure next: first order, one input at a time, as if the tape read just what was assumed. */
import { factsOf, type Facts } from '../facts/facts.ts';
import { Ground } from '../fit/ground.ts';
import type { Clearance } from '../fit/candidate.ts';
import { lay } from '../fit/lay.ts';
import type { Order, Shop } from '../order/types.ts';
import { howToMeasure } from '../sources/how-to-measure.ts';
import { layersOn } from '../stock/buckles.ts';
import type { Judged } from './judge.ts';

export interface Ask {
  readonly input: 'elbow room' | 'ring set-back' | 'ring to ring' | 'heart girth' | 'barrel shape';
  readonly how: string;
  /** Must be known before cord is cut. */
  readonly beforeCutting: boolean;
  /** Spread of the first spec's clearance now, and with this measured, inches. */
  readonly sdNow: number;
  readonly sdThen: number;
  readonly chanceNow: number;
  readonly chanceThen: number;
  /** Strands of the first spec's style that would be good at the elbow if the tape read what was assumed; undefined when no more than now. */
  readonly couldEarn: number | undefined;
}

interface Question {
  readonly input: Ask['input'];
  readonly how: string;
  readonly open: (facts: Facts) => boolean;
  /** The order as it would be, had this been measured and read what was assumed. */
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

const questions: readonly Question[] = [
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
    how: 'round the barrel just behind the elbow and withers, breathing out; say where the tape lay',
    open: (facts) => facts.girth.kind !== 'measured',
    answered: (facts) => horse(facts, { heartGirth: facts.girth.value }),
  },
  {
    input: 'barrel shape',
    how: 'seen from behind: slab-sided, average or round',
    open: (facts) => facts.order.horse.barrel === undefined,
    answered: (facts) => horse(facts, { barrel: 'average' }),
  },
];

/** Questions still open, those needed before cutting first, then by how much they narrow the first spec's clearance. */
export function asksFor(facts: Facts, first: Judged | undefined, shop: Shop): Ask[] {
  const open = questions.filter((question) => question.open(facts));
  const widestNow = first === undefined ? 0 : widestGood(first, new Ground(facts), shop);
  const asks = open.map((question) => askOne(question, { facts, first, shop, widestNow }));
  return asks.sort((a, b) => Number(b.beforeCutting) - Number(a.beforeCutting) || a.sdThen - b.sdThen);
}

/** The first of these questions alone, which is what a row of many orders has room for: cheaper than all with their worth. */
export function firstAskFor(facts: Facts, first: Judged | undefined): Pick<Ask, 'input' | 'how'> | undefined {
  const open = questions.filter((question) => question.open(facts));
  const [only] = open;
  if (only === undefined || open.length === 1 || isBeforeCutting(only)) return only;
  let best: { question: Question; sdThen: number } | undefined;
  for (const question of open) {
    const sdThen = first === undefined ? 0 : clearanceThen(question, facts, first).sd;
    if (best === undefined || sdThen < best.sdThen) best = { question, sdThen };
  }
  return best?.question;
}

const isBeforeCutting = ({ input }: Question): boolean => input === 'ring to ring';

/** The first spec's clearance, had this been measured. */
function clearanceThen({ answered }: Question, facts: Facts, { candidate }: Judged): Clearance {
  const ground = new Ground(factsOf(answered(facts), facts.model));
  return lay(candidate, ground)?.clearance ?? candidate.clearance;
}

interface Scene {
  readonly facts: Facts;
  readonly first: Judged | undefined;
  readonly shop: Shop;
  /** Most strands of the first spec's style that are good at the elbow as things stand. */
  readonly widestNow: number;
}

function askOne(question: Question, { facts, first, shop, widestNow }: Scene): Ask {
  const { input, how, answered } = question;
  const beforeCutting = isBeforeCutting(question);
  if (first === undefined) {
    return {
      input,
      how,
      beforeCutting,
      sdNow: 0,
      sdThen: 0,
      chanceNow: 0,
      chanceThen: 0,
      couldEarn: undefined,
    };
  }
  const ground = new Ground(factsOf(answered(facts), facts.model));
  const now = first.candidate.clearance;
  const then = lay(first.candidate, ground)?.clearance ?? now;
  const widestThen = widestGood(first, ground, shop);
  return {
    input,
    how,
    beforeCutting,
    sdNow: now.sd,
    sdThen: then.sd,
    chanceNow: now.chance,
    chanceThen: then.chance,
    couldEarn: widestThen > Math.max(widestNow, first.candidate.strands) ? widestThen : undefined,
  };
}

/** Most strands of the first spec's style that are good at the elbow on this ground; 0 when the first itself is not. */
function widestGood({ candidate }: Judged, ground: Ground, shop: Shop): number {
  const { floor, model } = ground.facts;
  let widest = 0;
  for (let { strands } = candidate; strands <= shop.strands.max; strands += 2) {
    const own = strands === candidate.strands;
    const buckle = own
      ? candidate.buckle
      : shop.buckles.find((entry) => layersOn(entry, strands) !== undefined);
    const layers = buckle === undefined ? undefined : layersOn(buckle, strands);
    if (buckle === undefined || layers === undefined) break;
    const { style, length } = candidate;
    const wider = lay({ style, strands, buckle, layers, length }, ground)?.clearance;
    if (wider === undefined || wider.inches < floor || wider.chance < model['chance-good']) break;
    widest = strands;
  }
  return widest;
}
