/** Remarks where tapes disagree; we use them anyway. */
import { formatHands } from '../units/hands.ts';
import { dist, len, say, type Phrase } from '../units/phrase.ts';
import { bodyBounds } from '../numbers/body-bounds.ts';
import type { Facts } from './facts.ts';
import { dropOf } from './drop.ts';
import { girthFromHeight, girthOf } from './girth.ts';
import { tighterSide, usualRoom } from './room.ts';
import { contradicts } from './weigh.ts';

/** Spreads are the model's. */
export function tapeRemarks(facts: Facts): Phrase[] {
  const looks = [girthRemark, roomRemark, sidesRemark, ringRemark, depthRemark, bodyRemark, ponyRemark];
  return looks.flatMap((look) => look(facts) ?? []);
}

/** Against height and condition. */
function girthRemark({ order: { horse }, girth }: Facts): Phrase | undefined {
  if (horse.height === undefined || girth.kind !== 'measured') return undefined;
  const usual = girthFromHeight(horse.height, horse.kind, horse.condition);
  if (!contradicts(usual, girth)) return undefined;
  return say`Check the tapes: by ${horse.condition === undefined ? 'height' : 'height and condition'} the girth would be about ${len(usual.value)}, give or take ${len(usual.sd)}. We used the taped girth.`;
}

/** Only too much room is dangerous. Photos have their own remark. */
function roomRemark({ room, k, model, photo }: Facts): Phrase | undefined {
  if (photo !== undefined) return undefined;
  const usual = usualRoom(k, model);
  if (room.kind !== 'measured' || room.value < usual.value || !contradicts(usual, room)) return undefined;
  return say`Check the tape: elbow room is far more than the ${len(usual.value)} usual for this girth. Measure it again before you tie.`;
}

/** A horse standing square has equal room on both sides. */
function sidesRemark({ order: { horse }, model }: Facts): Phrase | undefined {
  const { elbowSides: sides } = horse;
  const side = tighterSide(horse);
  if (sides === undefined || side === undefined) return undefined;
  const sd = model['elbow-room-taped-sd'];
  return contradicts({ value: sides.near, sd }, { value: sides.off, sd })
    ? say`Check the tapes: elbow room is ${dist(sides.near)} near side, ${dist(sides.off)} off side. Measure both again, horse square; we used the ${side} side.`
    : say`Elbow room is ${dist(sides.near)} near side, ${dist(sides.off)} off side: sized on the ${side} side, the tighter.`;
}

/** Against girth less two drops. */
function ringRemark({ order: { horse, saddle }, model, photo }: Facts): Phrase | undefined {
  const { ringToRing, ringDrop } = saddle;
  // A photo shows the drop better than the usual.
  if (ringToRing === undefined || (photo !== undefined && ringDrop === undefined)) return undefined;
  const girth = girthOf(horse, model); // without what this tape adds
  const drop = dropOf(saddle, model);
  const perGirth = 1 - 2 * drop.perGirth;
  const whole = {
    value: perGirth * girth.value - 2 * drop.fixed,
    sd: Math.hypot(perGirth * girth.sd, 2 * drop.sd),
  };
  if (!contradicts(whole, { value: ringToRing, sd: model['ring-to-ring-sd'] })) return undefined;
  const from = ringDrop === undefined ? 'the usual ring drop' : 'the ring drop';
  return say`Check the tapes: by girth and ${from}, ring to ring would be ${len(whole.value)}, give or take ${len(whole.sd)}. We used the taped ring to ring.`;
}

/** A girth not taped may be two spreads off. */
function depthRemark({ order: { horse }, girth }: Facts): Phrase | undefined {
  if (typeof horse.barrel !== 'object') return undefined;
  const { depth } = horse.barrel;
  const slack = girth.kind === 'measured' ? 0 : 2 * girth.sd;
  const { min, max } = bodyBounds.depthOverGirth;
  const [least, most] = [min * (girth.value - slack), max * (girth.value + slack)];
  if (depth >= least && depth <= most) return undefined;
  return say`Check the tapes: a barrel of ${len(girth.value)} heart girth is ${len(least)} to ${len(most)} deep, not ${len(depth)}. Measure depth and girth again before you tie.`;
}

/** Only the weight uses body length. */
function bodyRemark({ order: { horse } }: Facts): Phrase | undefined {
  const { height, bodyLength } = horse;
  if (height === undefined || bodyLength === undefined) return undefined;
  const { min, max } = bodyBounds.lengthOverHeight;
  if (bodyLength >= min * height && bodyLength <= max * height) return undefined;
  return say`Check the tapes: a horse of ${formatHands(height)} is ${len(min * height)} to ${len(max * height)} long, not ${len(bodyLength)}. Measure both again; the weight goes by it.`;
}

/** A pony gets far fewer strands, so check the word. */
function ponyRemark({ order: { horse } }: Facts): Phrase | undefined {
  const { height, kind } = horse;
  if (kind !== 'pony' || height === undefined || height <= bodyBounds.tallestPony) return undefined;
  return say`Check height and kind: a pony stands 14.2 hh at most, not ${formatHands(height)}. We sized it as a pony.`;
}
