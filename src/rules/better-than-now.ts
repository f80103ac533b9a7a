/** Is it better for a sore horse than the current cinch? */
import { isGalled } from '../horse/sore.ts';
import type { Candidate } from '../cinch/candidate.ts';
import type { Trouble } from '../order/types.ts';
import { say } from '../units/phrase.ts';
import type { Seen } from './paths.ts';
import { rule, type CaseFacts, type Current } from './rule.ts';

type Worn = Seen<CaseFacts, 'order.horse.trouble' | 'order.notes' | 'current'>;
type FrameParts = Seen<Candidate, 'buckle.frameWidth' | 'low'>;
type Next = FrameParts & Seen<Candidate, 'clearance.likely' | 'elbowWidth'>;

const of = (...trouble: Trouble[]) => ({ horse: { trouble } });
const current: Current = {
  frame: { width: 4.25, low: 12 },
  cords: { elbowWidth: 6.75, clearance: { likely: 0.4 } },
};
const unknown: Current = { frame: undefined, cords: undefined };
const next = (elbowWidth: number, frameWidth: number): Next => ({
  elbowWidth,
  clearance: { likely: 0.9 },
  buckle: { frameWidth },
  low: 12,
});

/** A frame narrower or higher by this rubs elsewhere or not at all, inches [choice]. */
const NARROWER = 0.25;
const HIGHER = 1;
/** A smaller gain does not count [choice]. */
const SURER = 0.05;
/** Above this, chances are equal; then it must be two strands narrower, inches [choice]. */
const SURE = 0.95;
const STRAND = 0.4;
const ROUNDING = 1e-9;

/** 2 if wider, 1 if neither narrower nor higher, else 0. */
export function rubsAgain({ order, current: { frame } }: Worn, { buckle, low }: FrameParts): 0 | 1 | 2 {
  if (frame === undefined || !order.horse.trouble.includes('buckle-rub')) return 0;
  if (buckle.frameWidth > frame.width + ROUNDING) return 2;
  const narrower = buckle.frameWidth <= frame.width - NARROWER + ROUNDING;
  return narrower || low >= frame.low + HIGHER - ROUNDING ? 0 : 1;
}

/** Wider, or neither clearly surer nor clearly narrower. */
function gallsAgain({ order, current: { cords } }: Worn, { clearance, elbowWidth }: Next): boolean {
  if (cords === undefined || !isGalled(order)) return false;
  const now = cords.clearance.likely;
  const surer = clearance.likely >= now + SURER && elbowWidth <= cords.elbowWidth + ROUNDING;
  const narrower = elbowWidth <= cords.elbowWidth - STRAND && clearance.likely >= Math.min(now, SURE);
  return !surer && !narrower;
}

export const betterThanNow = rule({
  id: 'better-than-now',
  question: 'Is it better for a sore horse than the current cinch?',
  reads: ['order.horse.trouble', 'order.notes?', 'current'],
  looks: ['clearance.likely', 'elbowWidth', 'buckle.frameWidth', 'low'],
  evidence: [{ basis: 'practice', source: 'common-practice', agreement: 'settled' }],
  can: ['good', 'poor', 'not-applicable', 'cannot-tell'],
  judge(seen, candidate) {
    const rub = seen.order.horse.trouble.includes('buckle-rub');
    const gall = isGalled(seen.order);
    if (!rub && !gall) return { judgement: 'not-applicable', reason: () => say`no sore reported` };
    if (rubsAgain(seen, candidate) > 0)
      return {
        judgement: 'poor',
        reason: () => say`its buckle is as big as the one that rubs, and sits as low`,
      };
    if ((rub && seen.current.frame === undefined) || (gall && seen.current.cords === undefined))
      return { judgement: 'cannot-tell', reason: () => say`nobody described the cinch that made it sore` };
    if (gallsAgain(seen, candidate))
      return {
        judgement: 'poor',
        reason: () => say`wider at the elbow than the cinch that galls, or little more likely to clear`,
      };
    return { judgement: 'good', reason: () => say`stays farther off the sore than the current cinch` };
  },
  examples: [
    {
      shows: 'narrower and surer on a galled horse',
      facts: { order: of('elbow-gall'), current },
      candidate: next(4.25, 3.75),
      gives: 'good',
    },
    {
      shows: 'wider on a galled horse',
      facts: { order: of('elbow-gall'), current },
      candidate: next(7.25, 3.75),
      gives: 'poor',
    },
    {
      shows: 'the same buckle again where it rubs',
      facts: { order: of('buckle-rub'), current },
      candidate: next(4.25, 4.25),
      gives: 'poor',
    },
    {
      shows: 'a smaller buckle where one rubs',
      facts: { order: of('buckle-rub'), current },
      candidate: next(4.25, 3.75),
      gives: 'good',
    },
    {
      shows: 'a gall; current cinch not described',
      facts: { order: of('elbow-gall'), current: unknown },
      candidate: next(4.25, 3.75),
      gives: 'cannot-tell',
    },
    {
      shows: 'a sound horse',
      facts: { order: of(), current },
      candidate: next(4.25, 3.75),
      gives: 'not-applicable',
    },
  ],
  since: '0.1.0',
});
