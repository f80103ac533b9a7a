/** What an outcome says: the clearance and the latigo run with which that cinch was tied, each with its spread, and what came of it. */
import { factsOf } from '../horse/facts.ts';
import { stationSd } from '../horse/ring.ts';
import type { Spec } from '../cinch/candidate.ts';
import { lay } from '../cinch/lay.ts';
import { sideOf } from '../cinch/side.ts';
import type { OutcomeResult } from '../numbers/outcome-results.ts';
import type { Order } from '../order/types.ts';
import { defaultModel, type Model } from '../numbers/numbers.ts';

/** A length as known when the cinch was tied, inches. */
export interface Known {
  readonly value: number;
  readonly sd: number;
}

export interface Evidence {
  readonly result: OutcomeResult;
  readonly days: number;
  /** Clearance at tying over the size factor: of the buckle where the buckle rubbed, else of the cords. */
  readonly clearance: Known;
  /** From ring to ring less the cinch, halved: the latigo run before any give; its spread is that of the rings. */
  readonly slack: Known;
}

export interface Tried {
  readonly order: Order;
  readonly spec: Spec;
  readonly days: number;
  readonly result: OutcomeResult;
}

/** The evidence of an outcome; undefined when such a cinch cannot be laid on that horse at all. */
export function evidenceOf({ order, spec, days, result }: Tried, model: Model): Evidence | undefined {
  // By the usual floor, whatever was learned before: the same outcomes teach the same again.
  const facts = factsOf(order, { ...model, 'floor-clearance': defaultModel['floor-clearance'] });
  const laid = lay(spec, sideOf(facts));
  if (laid === undefined) return undefined;
  const { k, ring, girth, lengthNeed, floor } = facts;
  const near = result === 'buckle-rub' ? laid.frameClearance : laid.cordClearance;
  return {
    result,
    days,
    // A frame may come nearer than cords in thin skin: it counts by how far it lies above its own floor.
    clearance: { value: (near.inches - near.floor + floor) / k, sd: near.sd / k },
    slack: {
      value: (lengthNeed.ringToRing.value - spec.length) / 2,
      sd: stationSd(ring, girth),
    },
  };
}
