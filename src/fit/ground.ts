/** What all candidates of one order share, computed once and kept: where buckles hang, where cords lie, how near the elbow. */
import { curvatureRadiusAt, heightAt } from '../geometry/ellipse.ts';
import { hoopPressure } from '../geometry/strap.ts';
import type { Facts } from '../facts/facts.ts';
import { runFor } from '../facts/length.ts';
import type { Buckle, Style } from '../order/types.ts';
import {
  fanArea,
  fullWidth,
  pinchedWidth,
  straightShape,
  widthAt,
  writeRoper,
  type Shape,
} from '../stock/outline.ts';
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
import { elbowGap } from './elbow-gap.ts';
import { lowFlareLimit, lowFlareTarget } from './low-flare.ts';

/** How one buckle hangs at one finished length, whatever is tied to it. */
export interface Hang {
  readonly buckleNo: number;
  readonly lengthNo: number;
  readonly buckle: Buckle;
  readonly length: number;
  /** Station of its low edge, where the cords end; equal stations have equal numbers. */
  readonly low: number;
  readonly lowNo: number;
  /** No low flare begins higher than this. */
  readonly ceiling: number;
  /** Whether there is side left below the buckle for cords, and for a low flare. */
  readonly hasRoom: boolean;
  readonly hasFlareRoom: boolean;
  readonly aboveElbow: number;
  readonly belowWidest: number;
  readonly run: number;
  /** Least distance of the frame from the elbow line; the rest of its clearance is reckoned when it is what counts. */
  readonly frameGap: number;
  clearance: Clearance | undefined;
  readonly clearanceNo: number;
}

/** Cords behind the elbow as if they went on up to the back: where they end is the buckle's business. */
export interface Body {
  /** Equal numbers, equally wide from the armpit to the point of the elbow. */
  readonly no: number;
  /** Where a roper begins to widen, going down; nothing to a straight. */
  readonly start: number;
  readonly near: Near;
  /** Narrowest width between armpit and point of elbow. */
  readonly elbowWidth: number;
  /** Thin-wall hoop pressure T/(w R) where it is highest behind the elbow; only to compare candidates. */
  readonly pressure: number;
  /** Area above the armpit of one side of its fan; nothing on a straight, that is no wider there than at the buckle. */
  readonly fan: number;
}

/** How near the elbow cords come; equal numbers, equal clearances. */
interface Near {
  readonly clearance: Clearance;
  readonly clearanceNo: number;
}

/** What cinches of one strand count share. */
interface StrandCount {
  readonly strands: number;
  readonly straight: Body;
  /** A roper that is whole from this station down lies behind the elbow as the straight does. */
  readonly likeStraightFrom: number;
  /** The low flare that begins as high as the elbow allows. */
  lowFlare: Body | undefined;
  /** Ropers whose flare begins as high as the buckle allows, by the number of its low edge. */
  readonly highFlares: Body[];
  readonly lowFlares: Body[];
  /** As many strands pinched throughout. */
  pinched: Front | undefined;
}

/** What is numbered already when candidates come: a shop's own list keeps its numbers from order to order. */
interface Numbered {
  readonly strands: readonly number[];
  readonly buckles: readonly Buckle[];
}

/** The shared ground of an order. What is not numbered yet gets its number when it is first asked for. */
export class Ground {
  readonly facts: Facts;
  readonly field: Field;
  readonly armpit: number;
  /** Spread of the latigo run: of half the ring to ring, and of half the give. */
  readonly runSd: number;
  /** By the numbers of buckle and length. */
  readonly #hangs: Hang[][] = [];
  readonly #buckles: Buckle[];
  readonly #lengths: number[] = [];
  readonly #strands: number[];
  readonly #counts: StrandCount[] = [];
  readonly #lows: number[] = [];
  readonly #heights: number[] = [];
  readonly #pressedUpTo: number;
  readonly #radii: readonly number[];
  readonly #pressed: readonly number[];
  readonly #flareTarget: number;
  /** Written again for each roper. */
  readonly #shape = { full: 0.5, pinched: 0.5, fullUpTo: 0.5, pinchedFrom: 0.5, top: 0.5 };
  #numbers = 0;

  constructor(facts: Facts, { strands, buckles }: Numbered = { strands: [], buckles: [] }) {
    const { model, k, barrel, lengthNeed, elbowStation } = facts;
    this.facts = facts;
    this.#strands = [...strands];
    this.#buckles = [...buckles];
    this.field = fieldOf(facts);
    this.armpit = model['armpit-station'] * k;
    this.runSd = Math.sqrt(lengthNeed.target.sd ** 2 + (lengthNeed.stretch / 2) ** 2) / 2;
    this.#pressed = [this.armpit, (this.armpit + elbowStation) / 2, elbowStation];
    this.#pressedUpTo = Math.max(...this.#pressed);
    this.#radii = this.#pressed.map((station) => curvatureRadiusAt(barrel.ellipse, station));
    this.#flareTarget = lowFlareTarget(facts, this.field);
  }

  /** A fresh number: equal numbers stand for equal clearances, or for bodies that are equally wide behind the elbow. */
  number(): number {
    return this.#numbers++;
  }

  hang(buckle: Buckle, length: number): Hang {
    const hangs = (this.#hangs[numberOf(buckle, this.#buckles)] ??= []);
    return (hangs[numberOf(length, this.#lengths)] ??= this.#hangOf(buckle, length));
  }

  #hangOf(buckle: Buckle, length: number): Hang {
    const { girth, lengthNeed, barrel, elbowHeight, model } = this.facts;
    const low = (length + lengthNeed.stretch) / 2 - buckle.frameHeight;
    // Frames differ by quarter inches and lengths by inches: many low edges fall together.
    const lowNo = numberOf(low, this.#lows);
    const ceiling = low - model['high-flare-start'] - model['weave-step'];
    const height = (this.#heights[lowNo] ??= heightAt(barrel.ellipse, low));
    return {
      buckleNo: numberOf(buckle, this.#buckles),
      lengthNo: numberOf(length, this.#lengths),
      buckle,
      length,
      low,
      lowNo,
      ceiling,
      hasRoom: low > 0,
      hasFlareRoom: low > 0 && ceiling >= model['flare-length'],
      aboveElbow: height - elbowHeight,
      belowWidest: girth.value / 4 - low,
      run: runFor(length, lengthNeed),
      frameGap: elbowGap(frameEdge(buckle, low, this.field.slope), this.field.elbowLine).distance,
      clearance: undefined,
      clearanceNo: this.number(),
    };
  }

  /** Clearance of a buckle's frame. */
  frameClearance(hang: Hang): Clearance {
    const { field } = this;
    return (hang.clearance ??= clearanceOf(frameEdge(hang.buckle, hang.low, field.slope), 0, field));
  }

  /** Cords below a buckle that has room for them. */
  body(style: Style, strandsNo: number, hang: Hang): Body {
    const count = (this.#counts[strandsNo] ??= this.#strandCount(strandsNo));
    if (style === 'straight') return count.straight;
    const { low, lowNo } = hang;
    if (style === 'high-flare') {
      const start = Math.max(0, low - this.facts.model['high-flare-start']);
      return (count.highFlares[lowNo] ??= this.#roper(count, start));
    }
    const { ceiling } = hang;
    const lowFlare = (count.lowFlare ??= this.#lowFlare(count));
    if (lowFlare.start <= ceiling) return lowFlare;
    return (count.lowFlares[lowNo] ??= this.#roper(count, ceiling));
  }

  /** Number of a strand count. */
  strandsNo(strands: number): number {
    return numberOf(strands, this.#strands);
  }

  /** The front of these strands as if they were pinched throughout. */
  pinched(strandsNo: number): Front {
    return this.#pinchedOf((this.#counts[strandsNo] ??= this.#strandCount(strandsNo)));
  }

  #pinchedOf(count: StrandCount): Front {
    const { model, girth } = this.facts;
    return (count.pinched ??= pinchedThroughout(
      pinchedWidth(count.strands, model),
      girth.value / 2,
      this.field,
    ));
  }

  #strandCount(strandsNo: number): StrandCount {
    const { model, girth } = this.facts;
    const strands = this.#strands[strandsNo] as number;
    const full = fullWidth(strands, model);
    const whole = straightShape(full, girth.value / 2);
    const clearance = clearanceOf(bodyEdge(whole, this.field.slope), full, this.field);
    const straight = this.#body(whole, 0, { clearance, clearanceNo: this.number() });
    return {
      strands,
      straight,
      // No roper is wider than the straight of as many strands: where that comes nearest at a station at which this
      // one is whole, both have the same clearance.
      likeStraightFrom: clearance.inches > 0 ? Math.max(clearance.station, this.#pressedUpTo) : Infinity,
      lowFlare: undefined,
      highFlares: [],
      lowFlares: [],
      pinched: undefined,
    };
  }

  #lowFlare(count: StrandCount): Body {
    const { facts } = this;
    const { model } = facts;
    const widths = {
      full: fullWidth(count.strands, model),
      pinched: pinchedWidth(count.strands, model),
    };
    return this.#roper(count, lowFlareLimit(widths, { target: this.#flareTarget, facts }));
  }

  #roper(count: StrandCount, start: number): Body {
    const { model, girth } = this.facts;
    const { strands, straight, likeStraightFrom } = count;
    const { no, near, elbowWidth, pressure } = straight;
    const shape = writeRoper(this.#shape, { strands, start, top: Math.max(girth.value / 2, start) }, model);
    if (shape.fullUpTo >= likeStraightFrom)
      return { no, start, near, elbowWidth, pressure, fan: fanArea(shape, this.armpit) };
    const { clearance } = near;
    if (clearance.inches > 0 && clearance.station <= shape.fullUpTo) return this.#body(shape, start, near);
    const own = roperClearance(shape, this.#pinchedOf(count), this.field);
    return this.#body(shape, start, { clearance: own, clearanceNo: this.number() });
  }

  #body(shape: Shape, start: number, near: Near): Body {
    let pressure = 0;
    for (let i = 0; i < this.#pressed.length; i++) {
      const width = widthAt(shape, this.#pressed[i] as number);
      const here = hoopPressure(this.facts.model.tension, width, this.#radii[i] as number);
      if (here > pressure) pressure = here;
    }
    const elbowWidth = Math.min(widthAt(shape, this.facts.elbowStation), widthAt(shape, this.armpit));
    const fan = start === 0 ? 0 : fanArea(shape, this.armpit);
    return { no: this.number(), start, near, elbowWidth, pressure, fan };
  }
}

/** Whether a style can be tied below a buckle at all. */
export const hasRoom = (style: Style, hang: Hang): boolean =>
  style === 'low-flare' ? hang.hasFlareRoom : hang.hasRoom;

/** Place of a value among those known; a new one is added. */
function numberOf<T>(value: T, known: T[]): number {
  const place = known.indexOf(value);
  return place >= 0 ? place : known.push(value) - 1;
}
