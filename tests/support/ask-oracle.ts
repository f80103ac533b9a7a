/** The worth of taping the elbow room the slow way: a fine grid of readings and of rooms, distances by dense points. */
import { frameEdge } from '../../src/fit/edges.ts';
import type { Candidate } from '../../src/fit/candidate.ts';
import { sizeOrder } from '../../src/index.ts';
import type { Order, Shop } from '../../src/order/types.ts';

type Point = readonly [x: number, s: number];

/** Points of a broken line, about a thirtieth of an inch apart. */
function dense(corners: readonly Point[]): Point[] {
  return corners.slice(1).flatMap(([x1, s1], i) => {
    const [x0, s0] = corners[i]!;
    const steps = Math.ceil(Math.hypot(x1 - x0, s1 - s0) / 0.03);
    return Array.from({ length: steps + 1 }, (_, j): Point => {
      const t = j / steps;
      return [x0 + t * (x1 - x0), s0 + t * (s1 - s0)];
    });
  });
}

/** Least distance from the corners of one line and dense points of it to dense points of the other. */
const distance = (a: readonly Point[], b: readonly Point[]): number => {
  let least = Infinity;
  for (const [x, s] of a) for (const [u, t] of b) least = Math.min(least, (x - u) ** 2 + (s - t) ** 2);
  return Math.sqrt(least);
};

interface Pair {
  readonly order: Order;
  readonly shop: Shop;
}

/** Clearance of a straight on a horse of this room, all else as the order has it. */
function clearance({ shape, buckle }: Candidate, { order, shop }: Pair, room: number): number {
  const { model } = shop;
  const girth = order.horse.heartGirth!;
  const k = girth / model['average-girth'];
  const { rigging, ringToRing } = order.saddle;
  const setBack = rigging.kind === 'measured' ? rigging.setBack : NaN;
  const slope = (room - model['ring-behind-elbow'] * k - setBack) / (ringToRing! / 2);
  const [armpit, elbow, top] = [model['armpit-station'] * k, model['elbow-station'] * k, girth / 2];
  const line: Point[] = [
    [room + model['opening-below'] * armpit, 0],
    [room, armpit],
    [room, elbow],
    [room + model['opening-above'] * (top - elbow), top],
  ];
  const cords: Point[] = [
    [shape.full / 2, 0],
    [slope * shape.top + shape.full / 2, shape.top],
  ];
  const flat = frameEdge(buckle, shape.top, slope);
  const frame: Point[] = Array.from({ length: flat.length / 2 }, (_, i) => [flat[2 * i]!, flat[2 * i + 1]!]);
  return Math.min(...[cords, frame].map((edge) => distance(dense(edge), dense(line))));
}

/** Least room at which a straight keeps the floor, found by halving: it clears from there on. */
function leastRoom(tied: Candidate, order: Order, shop: Shop): number {
  const floor = (shop.model['floor-clearance'] * order.horse.heartGirth!) / shop.model['average-girth'];
  let [low, high] = [0.5, 12];
  for (let i = 0; i < 11; i++) {
    const middle = (low + high) / 2;
    if (clearance(tied, { order, shop }, middle) >= floor) high = middle;
    else low = middle;
  }
  return (low + high) / 2;
}

/** Bell-curve weights of a grid over five spreads each side, adding up to 1. */
function grid(mean: number, sd: number, steps: number): { at: number; weight: number }[] {
  const points = Array.from({ length: steps }, (_, i) => -5 + (10 * (i + 0.5)) / steps);
  const sum = points.reduce((total, z) => total + Math.exp((-z * z) / 2), 0);
  return points.map((z) => ({ at: mean + sd * z, weight: Math.exp((-z * z) / 2) / sum }));
}

/** Gain and chance of change of taping the room, for an order in which all else is known; the first must be a straight. */
export function roomWorthByGrid(order: Order, shop: Shop): { gain: number; changes: number } {
  const first = sizeOrder(order, shop).specs[0]!.candidate;
  const [prior, tape] = [shop.model['elbow-room-sd'], shop.model['elbow-room-taped-sd']];
  const mean = (shop.model['elbow-room'] * order.horse.heartGirth!) / shop.model['average-girth'];
  const weight = prior ** 2 / (prior ** 2 + tape ** 2);
  const least = new Map<string, number>();
  const chance = (tied: Candidate, rooms: readonly { at: number; weight: number }[]): number => {
    const key = `${tied.strands} ${tied.length} ${tied.buckle.id}`;
    if (!least.has(key)) least.set(key, leastRoom(tied, order, shop));
    return rooms.reduce((sum, room) => sum + (room.at >= least.get(key)! ? room.weight : 0), 0);
  };
  let [gain, changes] = [0, 0];
  for (const reading of grid(mean, Math.hypot(prior, tape), 300)) {
    const next = sizeOrder({ ...order, horse: { ...order.horse, elbowRoom: reading.at } }, shop).specs[0]
      ?.candidate;
    const rooms = grid(mean + weight * (reading.at - mean), Math.sqrt(weight) * tape, 400);
    const [stay, go] = [chance(first, rooms), next === undefined ? 0 : chance(next, rooms)];
    gain += reading.weight * (Math.max(stay, go) - stay);
    const same =
      next !== undefined &&
      next.style === first.style &&
      next.strands === first.strands &&
      next.length === first.length &&
      next.buckle.id === first.buckle.id;
    changes += same ? 0 : reading.weight;
  }
  return { gain, changes };
}
