/** The clearance of a laid cinch once more: measured by a library, its spread by moving one input a little, its chance by adding up. */
import cephes from 'cephes';
import { beforeAll, describe, expect, test } from 'vitest';
import { elbowLineOf } from '../../src/facts/elbow-line.ts';
import { type Facts } from '../../src/facts/facts.ts';
import { nearestGap } from '../../src/fit/nearest.ts';
import { within, withinRelative } from '../support/within.ts';
import { type Line, pairs, forwardAt, gapOf, each, cordsOf, frameOf, type One } from '../support/laid.ts';

beforeAll(async () => {
  await cephes.compiled;
});

describe('clearance', () => {
  test('of cords and frame, the nearer one, as a library measures it or a scan finds it overlap', () => {
    let [over, frames] = [0, 0];
    each((one) => {
      const { candidate: c, facts } = one;
      const elbow = pairs(facts.elbowLine);
      const [cords, frame] = [gapOf(cordsOf(one), elbow), gapOf(frameOf(one), elbow)];
      within(c.clearance.inches, Math.min(cords, frame), 1e-7);
      within(c.buckleClearance, frame, 1e-7);
      expect(c.clearance.where).toBe(cords <= frame + 1e-9 ? 'cinch' : 'buckle');
      if (c.clearance.inches < 0) over += 1;
      if (c.clearance.where === 'buckle') frames += 1;
    });
    expect(over).toBeGreaterThan(20);
    expect(frames).toBeGreaterThan(10);
  });

  test('its ends lie on both lines, as far apart as it is', () => {
    each((one) => {
      const { candidate: c, facts } = one;
      const gap = nearestGap(c, facts);
      within(gap.distance, c.clearance.inches, 1e-7);
      within(Math.hypot(gap.px - gap.qx, gap.ps - gap.qs), Math.abs(gap.distance), 1e-7);
      within(forwardAt(pairs(facts.elbowLine), gap.qs), gap.qx, 1e-7);
      if (c.clearance.where === 'cinch') within(forwardAt(cordsOf(one), gap.ps), gap.px, 1e-7);
      within(c.clearance.station, gap.ps, 1e-6);
    });
  });

  const tiny = 1e-3;

  /** What one spread of each input does to a gap, by moving it a thousandth both ways; undefined where two places are equally near. */
  function slopesOf({ facts }: One, edge: Line, widens: boolean): number[] | undefined {
    const gapAt = (row: Facts['spread'][number], by: number): number => {
      const station = facts.ring.station.value + by * row.ringStation;
      const { push, pushStation } = facts.centreLine;
      const slope = (facts.ring.x + by * row.ringX) / station + (push.value + by * row.push) / pushStation;
      const elbow = elbowLineOf(facts.room.value + by * row.room, (facts.k + by * row.k) * 72, facts.model);
      const moved = edge.map(([x, s]): readonly [number, number] => {
        const half = x - facts.centreLine.slope * s;
        return [slope * s + half * (widens ? 1 + by * row.width : 1), s];
      });
      return gapOf(moved, pairs(elbow));
    };
    let kinks = 0;
    const slopes = facts.spread.map((row) => {
      const [more, here, less] = [gapAt(row, tiny), gapAt(row, 0), gapAt(row, -tiny)];
      kinks += Math.abs(more + less - 2 * here) / tiny;
      return (more - less) / (2 * tiny);
    });
    return kinks > 0.01 ? undefined : slopes;
  }
  const lengthOf = (vector: readonly number[]): number => Math.hypot(...vector);

  test('its spread is what one spread of each input does to it, squared and added up', () => {
    let seen = 0;
    each((one) => {
      const { candidate: c, facts } = one;
      if (Math.abs(c.clearance.inches) < 0.01) return;
      const frame = c.clearance.where === 'buckle';
      const slopes = slopesOf(one, frame ? frameOf(one) : cordsOf(one), !frame);
      if (slopes === undefined) return;
      seen += 1;
      withinRelative(c.clearance.sd, lengthOf(slopes), 2e-3);
      if (c.style !== 'straight' && !frame) return;
      within(c.clearance.chance, cephes.ndtr((c.clearance.inches - facts.floor) / c.clearance.sd), 1e-9);
    });
    expect(seen).toBeGreaterThan(150);
  });

  /** Chance that two standard normal values of this correlation stay below both bounds: the inner integral is the bell curve's. */
  function bothBelow(h: number, k: number, rho: number): number {
    const steps = 4000;
    let sum = 0;
    for (let i = 0; i < steps; i++) {
      const z = -8 + ((h + 8) * (i + 0.5)) / steps;
      sum += Math.exp((-z * z) / 2) * cephes.ndtr((k - rho * z) / Math.sqrt(1 - rho * rho));
    }
    return (sum * (h + 8)) / steps / Math.sqrt(2 * Math.PI);
  }

  test('of a roper: the chance is that flare and pinched part both clear, which move together in part', () => {
    let [seen, apart] = [0, 0];
    each((one) => {
      const { candidate: c, facts } = one;
      if (c.style === 'straight' || c.clearance.where === 'buckle') return;
      const cords = cordsOf(one);
      const at = c.shape.pinchedFrom;
      const [flare, pinched] = [cords.filter(([, s]) => s <= at), cords.filter(([, s]) => s >= at)];
      if (flare.length < 2 || pinched.length < 2) return;
      const [f, p] = [slopesOf(one, flare, true), slopesOf(one, pinched, true)];
      if (f === undefined || p === undefined) return;
      const elbow = pairs(facts.elbowLine);
      const [first, second] = [
        (gapOf(flare, elbow) - facts.floor) / lengthOf(f),
        (gapOf(pinched, elbow) - facts.floor) / lengthOf(p),
      ];
      const rho = f.reduce((sum, value, i) => sum + value * p[i]!, 0) / (lengthOf(f) * lengthOf(p));
      if (rho > 0.99) return;
      seen += 1;
      const expected = bothBelow(Math.min(6, first), Math.min(6, second), rho);
      within(c.clearance.chance, expected, 2e-3);
      if (cephes.ndtr(Math.min(first, second)) - expected > 0.01) apart += 1;
    });
    expect(seen).toBeGreaterThan(60);
    // Some of them are near in both places, or this would not tell the two ways of counting apart.
    expect(apart).toBeGreaterThan(5);
  });
});
