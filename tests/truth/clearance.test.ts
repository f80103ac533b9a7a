/** Elbow clearance and its spread on the average horse, on paper. */
import cephes from 'cephes';
import { beforeAll, describe, expect, test } from 'vitest';
import { factsOf } from '../../src/horse/facts.ts';
import { lay } from '../../src/cinch/lay.ts';
import { sideOf } from '../../src/cinch/side.ts';
import type { Clearance, Spec } from '../../src/cinch/candidate.ts';
import type { Order } from '../../src/order/types.ts';
import { defaultModel } from '../../src/numbers/numbers.ts';
import { orderOf, plainBuckle, rigging } from '../support/orders.ts';
import { within } from '../support/within.ts';

beforeAll(async () => {
  await cephes.compiled;
});

// At 72 in of girth k is 1. The elbow line: x + s = 7 to the armpit (4, 3), x = 4 to the elbow (4, 7), then x
// = 4 + 0.1 (s - 7). A ring rigging hangs 36 - 14 = 22 in up; in full position 4 - 2 = 2 in forward.
const on = (order: Order, spec: Spec) => lay(spec, sideOf(factsOf(order, defaultModel)))!;
const straight = (strands: number, change: Partial<Spec> = {}): Spec => ({
  style: 'straight',
  strands,
  layers: 1,
  buckle: plainBuckle,
  length: 30,
  ...change,
});

/**
 * Spread of a gap at station s, in this order: the room, which moves the ring; the ring's place; the
 * saddle; the ring's height; the ribs; cords, 6 % of their width; the girth; the opening.
 */
interface Level {
  readonly s: number;
  readonly ringX: number;
  readonly half: number;
  readonly byK: number;
  readonly push?: number;
  readonly opening?: number;
}
const spread = ({ s, ringX, half, byK, push = 0.2, opening = 0 }: Level): number =>
  Math.hypot(
    0.5 * (1 - s / 22),
    s / 22,
    0.4 * (s / 22),
    1.5 * ((s * ringX) / 22 ** 2),
    push * (s / 18),
    0.06 * half,
    (0.5 / 72) * byK,
    opening,
  );

const check = (
  found: Clearance,
  expected: Partial<Record<'inches' | 'sd' | 'floor' | 'station', number>>,
) => {
  for (const [key, value] of Object.entries(expected))
    within(found[key as 'inches' | 'sd' | 'floor' | 'station'], value, 1e-9);
};

/** The upper corner of a frame 2.5 in high. By k the room grows by 4; the elbow's rise takes back 0.7. */
const corner = { s: 15.5, ringX: 2, half: 0, byK: 4 - 0.7 };

describe('the spot with the least to spare', () => {
  test('a straight of 17 on a full rig: at the elbow', () => {
    // The lean is 2 / 22, so at 7 the edge is at 2.125 + 7 / 11. By k the room grows by 4; the lean stays.
    const { clearance, low } = on(orderOf(), straight(17));
    expect(low).toBe(13);
    expect([clearance.where, clearance.skin]).toEqual(['cinch', true]);
    const sd = spread({ s: 7, ringX: 2, half: 2.125, byK: 4 });
    check(clearance, { inches: 1.875 - 7 / 11, sd, floor: 1, station: 7 });
    // Less sure than that spot alone, though the frame's upper corner, 4.85 - 1.875 - 15.5 / 11 behind, moves
    // with it.
    const alone = cephes.ndtr((0.875 - 7 / 11) / sd);
    const frame = cephes.ndtr((2.975 - 15.5 / 11) / spread({ ...corner, opening: 0.15 * 8.5 }));
    expect(clearance.likely).toBeLessThan(alone - 0.03);
    expect(clearance.likely).toBeGreaterThan(alone * frame + 0.01);
  });

  test('a straight of 21 on 3/4: just below the armpit, square to the edge', () => {
    // The ring is 1 in behind the groove, the edge runs along (-1/22, 1) from (2.625, 0). Square to it from
    // the corner (4, 3):
    const order = orderOf({ saddle: { rigging: rigging('3/4') } });
    const { clearance } = on(order, straight(21, { layers: 2, buckle: { ...plainBuckle, barWidth: 4 } }));
    const lean = -1 / 22;
    const cos = 1 / Math.hypot(1, lean);
    const station = (3 + lean * (4 - 2.625)) * cos ** 2;
    const level = 4 - 2.625 - 3 * lean;
    // By k the room grows by 4, the corner rises by 3, seen by the sine, and the lean, (2 k - 3) / 22 k,
    // grows by 3 / 22.
    const sine = -lean * cos;
    const byK = 4 - (station * 3) / 22 + (3 * sine) / cos;
    const sd = cos * spread({ s: station, ringX: -1, half: 2.625, byK });
    check(clearance, { inches: level * cos, sd, floor: 1, station });
    expect([clearance.where, clearance.skin]).toEqual(['cinch', true]);
  });

  test('a straight of 15 on round ribs: pushed forward at the elbow, by ribs that were told', () => {
    // 0.4 in at 18 in up: the lean is 2 / 22 + 0.4 / 18, the spread of the push 0.1.
    const { clearance } = on(orderOf({ horse: { barrel: 'round' } }), straight(15));
    const lean = 1 / 11 + 1 / 45;
    const sd = spread({ s: 7, ringX: 2, half: 1.875, byK: 4, push: 0.1 });
    check(clearance, { inches: 4 - 1.875 - 7 * lean, sd, floor: 1, station: 7 });
  });

  test('a frame of 6 in on a full rig: at its upper corner, against muscle', () => {
    // The upper corner is 4.85 - 3 - 15.5 / 11 behind.
    const buckle = { ...plainBuckle, frameWidth: 6 };
    const { clearance, frameClearance } = on(orderOf(), straight(11, { buckle }));
    const ahead = 1.85 - 15.5 / 11;
    const cos = 1 / Math.sqrt(1.01);
    // Square to the muscle, lower by 0.1 of the way; the opening counts from 7 to there.
    const place = 15.5 - (0.1 * ahead) / 1.01;
    const sd = cos * spread({ ...corner, opening: 0.15 * (place - 7) });
    check(clearance, { inches: ahead * cos, sd, floor: 0, station: 15.5 });
    expect([clearance.where, clearance.skin]).toEqual(['buckle', false]);
    expect(clearance.inches).toBe(frameClearance.inches);
    // The lower corner is nearer but surer: at 13 in up the opening counts less.
    expect(4.6 - 3 - 13 / 11).toBeLessThan(ahead);
  });

  test('a low flare of 23 in two layers on a full rig: tied so that it keeps 0.633 in over the least', () => {
    // From 5.75 in wide at f to 3.335 over 3 in: 0.4025 per side; with the lean the edge falls back by b =
    // 0.4025 - 1/11 per inch. The nearest spot is square to it from the corner (4, 3).
    const back = 0.4025 - 1 / 11;
    const cos = 1 / Math.hypot(1, back);
    // Tied for 1 in and 1.2816 spreads (one in ten) of 31 strands, 3.875 in per side. Distance, place and
    // spread depend on each other: each round comes nearer.
    const byK = 4 + 3 * back;
    let [kept, station] = [1, 3];
    for (let round = 0; round < 20; round++) {
      station = 3 - kept * back * cos;
      kept = 1 + cephes.ndtri(0.9) * cos * spread({ s: station, ringX: 2, half: 3.875, byK });
    }
    within(kept, 1.633, 5e-4);
    // The edge x + b s = 2.875 + 0.4025 f is `kept` from the corner.
    const f = (4 + 3 * back - 2.875 - kept / cos) / 0.4025;
    const spec = { style: 'low-flare', strands: 23, layers: 2, buckle: plainBuckle, length: 32 } as const;
    const { shape, cordClearance } = on(orderOf(), spec);
    // Halved to two thousandths.
    within(shape.fullUpTo, f, 2e-3);
    // Its own cords are less wide there, and so surer.
    const sd = cos * spread({ s: station, ringX: 2, half: 2.875 - 0.4025 * (station - f), byK });
    within(cordClearance.inches, kept, 1e-3);
    within(cordClearance.sd, sd, 1e-3);
    within(cordClearance.station, station, 2e-3);
    // The pinched cords beside the elbow, 1.6675 + 7 / 11 forward, have more to spare.
    const beside = spread({ s: 7, ringX: 2, half: 1.6675, byK: 4 });
    expect((kept - 1) / sd).toBeLessThan((4 - 1.6675 - 7 / 11 - 1) / beside);
  });

  test('a spot under its floor counts before all that keep theirs', () => {
    // 4 - 3.125 - 7 / 11 = 0.239 in at the elbow, where 1 is asked.
    const { clearance } = on(orderOf(), straight(25));
    check(clearance, { inches: 0.875 - 7 / 11, floor: 1, station: 7 });
    expect(clearance.likely).toBeLessThan(0.2);
  });
});

describe('what is told', () => {
  test('never more than 0.95, however sure it is', () => {
    // Plumb: 6 - 1.375 at the elbow, 6.85 - 1.875 at the frame, over three spreads.
    const order = orderOf({ horse: { elbowRoom: 6 }, saddle: { rigging: { kind: 'measured', setBack: 4 } } });
    const { clearance } = on(order, straight(11));
    expect(clearance.likely).toBeGreaterThan(0.97);
    expect(clearance.chance).toBe(0.95);
  });

  test('else the exact chance', () => {
    const { clearance } = on(orderOf(), straight(17));
    expect(clearance.chance).toBe(clearance.likely);
  });

  test('the two ends of the gap: on the edge, and level with it on the elbow line', () => {
    const { clearance } = on(orderOf(), straight(17));
    const [from, to] = [clearance.from, clearance.to];
    within(from[0], 2.125 + 7 / 11, 1e-9);
    expect([from[1], ...to]).toEqual([7, 4, 7]);
  });
});
