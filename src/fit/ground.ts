/** What all candidates of one order share, computed once and kept: where buckles hang, where cords lie, how near the elbow. */
import { curvatureRadiusAt, heightAt } from '../geometry/ellipse.ts';
import { hoopPressure } from '../geometry/strap.ts';
import type { Facts } from '../facts/facts.ts';
import { runFor } from '../facts/length.ts';
import type { Buckle, Style } from '../order/types.ts';
import { fullWidth, pinchedWidth, roperShape, straightShape, widthAt, type Shape } from '../stock/outline.ts';
import type { Clearance } from './candidate.ts';
import {
  clearanceOf,
  fieldOf,
  pinchedThroughout,
  roperClearance,
  type Field,
  type Front,
} from './clearance.ts';
import { bodyEdge, frameEdge } from './edges.ts';
import { lowFlareLimit, lowFlareTarget } from './low-flare.ts';

/** How one buckle hangs at one finished length, whatever is tied to it. */
export interface Hang {
  readonly no: number;
  readonly buckleNo: number;
  readonly lengthNo: number;
  readonly buckle: Buckle;
  readonly length: number;
  /** Station of its low edge, where the cords end; equal stations have equal numbers. */
  readonly low: number;
  readonly lowNo: number;
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
  /** Of as many strands pinched throughout. */
  readonly pinched: Front;
  /** Narrowest width between armpit and point of elbow. */
  readonly elbowWidth: number;
  /** Thin-wall hoop pressure T/(w R) where it is highest behind the elbow; only to compare candidates. */
  readonly pressure: number;
}

/** What cinches of one strand count share. */
interface StrandCount {
  readonly straight: Body;
  /** The low flare that begins as high as the elbow allows. */
  readonly lowFlare: Body;
  /** Ropers whose flare begins as high as the buckle allows, by the number of its low edge. */
  readonly highFlares: Body[];
  readonly lowFlares: Body[];
  readonly roperFrom: (start: number) => Body;
}

/** The shared ground of an order. Numbers within it are given in the order in which things are first asked for. */
export class Ground {
  readonly facts: Facts;
  readonly field: Field;
  readonly armpit: number;
  /** Spread of the latigo run: of half the ring to ring, and of half the give. */
  readonly runSd: number;
  /** By the numbers of buckle and length. */
  readonly #hangs: Hang[][] = [];
  readonly #buckles: Buckle[] = [];
  readonly #lengths: number[] = [];
  readonly #strands = new Map<number, StrandCount>();
  readonly #lows: number[] = [];
  readonly #heights: number[] = [];
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
    const hangs = (this.#hangs[numberOf(buckle, this.#buckles)] ??= []);
    return (hangs[numberOf(length, this.#lengths)] ??= this.#hangOf(buckle, length));
  }

  #hangOf(buckle: Buckle, length: number): Hang {
    const { girth, lengthNeed } = this.facts;
    const low = (length + lengthNeed.stretch) / 2 - buckle.frameHeight;
    // Frames differ by quarter inches and lengths by inches: many low edges fall together.
    const lowNo = numberOf(low, this.#lows);
    const height = (this.#heights[lowNo] ??= heightAt(this.facts.barrel.ellipse, low));
    return {
      no: this.number(),
      buckleNo: numberOf(buckle, this.#buckles),
      lengthNo: numberOf(length, this.#lengths),
      buckle,
      length,
      low,
      lowNo,
      aboveElbow: height - this.facts.elbowHeight,
      belowWidest: girth.value / 4 - low,
      run: runFor(length, lengthNeed),
      clearance: clearanceOf(frameEdge(buckle, low, this.field.slope), 0, this.field),
    };
  }

  /** Cords below a buckle; undefined when there is no side left for them or for their flare. */
  body(style: Style, strands: number, { low, lowNo }: Hang): Body | undefined {
    if (low <= 0) return undefined;
    let count = this.#strands.get(strands);
    if (count === undefined) this.#strands.set(strands, (count = this.#strandCount(strands)));
    if (style === 'straight') return count.straight;
    const { model } = this.facts;
    const high = low - model['high-flare-start'];
    if (style === 'high-flare') return (count.highFlares[lowNo] ??= count.roperFrom(Math.max(0, high)));
    const ceiling = high - model['weave-step'];
    if (ceiling < model['flare-length']) return undefined;
    if (count.lowFlare.shape.pinchedFrom <= ceiling) return count.lowFlare;
    return (count.lowFlares[lowNo] ??= count.roperFrom(ceiling));
  }

  #strandCount(strands: number): StrandCount {
    const { model, girth } = this.facts;
    const top = girth.value / 2;
    const strandsNo = this.#strands.size;
    const full = fullWidth(strands, model);
    const whole = straightShape(full, top);
    const clearance = clearanceOf(bodyEdge(whole, this.field.slope), full, this.field);
    const pinched = pinchedThroughout(pinchedWidth(strands, model), top, this.field);
    const straight = this.#body(strandsNo, whole, { clearance, pinched });
    const roperFrom = (start: number): Body => {
      const shape = roperShape(strands, { start, top: Math.max(top, start) }, model);
      // No roper is wider than the straight of as many strands: where that comes nearest at a station at which this
      // one is full, both have the same clearance.
      const same = clearance.inches > 0 && clearance.station <= shape.fullUpTo;
      const own = same ? clearance : roperClearance(shape, pinched, this.field);
      return this.#body(strandsNo, shape, { clearance: own, pinched });
    };
    const limit = lowFlareLimit(
      { full, pinched: pinchedWidth(strands, model) },
      { target: this.#flareTarget, facts: this.facts },
    );
    return { straight, lowFlare: roperFrom(limit), highFlares: [], lowFlares: [], roperFrom };
  }

  #body(strandsNo: number, shape: Shape, { clearance, pinched }: Pick<Body, 'clearance' | 'pinched'>): Body {
    let pressure = 0;
    for (const { station, radius } of this.#pressed) {
      const here = hoopPressure(this.facts.model.tension, widthAt(shape, station), radius);
      if (here > pressure) pressure = here;
    }
    const elbowWidth = Math.min(widthAt(shape, this.facts.elbowStation), widthAt(shape, this.armpit));
    return { no: this.number(), strandsNo, shape, clearance, pinched, elbowWidth, pressure };
  }
}

/** Place of a value among those known; a new one is added. */
function numberOf<T>(value: T, known: T[]): number {
  const place = known.indexOf(value);
  return place >= 0 ? place : known.push(value) - 1;
}
