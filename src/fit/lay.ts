/** Lays one spec on the horse: where its edge runs, how far from the elbow, what the buckle and the latigo do. */
import type { Buckle, Style } from '../order/types.ts';
import type { Layers } from '../stock/buckles.ts';
import { accentAtMost, accentFeet } from '../stock/accent.ts';
import { bodyCordFeet } from '../stock/cord.ts';
import {
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
import type { Candidate, Clearance, Spec } from './candidate.ts';
import { clearanceOf, roperClearance } from './clearance.ts';
import { bodyEdge } from './edges.ts';
import { hasRoom, type Body, type Ground, type Hang } from './ground.ts';

/** A candidate whose choices are numbered. */
export type LaidCandidate = Candidate & Choices;

/** Everything that follows from a spec on this horse; undefined when the style cannot be tied in that length. */
export function lay(spec: Spec, ground: Ground): LaidCandidate | undefined {
  const { style, strands, layers } = spec;
  const make = {
    style,
    styleNo: styles[style].effort,
    strands,
    strandsNo: ground.strandsNo(strands),
    layers,
  };
  const hang = ground.hang(spec.buckle, spec.length);
  return hasRoom(style, hang) ? new Laid(ground).lay(make, hang) : undefined;
}

/** What is tied to a buckle. */
interface Cords {
  readonly style: Style;
  readonly styleNo: number;
  readonly strands: number;
  readonly strandsNo: number;
  readonly layers: Layers | 0;
}

/**
 * Hundreds are laid for one order and few are kept or looked at closely: so one may be laid again as another, and what
 * needs the cords is computed when it is read. Fields are only declared, so that each is written once at first.
 */
export class Laid implements LaidCandidate {
  declare private make: Cords;
  declare private hang: Hang;
  declare private cords: Body | undefined;
  declare private nearest: Clearance | undefined;
  declare private nearestNo: number;
  declare private readonly ground: Ground;

  constructor(ground: Ground) {
    this.ground = ground;
  }

  /** Lays it; where the style cannot be tied below that buckle it must not be read: see `hasRoom`. */
  lay(make: Cords, hang: Hang): this {
    this.make = make;
    this.hang = hang;
    this.cords = undefined;
    this.nearest = undefined;
    return this;
  }

  get style(): Style {
    return this.make.style;
  }

  get styleNo(): number {
    return this.make.styleNo;
  }

  get strands(): number {
    return this.make.strands;
  }

  get strandsNo(): number {
    return this.make.strandsNo;
  }

  get layers(): Layers | 0 {
    return this.make.layers;
  }

  get buckleNo(): number {
    return this.hang.buckleNo;
  }

  get lengthNo(): number {
    return this.hang.lengthNo;
  }

  get buckle(): Buckle {
    return this.hang.buckle;
  }

  get length(): number {
    return this.hang.length;
  }

  private get body(): Body {
    return (this.cords ??= this.ground.body(this.style, this.strandsNo, this.hang));
  }

  get bodyNo(): number {
    return this.body.no;
  }

  get clearance(): Clearance {
    return this.nearest ?? this.findNearest();
  }

  get clearanceNo(): number {
    if (this.nearest === undefined) this.findNearest();
    return this.nearestNo;
  }

  private findNearest(): Clearance {
    const { hang } = this;
    const { near } = this.body;
    // Cords that come nearest above the buckle's low edge end before they get there.
    const whole = near.clearance.station <= hang.low;
    const ofCords = whole ? near.clearance : this.cutClearance();
    const byCords = ofCords.inches <= hang.frameGap;
    this.nearestNo = !byCords ? hang.clearanceNo : whole ? near.clearanceNo : this.ground.number();
    return (this.nearest = byCords ? ofCords : this.ground.frameClearance(hang));
  }

  private cutClearance(): Clearance {
    const { shape } = this;
    const { field } = this.ground;
    if (this.style !== 'straight') return roperClearance(shape, this.ground.pinched(this.strandsNo), field);
    return clearanceOf(bodyEdge(shape, field.slope), shape.full, field);
  }

  get shape(): Shape {
    const { strands, hang, ground } = this;
    if (this.style === 'straight') return straightShape(this.width, hang.low);
    return roperShape({ strands, start: this.body.start, top: hang.low }, ground.facts.model);
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
    return this.hang.frameGap;
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
    const { body, hang, ground } = this;
    // A fan ends where the cords are pinched, and what is above that is as wide as at the buckle.
    const narrow = hang.low - Math.max(body.start, ground.armpit);
    return 2 * (body.fan + this.buckleWidth * Math.max(0, narrow));
  }

  get cordFeet(): number {
    return bodyCordFeet(this.strands, this.length);
  }

  get accentFeet(): number {
    return accentFeet(this, this.ground.facts.order.colors?.accent?.length ?? 0);
  }

  get accentAtMost(): number {
    const { order, model } = this.ground.facts;
    return accentAtMost(this, order.colors?.accent?.length ?? 0, model);
  }
}
