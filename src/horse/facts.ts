/** Everything derived from an order before judging. */
import { heightAt } from '../math/ellipse.ts';
import type { LearnedFrom, Order } from '../order/types.ts';
import type { PhotoReading } from '../photo/read/reading.ts';
import type { Model } from '../numbers/numbers.ts';
import { barrelOf, barrelWorking, withPhotoDepth, type Barrel } from './barrel.ts';
import { centreLineOf, pushOf, type CentreLine } from './centre-line.ts';
import { elbowLineOf, type ElbowLine } from './elbow-line.ts';
import { asAssumption, type Assumption, type Estimate, type Working } from './estimate.ts';
import { girthOf, girthWorking, sizeFactor } from './girth.ts';
import { withRingTapes, type Girth } from './girth-by-ring.ts';
import { lengthNeed, lengthWorking, type LengthNeed } from './length.ts';
import { ringOf, ringWorking, type Ring } from './ring.ts';
import { photoReadingOf } from './photo.ts';
import { practiceOf, type Practice } from './practice.ts';
import { roomOf, roomWorking, type Room } from './room.ts';
import { isSore } from './sore.ts';
import { slipNeed, type SlipNeed } from './slip-need.ts';
import { spreadOf, type Spread } from './spread.ts';
import { weightWorking } from './weight.ts';

export interface Facts {
  readonly order: Order;
  readonly model: Model;
  readonly girth: Girth;
  /** Girth over 72 in. */
  readonly k: number;
  readonly barrel: Barrel;
  readonly room: Room;
  readonly ring: Ring;
  readonly photo: PhotoReading | undefined;
  readonly elbowLine: ElbowLine;
  readonly centreLine: CentreLine;
  readonly lengthNeed: LengthNeed;
  readonly slipNeed: SlipNeed;
  /** Of the point of the elbow; height above the midline. */
  readonly elbowStation: number;
  readonly elbowHeight: number;
  /** Elbow clearance. */
  readonly floor: number;
  readonly required: number;
  readonly spread: Spread;
  /** Strand counts makers tie here. */
  readonly practice: Practice;
}

/** Never throws for a checked order. */
export function factsOf(order: Order, model: Model): Facts {
  const girth = withRingTapes(girthOf(order.horse, model), order.saddle, model);
  const k = sizeFactor(girth.value, model);
  const photo = photoReadingOf(order, girth, model);
  const room = roomOf({ horse: order.horse, k, seen: photo?.seen }, model);
  const guessed = barrelOf(order.horse, girth.value, model);
  const barrel =
    photo?.seen.depth === undefined
      ? guessed
      : withPhotoDepth(guessed, { girth, depth: photo.seen.depth }, model);
  const ring = ringOf(
    { saddle: order.saddle, girth: girth.value, room: room.value, barrel, seen: photo?.seen },
    model,
  );
  const push = pushOf(order.horse, k, model);
  const centreLine = centreLineOf(ring, push, girth.value);
  const elbowStation = model['elbow-station'] * k;
  return {
    order,
    model,
    girth,
    k,
    barrel,
    room,
    ring,
    photo,
    centreLine,
    elbowStation,
    elbowLine: elbowLineOf(room.value, girth.value, model),
    lengthNeed: lengthNeed(ring, girth.value, model),
    slipNeed: slipNeed(order),
    elbowHeight: heightAt(barrel.ellipse, elbowStation),
    floor: model['floor-clearance'] * k,
    required: model['required-clearance'] * k,
    spread: spreadOf({ girth, room, ring, push }, model),
    practice: practiceOf(
      { horse: order.horse, girth, room, k, setBack: ring.setBack.value / k, isSore: isSore(order) },
      model,
    ),
  };
}

/** Every input, with basis and spread. */
export function assumptionsOf(facts: Facts, learnedStretch?: LearnedFrom): Assumption[] {
  const { girth, room, ring, barrel, centreLine, lengthNeed: need, model } = facts;
  const pitch: Estimate = {
    value: model['strand-pitch'],
    sd: model['strand-pitch-sd'],
    kind: 'assumed',
    basis: 'two 8-ply strands make half an inch',
  };
  const give: Estimate = {
    value: need.stretch,
    sd: need.stretch / 2,
    ...(learnedStretch === undefined
      ? { kind: 'assumed', basis: 'new mohair stretches' }
      : {
          kind: 'computed',
          basis: `from ${String(learnedStretch.outcomes)} outcomes of this shop until ${learnedStretch.until}`,
        }),
  };
  return [
    asAssumption('heart girth', girth),
    asAssumption('elbow room', room),
    asAssumption('ring set-back', ring.setBack),
    asAssumption('ring to ring', need.ringToRing),
    asAssumption('barrel width over depth', barrel.ratio, 'ratio'),
    asAssumption('spring of rib', centreLine.push),
    asAssumption('width of a strand', pitch),
    asAssumption('stretch in new cord', give),
  ];
}

/** In the order computed. */
export function workingOf(facts: Facts): Working[] {
  const { order, model, girth, k, room, ring, barrel } = facts;
  return [
    ...girthWorking(girth, order, model),
    ...weightWorking(girth.value, order.horse.bodyLength),
    ...barrelWorking(barrel, girth.value),
    ...roomWorking(room, { horse: order.horse, k }, model),
    ...ringWorking(ring, { room: room.value, girth: girth.value }, model),
    ...lengthWorking(facts.lengthNeed, order.saddle, girth.value),
  ];
}
