/** What all candidates of one order share, computed once and kept: heights, radii, low-flare starts. */
import { curvatureRadiusAt, heightAt } from '../geometry/ellipse.ts';
import type { Facts } from '../facts/facts.ts';
import { lowFlareLimit, lowFlareTarget } from './low-flare.ts';

export interface Ground {
  readonly facts: Facts;
  readonly armpit: number;
  readonly elbow: number;
  /** Stations behind the elbow at which pressure is compared, with the barrel's radius there. */
  readonly pressStations: readonly { station: number; radius: number }[];
  readonly widest: number;
  readonly heightAt: (station: number) => number;
  readonly lowFlareLimit: (strands: number) => number;
}

/** The shared ground of an order. */
export function groundOf(facts: Facts): Ground {
  const { model, k, barrel } = facts;
  const armpit = model['armpit-station'] * k;
  const elbow = facts.elbowStation;
  const flareTarget = lowFlareTarget(facts);
  return {
    facts,
    armpit,
    elbow,
    pressStations: [armpit, (armpit + elbow) / 2, elbow].map((station) => ({
      station,
      radius: curvatureRadiusAt(barrel.ellipse, station),
    })),
    widest: facts.girth.value / 4,
    heightAt: remembered((station) => heightAt(barrel.ellipse, station)),
    lowFlareLimit: remembered((strands) => lowFlareLimit(strands, flareTarget, facts)),
  };
}

/** Few distinct buckles, lengths and strand counts stand behind hundreds of candidates. */
function remembered(compute: (key: number) => number): (key: number) => number {
  const known = new Map<number, number>();
  return (key) => {
    let value = known.get(key);
    if (value === undefined) {
      value = compute(key);
      known.set(key, value);
    }
    return value;
  };
}
