/** Puts a spec on the horse: edge, elbow clearance, buckle position, latigo run. */
import { runFor } from '../horse/length.ts';
import { curvatureRadiusAt, heightAt } from '../math/ellipse.ts';
import { hoopPressure } from '../math/strap.ts';
import type { Buckle, Style } from '../order/types.ts';
import { accentFeet } from './accent.ts';
import { bodyCordFeet } from './cord.ts';
import { fullWidth, roperShape, straightShape, widthAt, widthAtBuckle, type Shape } from './outline.ts';
import type { Candidate, Clearance, Made, Seat, Spec } from './candidate.ts';
import { clearanceOf } from './clearance.ts';
import { lowFlareStart } from './low-flare.ts';
import type { Side } from './side.ts';
import { cordSpots, frameSpots, type Spot } from './spots.ts';

export interface SpottedSeat extends Seat {
  readonly spots: readonly Spot[];
}

/** Frame values come on demand: height alone rules out many seats. */
export function seatOf(buckle: Buckle, length: number, side: Side): SpottedSeat {
  const { girth, lengthNeed, barrel, elbowHeight } = side.facts;
  const low = (length + lengthNeed.stretch) / 2 - buckle.frameHeight;
  let spots: readonly Spot[] | undefined;
  let frame: Clearance | undefined;
  return {
    buckle,
    length,
    low,
    buckleAboveElbow: heightAt(barrel.ellipse, low) - elbowHeight,
    buckleBelowWidest: girth.value / 4 - low,
    run: runFor(length, lengthNeed),
    runSd: side.runSd,
    get spots() {
      return (spots ??= frameSpots(buckle, low, side));
    },
    get frameClearance() {
      return (frame ??= clearanceOf(this.spots, side));
    },
  };
}

/** Undefined when there is no room below the buckle. */
export const lay = (spec: Spec, side: Side): Candidate | undefined =>
  layOn(spec, seatOf(spec.buckle, spec.length, side), side);

/** For a seat already known. */
export function layOn(made: Made, seat: SpottedSeat, side: Side): Candidate | undefined {
  return hasRoom(made.style, seat, side) ? new LaidCinch(made, seat, side) : undefined;
}

/** A quick test: most come too close at armpit or elbow. */
export function isTooClose(made: Made, seat: Seat, side: Side): boolean {
  const shape = shapeOf(made, seat, side);
  const reach = (s: number): number => side.slope * s + widthAt(shape, s) / 2;
  const most = side.facts.room.value - side.skinFloor;
  return [side.armpit, side.elbow].some((s) => s <= shape.top && reach(s) > most);
}

/** Below the buckle. */
const hasRoom = (style: Style, { low }: Seat, side: Side): boolean =>
  low > 0 && (style !== 'low-flare' || ceiling(low, side) >= side.facts.model['flare-length']);

/** Highest station where a low flare may start. */
const ceiling = (low: number, { facts: { model } }: Side): number =>
  low - model['high-flare-start'] - model['weave-step'];

/** Computed on demand: many cinches are tried, few kept. */
class LaidCinch implements Candidate {
  readonly style: Style;
  readonly strands: number;
  readonly layers: Made['layers'];
  readonly buckle: Buckle;
  readonly length: number;
  readonly low: number;
  readonly #seat: SpottedSeat;
  readonly #side: Side;
  #shape: Shape | undefined;
  #cords: readonly Spot[] | undefined;
  #clearance: Clearance | undefined;

  constructor({ style, strands, layers }: Made, seat: SpottedSeat, side: Side) {
    this.style = style;
    this.strands = strands;
    this.layers = layers;
    this.buckle = seat.buckle;
    this.length = seat.length;
    this.low = seat.low;
    this.#seat = seat;
    this.#side = side;
  }

  get shape(): Shape {
    return (this.#shape ??= shapeOf(this, this.#seat, this.#side));
  }
  get #spots(): readonly Spot[] {
    return (this.#cords ??= cordSpots(this.shape, this.#side));
  }
  get clearance(): Clearance {
    return (this.#clearance ??= clearanceOf([...this.#spots, ...this.#seat.spots], this.#side));
  }
  get cordClearance(): Clearance {
    return clearanceOf(
      this.#spots.filter(({ skin }) => skin),
      this.#side,
    );
  }
  get frameClearance(): Clearance {
    return this.#seat.frameClearance;
  }
  get buckleAboveElbow(): number {
    return this.#seat.buckleAboveElbow;
  }
  get buckleBelowWidest(): number {
    return this.#seat.buckleBelowWidest;
  }
  get run(): number {
    return this.#seat.run;
  }
  get runSd(): number {
    return this.#seat.runSd;
  }
  get width(): number {
    return fullWidth(this.strands, this.#side.facts.model);
  }
  get buckleWidth(): number {
    const { style, strands, layers, buckle } = this;
    return widthAtBuckle({ style, strands, layers, bar: buckle.barWidth }, this.#side.facts.model);
  }
  get elbowWidth(): number {
    return Math.min(widthAt(this.shape, this.#side.elbow), widthAt(this.shape, this.#side.armpit));
  }
  get flareStart(): number | undefined {
    return this.style === 'straight' ? undefined : this.low - this.shape.pinchedFrom;
  }
  get pressure(): number {
    return pressureOf(this.shape, this.#side);
  }
  get cordFeet(): number {
    return bodyCordFeet(this.strands, this.length);
  }
  get accentFeet(): number {
    return accentFeet(this, this.#side.facts.order.colors?.accent ?? []);
  }
}

function shapeOf(made: Made, { low: top, buckle }: Seat, side: Side): Shape {
  const { model } = side.facts;
  if (made.style === 'straight') return straightShape({ ...made, bar: buckle.barWidth, top }, model);
  const start =
    made.style === 'high-flare'
      ? Math.max(0, top - model['high-flare-start'])
      : Math.min(lowFlareStart(made, side), ceiling(top, side));
  return roperShape({ ...made, start, top }, model);
}

/** Hoop pressure T/(w R), highest behind the elbow, psi; only compares cinches. */
function pressureOf(shape: Shape, { armpit, elbow, facts: { model, barrel } }: Side): number {
  const at = (station: number): number =>
    hoopPressure(model.tension, widthAt(shape, station), curvatureRadiusAt(barrel.ellipse, station));
  return Math.max(at(armpit), at((armpit + elbow) / 2), at(elbow));
}
