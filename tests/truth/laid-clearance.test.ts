/** The clearance of a laid cinch again: spots by a library, chances by counting. */
import { Point } from '@flatten-js/core';
import cephes from 'cephes';
import { beforeAll, describe, expect, test } from 'vitest';
import { elbowLineOf } from '../../src/horse/elbow-line.ts';
import type { Facts } from '../../src/horse/facts.ts';
import { seededRandom } from '../../src/math/random.ts';
import { cases } from '../support/cases.ts';
import { within, withinRelative } from '../support/within.ts';
import {
  below,
  cordsOf,
  each,
  forwardAt,
  frameOf,
  gapOf,
  pairs,
  segments,
  type Line,
  type One,
} from '../support/laid.ts';

beforeAll(async () => {
  await cephes.compiled;
});

interface Spot {
  readonly part: 'cinch' | 'buckle';
  readonly s: number;
  readonly half: number;
}

interface Measured extends Spot {
  readonly inches: number;
  readonly floor: number;
  /** What one spread of each input does to the gap. */
  readonly moved: readonly number[];
  readonly sd: number;
  readonly kink: number;
}

const linesOf = ({ candidate: c, facts: { centreLine } }: One): { cords: Line; frame: Line } => ({
  cords: cordsOf(c.shape, centreLine.slope),
  frame: frameOf(c.buckle, c.low, centreLine.slope),
});

/** Corners of both edges, stations of armpit and elbow, and the library's nearest spots. */
function spotsOf(one: One): Spot[] {
  const { facts } = one;
  const { cords, frame } = linesOf(one);
  const stations = [3 * facts.k, 7 * facts.k];
  const corners = stations.map((s) => new Point(facts.room.value, s));
  const onLine = (line: Line, part: Spot['part']): Spot[] =>
    [
      ...line.map(([, s]) => s),
      ...stations.filter((s) => s > line[0]![1] && s < line.at(-1)![1]),
      ...segments(line).flatMap((piece) => corners.map((corner) => corner.distanceTo(piece)[1].end.y)),
    ].map((s) => ({ part, s, half: forwardAt(line, s) - facts.centreLine.slope * s }));
  return [...onLine(cords, 'cinch'), ...onLine(frame, 'buckle')];
}

/** By the library; an overlap along x is negative. */
function gapAt(x: number, s: number, elbow: Line): number {
  const level = forwardAt(elbow, s) - x;
  if (level <= 0) return level;
  return Math.min(...segments(elbow).map((piece) => new Point(x, s).distanceTo(piece)[0]));
}

const TINY = 1e-3;

function measure(spot: Spot, { facts }: One): Measured {
  const { s, half, part } = spot;
  const gap = (row: Facts['spread'][number], by: number): number => {
    const station = facts.ring.station.value + by * row.ringStation;
    const { push, pushStation } = facts.centreLine;
    const slope = (facts.ring.x + by * row.ringX) / station + (push.value + by * row.push) / pushStation;
    const numbers = { ...facts.model, 'opening-above': 0.1 + by * row.opening };
    const elbow = pairs(elbowLineOf(facts.room.value + by * row.room, (facts.k + by * row.k) * 72, numbers));
    return gapAt(slope * s + half * (part === 'cinch' ? 1 + by * row.width : 1), s, elbow);
  };
  let kink = 0;
  const moved = facts.spread.map((row) => {
    const [more, here, less] = [gap(row, TINY), gap(row, 0), gap(row, -TINY)];
    kink += Math.abs(more + less - 2 * here) / TINY;
    return (more - less) / (2 * TINY);
  });
  const skin = part === 'cinch' && s <= 7 * facts.k + 1e-9;
  const inches = gap(facts.spread[0]!, 0);
  return { ...spot, inches, floor: skin ? facts.k : 0, moved, sd: Math.hypot(...moved), kink };
}

const spare = ({ inches, floor, sd }: Measured): number => (inches - floor) / sd;

/** Furthest under its floor; if none is, least to spare. */
function governing(all: readonly Measured[]): Measured {
  const lowest = all.reduce((a, b) => (b.inches - b.floor < a.inches - a.floor - 1e-9 ? b : a));
  return lowest.inches < lowest.floor ? lowest : all.reduce((a, b) => (spare(b) < spare(a) - 1e-9 ? b : a));
}

/** Horses with every input anywhere in its spread. */
const drawn = ((): readonly (readonly number[])[] => {
  const random = seededRandom(2417);
  return Array.from({ length: 6000 }, () => Array.from({ length: 9 }, () => random.normal()));
})();

/** Share of them on which every spot keeps its floor. */
function chanceOf(all: readonly Measured[]): number {
  const near = all.filter((each) => spare(each) < 5);
  const keeps = (inputs: readonly number[]): boolean =>
    near.every(({ inches, floor, moved }) => {
      let gap = inches - floor;
      for (const [i, by] of moved.entries()) gap += by * inputs[i]!;
      return gap >= 0;
    });
  return drawn.filter(keeps).length / drawn.length;
}

interface Whole {
  readonly one: One;
  readonly least: Measured;
  readonly all: readonly Measured[];
}

/** Cases in which no spot is equally near two places of the elbow line. */
const wholes: Whole[] = [];
beforeAll(() => {
  each((one) => {
    const all = spotsOf(one).map((spot) => measure(spot, one));
    if (all.every(({ kink }) => kink <= 0.01)) wholes.push({ one, least: governing(all), all });
  });
});

describe('clearance', () => {
  test('is that of the spot with the least to spare, and as unsure as inputs that move it make it', () => {
    const [skins, frames, unders] = [new Set<number>(), new Set<number>(), new Set<number>()];
    for (const { one, least } of wholes) {
      const { clearance } = one.candidate;
      within(clearance.inches, least.inches, 1e-6);
      withinRelative(clearance.sd, least.sd, 2e-3);
      within(clearance.station, least.s, 1e-6);
      expect([clearance.where, clearance.floor]).toEqual([least.part, least.floor]);
      const kind = least.inches < least.floor ? unders : least.floor > 0 ? skins : frames;
      kind.add(clearance.inches);
    }
    expect(wholes.length).toBeGreaterThan(300);
    expect(Math.min(skins.size, frames.size, unders.size)).toBeGreaterThan(30);
  });

  test('its chance is the share of drawn horses on which every spot keeps its floor', () => {
    let [apart, over] = [0, 0];
    const every = cases(5, 1);
    const some = wholes.filter((_, i) => i % every === 0);
    for (const { one, least, all } of some) {
      const { likely } = one.candidate.clearance;
      const share = chanceOf(all);
      // 6000 draws: a standard deviation of 0.0065 at most.
      within(likely, share, 0.03);
      over += likely - share;
      if (cephes.ndtr(spare(least)) - share > 0.02) apart += 1;
    }
    within(over / some.length, 0, 0.006);
    // Some are near in several places, or the ways of counting would agree.
    expect(apart).toBeGreaterThan(50 / every);
  });

  test('of cords alone and of the frame alone: a library finds no nearer spot', () => {
    let over = 0;
    each((one) => {
      const { candidate: c, facts } = one;
      const { cords, frame } = linesOf(one);
      const elbow = pairs(facts.elbowLine);
      const [skin, whole, hard] = [below(cords, 7 * facts.k), cords, frame].map((line) => gapOf(line, elbow));
      // The library takes lines closer than a millionth for crossing.
      expect(c.frameClearance.inches).toBeGreaterThan(hard! - 2e-6);
      expect(c.cordClearance.skin).toBe(true);
      expect(c.cordClearance.inches).toBeGreaterThan(whole! - 2e-6);
      // One under its floor counts by how far.
      if (hard! < 0) within(c.frameClearance.inches, hard!, 2e-6);
      if (skin! < facts.floor && skin! - facts.floor < whole!) within(c.cordClearance.inches, skin!, 2e-6);
      if (skin! < 0) over += 1;
    });
    expect(over).toBeGreaterThan(20);
  });

  test('its ends lie on both lines, as far apart as it is', () => {
    each((one) => {
      const { clearance: c } = one.candidate;
      const { cords, frame } = linesOf(one);
      within(Math.hypot(c.from[0] - c.to[0], c.from[1] - c.to[1]), Math.abs(c.inches), 1e-9);
      within(forwardAt(pairs(one.facts.elbowLine), c.to[1]), c.to[0], 1e-9);
      within(forwardAt(c.where === 'cinch' ? cords : frame, c.from[1]), c.from[0], 1e-9);
      expect(c.from[1]).toBe(c.station);
    });
  });
});
