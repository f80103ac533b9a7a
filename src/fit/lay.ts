/** Lays one spec on the horse: where its edge runs, how far from the elbow, what the buckle and the latigo do. */
import type { Buckle, Style } from '../order/types.ts';
import type { Layers } from '../stock/buckles.ts';
import { accentAtMost, accentFeet } from '../stock/accent.ts';
import { bodyCordFeet } from '../stock/cord.ts';
import {
  areaBetween,
  fullWidth,
  outlineOf,
  straightShape,
  widthAtBuckle,
  type Outline,
  type Shape,
} from '../stock/outline.ts';
import { styles } from '../stock/styles.ts';
import type { Choices } from './axes.ts';
import type { Candidate, Clearance, Made, Spec } from './candidate.ts';
import { clearanceOf, roperClearance } from './clearance.ts';
import { bodyEdge } from './edges.ts';
import type { Body, Ground, Hang } from './ground.ts';

/** A candidate whose choices are numbered. */
export type LaidCandidate = Candidate & Choices;

/** Everything that follows from a spec on this horse; undefined when the style cannot be tied in that length. */
export const lay = (spec: Spec, ground: Ground): LaidCandidate | undefined =>
  layOn(ground.hang(spec.buckle, spec.length), spec, ground);

/** The same on a buckle that hangs already. */
export function layOn(hang: Hang, made: Made, ground: Ground): LaidCandidate | undefined {
  const body = ground.body(made.style, made.strands, hang);
  return body === undefined ? undefined : new Laid(made, { body, hang, ground });
}

interface Parts {
  readonly body: Body;
  readonly hang: Hang;
  readonly ground: Ground;
}

/**
 * Hundreds are laid for one order and few are looked at closely: what judging does not need is computed when read.
 * Fields are only declared, so that each is written once, by the constructor.
 */
class Laid implements LaidCandidate {
  declare readonly style: Style;
  declare readonly strands: number;
  declare readonly layers: Layers | 0;
  declare readonly clearance: Clearance;
  declare readonly clearanceNo: number;
  declare readonly styleNo: number;
  declare private readonly body: Body;
  declare private readonly hang: Hang;
  declare private readonly ground: Ground;

  constructor({ style, strands, layers }: Made, { body, hang, ground }: Parts) {
    this.style = style;
    this.styleNo = styles[style].effort;
    this.strands = strands;
    this.layers = layers;
    this.body = body;
    this.hang = hang;
    this.ground = ground;
    // Cords that come nearest above the buckle's low edge end before they get there.
    const whole = body.clearance.station <= hang.low;
    const cords = whole ? body.clearance : this.cutClearance();
    const byCords = cords.inches <= hang.clearance.inches;
    this.clearance = byCords ? cords : hang.clearance;
    this.clearanceNo = !byCords ? hang.no : whole ? body.no : ground.number();
  }

  get buckle(): Buckle {
    return this.hang.buckle;
  }

  get length(): number {
    return this.hang.length;
  }

  private cutClearance(): Clearance {
    const { shape } = this;
    const { field } = this.ground;
    if (this.style !== 'straight') return roperClearance(shape, this.body.pinched, field);
    return clearanceOf(bodyEdge(shape, field.slope), shape.full, field);
  }

  get strandsNo(): number {
    return this.body.strandsNo;
  }

  get buckleNo(): number {
    return this.hang.buckleNo;
  }

  get lengthNo(): number {
    return this.hang.lengthNo;
  }

  get bodyNo(): number {
    return this.body.no;
  }

  get shape(): Shape {
    const { low } = this.hang;
    return this.style === 'straight'
      ? straightShape(this.body.shape.full, low)
      : { ...this.body.shape, top: low };
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
    return this.body.elbowWidth;
  }

  get flareStart(): number | undefined {
    return this.style === 'straight' ? undefined : this.hang.low - this.body.shape.pinchedFrom;
  }

  get buckleClearance(): number {
    return this.hang.clearance.inches;
  }

  get buckleAboveElbow(): number {
    return this.hang.aboveElbow;
  }

  get buckleBelowWidest(): number {
    return this.hang.belowWidest;
  }

  get run(): number {
    return this.hang.run;
  }

  get runSd(): number {
    return this.ground.runSd;
  }

  get pressure(): number {
    return this.body.pressure;
  }

  get gripArea(): number {
    return 2 * areaBetween(this.body.shape, this.ground.armpit, this.hang.low);
  }

  get cordFeet(): number {
    return bodyCordFeet(this.strands, this.length);
  }

  get accentFeet(): number {
    return accentFeet(this, this.ground.facts.order.colors?.accent ?? []);
  }

  get accentAtMost(): number {
    const { order, model } = this.ground.facts;
    return accentAtMost(this, order.colors?.accent?.length ?? 0, model);
  }
}
