/** Lays one spec on the horse: where its edge runs, how far from the elbow, what the buckle and the latigo do. */
import type { Buckle, Style } from '../order/types.ts';
import type { Layers } from '../stock/buckles.ts';
import { accentAtMost, accentFeet } from '../stock/accent.ts';
import { bodyCordFeet } from '../stock/cord.ts';
import {
  areaBetween,
  fullWidth,
  outlineOf,
  roperShape,
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
export function lay(spec: Spec, ground: Ground): LaidCandidate | undefined {
  const laid = new Laid(ground);
  return laid.lay(spec.style, spec, ground.hang(spec.buckle, spec.length)) ? laid : undefined;
}

/**
 * Hundreds are laid for one order and few are kept or looked at closely: so one may be laid again as another, and what
 * judging does not need is computed when read. Fields are only declared, so that each is written once at first.
 */
export class Laid implements LaidCandidate {
  declare style: Style;
  declare strands: number;
  declare layers: Layers | 0;
  declare clearance: Clearance;
  declare clearanceNo: number;
  declare styleNo: number;
  declare strandsNo: number;
  declare buckleNo: number;
  declare lengthNo: number;
  declare bodyNo: number;
  declare private body: Body;
  declare private hang: Hang;
  declare private readonly ground: Ground;

  constructor(ground: Ground) {
    this.ground = ground;
  }

  /** Lays it; false when the style cannot be tied below that buckle, and then it must not be read. */
  lay(style: Style, { strands, layers }: Omit<Made, 'style'>, hang: Hang): boolean {
    const body = this.ground.body(style, strands, hang);
    if (body === undefined) return false;
    this.style = style;
    this.strands = strands;
    this.layers = layers;
    this.body = body;
    this.hang = hang;
    this.styleNo = styles[style].effort;
    this.strandsNo = body.strandsNo;
    this.buckleNo = hang.buckleNo;
    this.lengthNo = hang.lengthNo;
    this.bodyNo = body.no;
    // Cords that come nearest above the buckle's low edge end before they get there.
    const whole = body.clearance.station <= hang.low;
    const cords = whole ? body.clearance : this.cutClearance();
    const byCords = cords.inches <= hang.clearance.inches;
    this.clearance = byCords ? cords : hang.clearance;
    this.clearanceNo = !byCords ? hang.clearanceNo : whole ? body.clearanceNo : this.ground.number();
    return true;
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
    if (this.style !== 'straight') return roperClearance(shape, this.ground.pinched(this.strands), field);
    return clearanceOf(bodyEdge(shape, field.slope), shape.full, field);
  }

  get shape(): Shape {
    const { low: top } = this.hang;
    if (this.style === 'straight') return straightShape(this.width, top);
    return roperShape(this.strands, { start: this.body.start, top }, this.ground.facts.model);
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
    return this.style === 'straight' ? undefined : this.hang.low - this.body.start;
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
    return 2 * areaBetween(this.shape, this.ground.armpit, this.hang.low);
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
