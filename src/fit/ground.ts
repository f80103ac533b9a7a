/** What all candidates of one order share, computed once and kept: where buckles lie, radii, low-flare starts. */
import { curvatureRadiusAt, heightAt } from '../geometry/ellipse.ts';
import type { Facts } from '../facts/facts.ts';
import { runFor } from '../facts/length.ts';
import type { Buckle } from '../order/types.ts';
import { fullWidth, straightShape, type Shape } from '../stock/outline.ts';
import type { Clearance } from './candidate.ts';
import { clearanceOf, roperClearance } from './clearance.ts';
import { bodyEdge, frameEdge } from './edges.ts';
import { lowFlareLimit, lowFlareTarget } from './low-flare.ts';

/** How one buckle lies at one finished length, whatever is tied to it. */
export interface BuckleFit {
  /** Station of its low edge, where the cords end. */
  readonly low: number;
  readonly aboveElbow: number;
  readonly belowWidest: number;
  readonly run: number;
  readonly clearance: Clearance;
}

export interface Ground {
  readonly facts: Facts;
  readonly armpit: number;
  readonly elbow: number;
  /** Spread of the latigo run: of half the ring to ring, and of half the give. */
  readonly runSd: number;
  /** Stations behind the elbow at which pressure is compared, with the barrel's radius there. */
  readonly pressStations: readonly { readonly station: number; readonly radius: number }[];
  readonly buckleFit: (buckle: Buckle, length: number) => BuckleFit;
  readonly lowFlareLimit: (strands: number) => number;
  /** Clearance of a roper's cords; the shape must be one of that many strands. */
  readonly roperClearance: (shape: Shape, strands: number) => Clearance;
  /** Clearance of an endless straight of that many strands: what any outline has where it is full. */
  readonly straightClearance: (strands: number) => Clearance;
}

/** The shared ground of an order. */
export function groundOf(facts: Facts): Ground {
  const { model, k, barrel, girth, centreLine, lengthNeed } = facts;
  const armpit = model['armpit-station'] * k;
  const elbow = facts.elbowStation;
  const flareTarget = lowFlareTarget(facts);
  const widest = girth.value / 4;
  const buckleFit = (buckle: Buckle, length: number): BuckleFit => {
    const low = (length + lengthNeed.stretch) / 2 - buckle.frameHeight;
    return {
      low,
      aboveElbow: heightAt(barrel.ellipse, low) - facts.elbowHeight,
      belowWidest: widest - low,
      run: runFor(length, lengthNeed),
      clearance: clearanceOf(frameEdge(buckle, low, centreLine.slope), {
        facts,
        where: 'buckle',
        bodyWidth: 0,
      }),
    };
  };
  const straightClearance = (strands: number): Clearance => {
    const width = fullWidth(strands, model);
    const edge = bodyEdge(straightShape(width, girth.value / 2), centreLine.slope);
    return clearanceOf(edge, { facts, where: 'cinch', bodyWidth: width });
  };
  return {
    facts,
    armpit,
    elbow,
    runSd: Math.hypot(lengthNeed.target.sd, lengthNeed.stretch / 2) / 2,
    pressStations: [armpit, (armpit + elbow) / 2, elbow].map((station) => ({
      station,
      radius: curvatureRadiusAt(barrel.ellipse, station),
    })),
    buckleFit: rememberedPairs(buckleFit),
    lowFlareLimit: remembered((strands) => lowFlareLimit(strands, flareTarget, facts)),
    straightClearance: remembered(straightClearance),
    roperClearance: roperClearances(facts),
  };
}

/**
 * Ropers of one strand count whose flares begin at the same station differ only in how far up the buckle sits: they
 * share a clearance unless the pinched part comes nearest above the buckle's low edge.
 */
function roperClearances(facts: Facts): Ground['roperClearance'] {
  const byStrands = remembered(() => new Map<number, Clearance>());
  return (shape, strands) => {
    const byStart = byStrands(strands);
    let endless = byStart.get(shape.pinchedFrom);
    if (endless === undefined) {
      endless = roperClearance({ ...shape, top: facts.girth.value / 2 }, facts);
      byStart.set(shape.pinchedFrom, endless);
    }
    return endless.station <= shape.top ? endless : roperClearance(shape, facts);
  };
}

/** Few distinct strand counts stand behind hundreds of candidates. */
function remembered<V>(compute: (key: number) => V): (key: number) => V {
  const known = new Map<number, V>();
  return (key) => {
    let value = known.get(key);
    if (value === undefined) known.set(key, (value = compute(key)));
    return value;
  };
}

function rememberedPairs<A extends object, V>(compute: (a: A, b: number) => V): (a: A, b: number) => V {
  const known = new Map<A, (b: number) => V>();
  return (a, b) => {
    let inner = known.get(a);
    if (inner === undefined) known.set(a, (inner = remembered((key) => compute(a, key))));
    return inner(b);
  };
}
