/** Lays one spec on the horse: where its edge runs, how far from the elbow, what the buckle and the latigo do. */
import { hoopPressure } from '../geometry/strap.ts';
import type { Buckle, Style } from '../order/types.ts';
import type { Layers } from '../stock/buckles.ts';
import { bodyCordFeet } from '../stock/cord.ts';
import {
  areaAbove,
  fullWidth,
  outlineOf,
  roperShape,
  straightShape,
  widthAt,
  widthAtBuckle,
  type Outline,
  type Shape,
} from '../stock/outline.ts';
import type { Candidate, Clearance, Spec } from './candidate.ts';
import { clearanceOf } from './clearance.ts';
import { bodyEdge } from './edges.ts';
import type { BuckleFit, Ground } from './ground.ts';

/** Everything that follows from a spec on this horse; undefined when the style cannot be tied in that length. */
export function lay(spec: Spec, ground: Ground): Candidate | undefined {
  const fit = ground.buckleFit(spec.buckle, spec.length);
  const shape = fit.low <= 0 ? undefined : shapeOf(spec, fit.low, ground);
  return shape === undefined ? undefined : new Laid(spec, { shape, fit, ground });
}

/** Shape of the spec; undefined when a low flare finds no room below the buckle. */
function shapeOf({ style, strands }: Spec, top: number, ground: Ground): Shape | undefined {
  const { model } = ground.facts;
  if (style === 'straight') return straightShape(fullWidth(strands, model), top);
  const high = top - model['high-flare-start'];
  if (style === 'high-flare') return roperShape(strands, { start: high, top }, model);
  const ceiling = high - model['weave-step'];
  if (ceiling < model['flare-length']) return undefined;
  return roperShape(strands, { start: Math.min(ceiling, ground.lowFlareLimit(strands)), top }, model);
}

/**
 * Clearance of the cords. No shape is wider than the straight of as many strands, so where the straight comes nearest
 * at a station at which this one is full, both have the same clearance and nothing needs to be computed again.
 */
function bodyClearance(shape: Shape, { style, strands }: Spec, ground: Ground): Clearance {
  const straight = ground.straightClearance(strands);
  if (straight.inches > 0 && straight.station <= shape.fullUpTo) return straight;
  if (style !== 'straight') return ground.roperClearance(shape, strands);
  const edge = bodyEdge(shape, ground.facts.centreLine.slope);
  return clearanceOf(edge, { facts: ground.facts, where: 'cinch', bodyWidth: shape.full });
}

interface Parts {
  readonly shape: Shape;
  readonly fit: BuckleFit;
  readonly ground: Ground;
}

/**
 * Hundreds are laid for one order and few are looked at closely: what ranking does not need is computed when read.
 * Fields are only declared, so that each is written once, by the constructor.
 */
class Laid implements Candidate {
  declare readonly style: Style;
  declare readonly strands: number;
  declare readonly buckle: Buckle;
  declare readonly layers: Layers | 0;
  declare readonly length: number;
  declare readonly shape: Shape;
  declare readonly clearance: Clearance;
  declare private readonly fit: BuckleFit;
  declare private readonly ground: Ground;

  constructor(spec: Spec, { shape, fit, ground }: Parts) {
    this.style = spec.style;
    this.strands = spec.strands;
    this.buckle = spec.buckle;
    this.layers = spec.layers;
    this.length = spec.length;
    this.shape = shape;
    this.fit = fit;
    this.ground = ground;
    const body = bodyClearance(shape, spec, ground);
    this.clearance = body.inches <= fit.clearance.inches ? body : fit.clearance;
  }

  get outline(): Outline {
    return outlineOf(this.shape);
  }

  get width(): number {
    return fullWidth(this.strands, this.ground.facts.model);
  }

  get buckleWidth(): number {
    return widthAtBuckle(this.style, this.strands, this.ground.facts.model);
  }

  get elbowWidth(): number {
    return Math.min(widthAt(this.shape, this.ground.elbow), widthAt(this.shape, this.ground.armpit));
  }

  get flareStart(): number | undefined {
    return this.style === 'straight' ? undefined : this.fit.low - this.shape.pinchedFrom;
  }

  get buckleClearance(): number {
    return this.fit.clearance.inches;
  }

  get buckleAboveElbow(): number {
    return this.fit.aboveElbow;
  }

  get buckleBelowWidest(): number {
    return this.fit.belowWidest;
  }

  get run(): number {
    return this.fit.run;
  }

  get runSd(): number {
    return this.ground.runSd;
  }

  /** Thin-wall hoop pressure T/(w R) where it is highest behind the elbow; only to compare candidates. */
  get pressure(): number {
    const { pressStations, facts } = this.ground;
    let worst = 0;
    for (const { station, radius } of pressStations) {
      worst = Math.max(worst, hoopPressure(facts.model.tension, widthAt(this.shape, station), radius));
    }
    return worst;
  }

  get gripArea(): number {
    return 2 * areaAbove(this.shape, this.ground.armpit);
  }

  get cordFeet(): number {
    return bodyCordFeet(this.strands, this.length);
  }
}
