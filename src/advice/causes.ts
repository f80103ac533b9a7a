/** The likely cause of each trouble reported with the current cinch. */
import type { CinchAsked, Trouble } from '../order/types.ts';
import type { CaseFacts } from '../rules/rule.ts';
import { dist, gap, joined, len, overlap, say, type Phrase } from '../units/phrase.ts';
import type { Judged } from './judge.ts';

export interface Cause {
  readonly trouble: Trouble;
  /** By the geometry; undefined when it cannot tell. */
  readonly explained: boolean | undefined;
  readonly words: Phrase;
}

interface CauseInput {
  readonly judged: Judged;
  readonly facts: CaseFacts;
  readonly age: number | undefined;
  readonly styled: boolean;
}

interface Placed {
  readonly facts: Pick<CaseFacts, 'ring' | 'model' | 'k'>;
}

type Explain<S = CauseInput> = (scene: S) => { explained: boolean; words: Phrase };

/** Years; older cord may be hard [common practice, no source]. */
const OLD = 3;

const yes = (words: Phrase): ReturnType<Explain> => ({ explained: true, words });
const no = (words: Phrase): ReturnType<Explain> => ({ explained: false, words });

/** In the order reported. */
export function causesOf(
  judged: Judged,
  facts: CaseFacts,
  asked: CinchAsked & { age?: number | undefined },
): Cause[] {
  const scene: CauseInput = { judged, facts, age: asked.age, styled: asked.style !== undefined };
  return facts.order.horse.trouble.map((trouble) => ({ trouble, ...explanations[trouble](scene) }));
}

const vetFirst = say`ask a vet first; ulcers and lameness are common causes`;
const again = say`the current cinch, as described, does not fit on this horse: measure both again`;

/** When the current cinch does not fit on the horse. */
export function causesUnlaid({ order, ...facts }: CaseFacts): Cause[] {
  return order.horse.trouble.map((trouble) => {
    if (trouble === 'creeps-forward') return { trouble, ...creeps({ facts }) };
    if (trouble === 'slips-back') return { trouble, ...slipsBack({ facts }) };
    return { trouble, explained: undefined, words: trouble === 'girthy' ? joined([vetFirst, again]) : again };
  });
}

const nearWords = (inches: number): Phrase =>
  inches < 0
    ? say`it reaches onto the elbow, about ${overlap(-inches)}`
    : say`it sits ${gap(inches)} off the elbow`;

const elbowGall: Explain = ({ judged: { candidate }, facts, age }) => {
  const { clearance, style } = candidate;
  if (clearance.likely >= facts.model['chance-good']) {
    const old = age !== undefined && age >= OLD ? 'cord this old may be hard; ' : '';
    return no(
      say`the cinch as described clears the elbow by about ${gap(clearance.inches)}: ${old}look for dirt, a saddle set too far forward, and where the cinch really lies`,
    );
  }
  const near = nearWords(clearance.inches);
  const at = say`${len(clearance.station)} up from the chest midline`;
  const why = reachWords(clearance.where, style, facts);
  return yes(joined([near, at, why]));
};

function reachWords(where: 'cinch' | 'buckle', style: string, facts: CaseFacts): Phrase {
  if (where === 'buckle') return say`the buckle's frame is too big, or too low because the cinch is short`;
  if (facts.ring.x > facts.model['slant-fine'] * facts.k) {
    return say`the ring hangs ${dist(facts.ring.x)} ahead of the groove and carries this width to the elbow`;
  }
  return style === 'high-flare' ? say`the high flare starts there` : say`it is too wide for the room`;
}

const buckleRub: Explain = ({ judged: { candidate }, facts }) => {
  const aim = facts.model['buckle-above-elbow-target'] * facts.k;
  if (candidate.buckleAboveElbow < aim) {
    const up = candidate.buckleAboveElbow;
    return yes(
      up < 0
        ? say`the buckle sits ${overlap(-up)} below the point of the elbow; a longer cinch lifts it`
        : say`the buckle sits only ${gap(up)} above the point of the elbow; a longer cinch lifts it`,
    );
  }
  const room = candidate.frameClearance.inches;
  if (room < facts.model['muscle-wanted'] * facts.k) {
    const lies =
      room < 0
        ? say`the buckle's frame reaches onto the elbow, about ${overlap(-room)}`
        : say`the buckle's frame stays only ${gap(room)} off the elbow`;
    return yes(joined([lies, say`use a smaller buckle, or a narrower cinch that takes one`]));
  }
  return no(
    say`the buckle as described is clear of the elbow: check the frame's edge, the tongue, and what lies under it`,
  );
};

const rolls: Explain = ({ judged: { candidate }, facts, styled }) => {
  if (facts.slipNeed.because.length > 1 && (candidate.style !== 'high-flare' || !styled)) {
    const others = facts.slipNeed.because.filter((why) => !why.startsWith('the saddle')).join(', ');
    const why = others || 'it slips in more than one way';
    const style = candidate.style === 'straight' ? 'straight' : 'low-flare roper';
    return yes(
      styled
        ? say`${why}, and a ${style} has no high flare to hold it`
        : say`${why}, unless it is a high flare: its style was not given`,
    );
  }
  return no(
    say`look at the tree, the pad, and an uneven rider; a saddle that keeps going to one side can mean a lame horse: ask a vet`,
  );
};

const creeps: Explain<Placed> = ({ facts }) => {
  if (facts.ring.x < -facts.model['slant-fine'] * facts.k) {
    return yes(
      say`the ring hangs ${dist(-facts.ring.x)} behind the groove, so cinching up pulls the saddle forward`,
    );
  }
  return no(
    say`the ring is not far behind the groove: look at the tree's fit, low (mutton) withers, and an unused back cinch`,
  );
};

const slipsBack: Explain<Placed> = ({ facts }) => {
  if (facts.ring.x > facts.model['slant-fine'] * facts.k) {
    return yes(
      say`the ring hangs ${dist(facts.ring.x)} ahead of the groove, so cinching up pulls the saddle back`,
    );
  }
  return no(say`the ring is not far ahead of the groove: look at the tree's fit and at a breast collar`);
};

const girthy: Explain = ({ judged: { candidate } }) => {
  const { inches, floor } = candidate.clearance;
  if (inches < floor) {
    const stop = say`stop using this cinch; ask a vet all the same; ulcers and lameness are common causes`;
    return yes(joined([nearWords(inches), stop]));
  }
  return no(
    joined([vetFirst, say`this cinch clears the elbow by about ${gap(inches)}; tighten it in stages`]),
  );
};

const explanations: Readonly<Record<Trouble, Explain>> = {
  'elbow-gall': elbowGall,
  'buckle-rub': buckleRub,
  'saddle-rolls': rolls,
  'creeps-forward': creeps,
  'slips-back': slipsBack,
  girthy,
};
