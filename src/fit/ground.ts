/** What all candidates of one order share, computed once and kept: where buckles hang, where cords lie, how near the elbow. */
import { curvatureRadiusAt, heightAt } from '../geometry/ellipse.ts';
import { hoopPressure } from '../geometry/strap.ts';
import type { Facts } from '../facts/facts.ts';
import { runFor } from '../facts/length.ts';
import type { Buckle } from '../order/types.ts';
import { fullWidth, pinchedWidth, roperShape, straightShape, widthAt, type Shape } from '../stock/outline.ts';
import type { Clearance } from './candidate.ts';
import { clearanceOf, fieldOf, roperClearance, type Field } from './clearance.ts';
import { bodyEdge, frameEdge } from './edges.ts';
import { lowFlareLimit, lowFlareTarget } from './low-flare.ts';

/** How one buckle hangs at one finished length, whatever is tied to it. */
export interface Hang {
  readonly no: number;
  readonly buckleNo: number;
  readonly lengthNo: number;
  /** Station of its low edge, where the cords end. */
  readonly low: number;
  readonly aboveElbow: number;
  readonly belowWidest: number;
  readonly run: number;
  readonly clearance: Clearance;
}

/** Cords on the side of the horse as if they went on up to the back: where they end is the buckle's business. */
export interface Body {
  readonly no: number;
  readonly strandsNo: number;
  readonly shape: Shape;
  readonly clearance: Clearance;
  /** Narrowest width between armpit and point of elbow. */
  readonly elbowWidth: number;
  /** Thin-wall hoop pressure T/(w R) where it is highest behind the elbow; only to compare candidates. */
  readonly pressure: number;
}

/** What cinches of one strand count share. */
export interface StrandCount {
  readonly straight: Body;
  /** Highest station at which a low flare may begin. */
  readonly lowFlareLimit: number;
  /** Cords of a roper whose flare begins at that station, which is not below 0. */
  readonly roper: (start: number) => Body;
}

/** The shared ground of an order. Numbers within it are given in the order in which things are first asked for. */
export class Ground {
  readonly facts: Facts;
  readonly field: Field;
  readonly armpit: number;
  /** Spread of the latigo run: of half the ring to ring, and of half the give. */
  readonly runSd: number;
  readonly #hangs = new Map<Buckle, Map<number, Hang>>();
  readonly #lengths: number[] = [];
  readonly #strands = new Map<number, StrandCount>();
  readonly #heights = new Map<number, number>();
  readonly #pressed: readonly { readonly station: number; readonly radius: number }[];
  readonly #flareTarget: number;
  #count = 0;

  constructor(facts: Facts) {
    const { model, k, barrel, lengthNeed } = facts;
    this.facts = facts;
    this.field = fieldOf(facts);
    this.armpit = model['armpit-station'] * k;
    this.runSd = Math.sqrt(lengthNeed.target.sd ** 2 + (lengthNeed.stretch / 2) ** 2) / 2;
    const elbow = facts.elbowStation;
    this.#pressed = [this.armpit, (this.armpit + elbow) / 2, elbow].map((station) => ({
      station,
      radius: curvatureRadiusAt(barrel.ellipse, station),
    }));
    this.#flareTarget = lowFlareTarget(facts, this.field);
  }

  /** A fresh number: equal numbers stand for equal clearances. */
  number(): number {
    return this.#count++;
  }

  hang(buckle: Buckle, length: number): Hang {
    let byLength = this.#hangs.get(buckle);
    if (byLength === undefined) this.#hangs.set(buckle, (byLength = new Map()));
    const known = byLength.get(length);
    if (known !== undefined) return known;
    // Numbered by the size of the map: each buckle keeps the number it got first.
    const buckleNo = byLength.values().next().value?.buckleNo ?? this.#hangs.size - 1;
    const hang = this.#hangOf(buckle, length, buckleNo);
    byLength.set(length, hang);
    return hang;
  }

  #hangOf(buckle: Buckle, length: number, buckleNo: number): Hang {
    const { girth, lengthNeed } = this.facts;
    const low = (length + lengthNeed.stretch) / 2 - buckle.frameHeight;
    return {
      no: this.number(),
      buckleNo,
      lengthNo: this.#lengthNo(length),
      low,
      aboveElbow: this.#heightAt(low) - this.facts.elbowHeight,
      belowWidest: girth.value / 4 - low,
      run: runFor(length, lengthNeed),
      clearance: clearanceOf(frameEdge(buckle, low, this.field.slope), 0, this.field),
    };
  }

  #lengthNo(length: number): number {
    const known = this.#lengths.indexOf(length);
    return known >= 0 ? known : this.#lengths.push(length) - 1;
  }

  /** Frames differ by quarter inches and lengths by inches: many low edges fall together. */
  #heightAt(low: number): number {
    let height = this.#heights.get(low);
    if (height === undefined)
      this.#heights.set(low, (height = heightAt(this.facts.barrel.ellipse, low)));
    return height;
  }

  strandCount(strands: number): StrandCount {
    let known = this.#strands.get(strands);
    if (known === undefined) this.#strands.set(strands, (known = this.#strandCount(strands)));
    return known;
  }

  #strandCount(strands: number): StrandCount {
    const { model, girth } = this.facts;
    const top = girth.value / 2;
    const strandsNo = this.#strands.size;
    const full = fullWidth(strands, model);
    const whole = straightShape(full, top);
    const clearance = clearanceOf(bodyEdge(whole, this.field.slope), full, this.field);
    const straight = this.#body(strandsNo, whole, clearance);
    const bodies = new Map<number, Body>();
    const roperOf = (start: number): Body => {
      const shape = roperShape(strands, { start, top: Math.max(top, start) }, model);
      // No roper is wider than the straight of as many strands: where that comes nearest at a station at which this
      // one is full, both have the same clearance.
      const same = straight.clearance.inches > 0 && straight.clearance.station <= shape.fullUpTo;
      return this.#body(strandsNo, shape, same ? straight.clearance : roperClearance(shape, this.field));
    };
    return {
      straight,
      lowFlareLimit: lowFlareLimit(
        { full, pinched: pinchedWidth(strands, model) },
        { target: this.#flareTarget, facts: this.facts },
      ),
      roper: (start) => {
        let body = bodies.get(start);
        if (body === undefined) bodies.set(start, (body = roperOf(start)));
        return body;
      },
    };
  }

  #body(strandsNo: number, shape: Shape, clearance: Clearance): Body {
    let pressure = 0;
    for (const { station, radius } of this.#pressed) {
      const here = hoopPressure(this.facts.model.tension, widthAt(shape, station), radius);
      if (here > pressure) pressure = here;
    }
    const elbowWidth = Math.min(widthAt(shape, this.facts.elbowStation), widthAt(shape, this.armpit));
    return { no: this.number(), strandsNo, shape, clearance, elbowWidth, pressure };
  }
}
