/** The worth of taping elbow room, the slow way: a fine grid, and the second geometry. */
import type { Candidate } from '../../src/cinch/candidate.ts';
import { sizeOrder } from '../../src/index.ts';
import type { Order, Shop } from '../../src/order/types.ts';
import { plainCinch, plainHorse } from './plain-case.ts';
import { clears } from './second-geometry.ts';
import { asTold } from './second-lines.ts';

/** Room at which a cinch just keeps its floors, by halving. */
function leastRoom(tied: Candidate, order: Order): number {
  const [horse, cinch] = [plainHorse(order), plainCinch(tied)];
  let [low, high] = [0.5, 12];
  for (let i = 0; i < 20; i++) {
    const middle = (low + high) / 2;
    if (clears({ ...horse, elbowRoom: middle }, cinch, asTold)) high = middle;
    else low = middle;
  }
  return (low + high) / 2;
}

/** Bell-curve weights to five spreads each side; their sum is 1. */
function grid(mean: number, sd: number, steps: number): { at: number; weight: number }[] {
  const points = Array.from({ length: steps }, (_, i) => -5 + (10 * (i + 0.5)) / steps);
  const sum = points.reduce((total, z) => total + Math.exp((-z * z) / 2), 0);
  return points.map((z) => ({ at: mean + sd * z, weight: Math.exp((-z * z) / 2) / sum }));
}

/** For an order where only the room is unknown. */
export function roomWorthByGrid(order: Order, shop: Shop): { gain: number; changes: number } {
  const first = sizeOrder(order, shop).specs[0]!.candidate;
  const [prior, tape] = [shop.model['elbow-room-sd'], shop.model['elbow-room-taped-sd']];
  const mean = (shop.model['elbow-room'] * order.horse.heartGirth!) / shop.model['average-girth'];
  const weight = prior ** 2 / (prior ** 2 + tape ** 2);
  const least = new Map<string, number>();
  const chance = (tied: Candidate, rooms: readonly { at: number; weight: number }[]): number => {
    const key = `${tied.style} ${tied.strands} ${tied.layers} ${tied.length} ${tied.buckle.id} ${tied.flareStart ?? 0}`;
    if (!least.has(key)) least.set(key, leastRoom(tied, order));
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
