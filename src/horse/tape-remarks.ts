/** Where tapes contradict each other, or what is usual: told, so that somebody measures again; they are used as they are. */
import { dist, len, say, type Phrase } from '../units/phrase.ts';
import type { Facts } from './facts.ts';
import { dropOf } from './drop.ts';
import { girthFromHeight, girthOf } from './girth.ts';
import { tighterSide, usualRoom } from './room.ts';
import { contradicts } from './weigh.ts';

/** Remarks in plain words; none where the tapes go together. Spreads are those of the model, as for a photo. */
export function tapeRemarks(facts: Facts): Phrase[] {
  return [girthRemark(facts), roomRemark(facts), sidesRemark(facts), ringRemark(facts)].filter(
    (remark) => remark !== undefined,
  );
}

/** Height and heart girth, by the line through breed means and what the condition makes of it. */
function girthRemark({ order: { horse }, girth }: Facts): Phrase | undefined {
  if (horse.height === undefined || girth.kind !== 'measured') return undefined;
  const usual = girthFromHeight(horse.height, horse.kind, horse.condition);
  if (!contradicts(usual, girth)) return undefined;
  return say`Check the tapes: by ${horse.condition === undefined ? 'height' : 'height and condition'} the girth would be about ${len(usual.value)}, give or take ${len(usual.sd)}. We used the taped girth.`;
}

/** Only too much of it: that lets a cinch come too near the elbow, while too little only makes it narrow. A photo says so itself. */
function roomRemark({ room, k, model, photo }: Facts): Phrase | undefined {
  if (photo !== undefined) return undefined;
  const usual = usualRoom(k, model);
  if (room.kind !== 'measured' || room.value < usual.value || !contradicts(usual, room)) return undefined;
  return say`Check the tape: elbow room is far more than the ${len(usual.value)} usual for this girth. Measure it again before you tie.`;
}

/** Both elbows: a horse that stands square has much the same room on both sides. */
function sidesRemark({ order: { horse }, model }: Facts): Phrase | undefined {
  const { elbowSides: sides } = horse;
  const side = tighterSide(horse);
  if (sides === undefined || side === undefined) return undefined;
  const sd = model['elbow-room-taped-sd'];
  return contradicts({ value: sides.near, sd }, { value: sides.off, sd })
    ? say`Check the tapes: elbow room is ${dist(sides.near)} near side, ${dist(sides.off)} off side. Measure both again, horse square; we used the ${side} side.`
    : say`Elbow room is ${dist(sides.near)} near side, ${dist(sides.off)} off side: sized on the ${side} side, the tighter.`;
}

/** Ring to ring against the girth less the drop on both sides; the drop as measured, else the usual one of the rigging. */
function ringRemark({ order: { horse, saddle }, model, photo }: Facts): Phrase | undefined {
  const { ringToRing, ringDrop } = saddle;
  // Of the usual drop a photo knows more.
  if (ringToRing === undefined || (photo !== undefined && ringDrop === undefined)) return undefined;
  const girth = girthOf(horse, model); // not the one that leans on this tape already
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
