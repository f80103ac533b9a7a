/** An outcome's clearance and latigo run at tying, with spreads, and its result. */
import { factsOf } from '../horse/facts.ts';
import { stationSd } from '../horse/ring.ts';
import type { Spec } from '../cinch/candidate.ts';
import { lay } from '../cinch/lay.ts';
import { sideOf } from '../cinch/side.ts';
import type { OutcomeResult } from '../numbers/outcome-results.ts';
import type { Order } from '../order/types.ts';
import { defaultModel, type Model } from '../numbers/numbers.ts';

/** Inches. */
export interface Known {
  readonly value: number;
  readonly sd: number;
}

export interface Evidence {
  readonly result: OutcomeResult;
  readonly days: number;
  /** Over k; the buckle's where it rubbed, else the strands'. */
  readonly clearance: Known;
  /** Latigo run before any stretch, with the spread of the rings. */
  readonly slack: Known;
}

export interface Tried {
  readonly order: Order;
  readonly spec: Spec;
  readonly days: number;
  readonly result: OutcomeResult;
}

/** Undefined when the cinch does not fit the horse. */
export function evidenceOf({ order, spec, days, result }: Tried, model: Model): Evidence | undefined {
  // The default floor, so the same outcomes always teach the same.
  const facts = factsOf(order, { ...model, 'floor-clearance': defaultModel['floor-clearance'] });
  const laid = lay(spec, sideOf(facts));
  if (laid === undefined) return undefined;
  const { k, ring, girth, lengthNeed, floor } = facts;
  const near = result === 'buckle-rub' ? laid.frameClearance : laid.cordClearance;
  return {
    result,
    days,
    // A frame may come nearer than strands, so each counts above its own floor.
    clearance: { value: (near.inches - near.floor + floor) / k, sd: near.sd / k },
    slack: {
      value: (lengthNeed.ringToRing.value - spec.length) / 2,
      sd: stationSd(ring, girth),
    },
  };
}
