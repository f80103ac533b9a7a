/** Every number of a laid cinch, worked out once more the slow way: by scanning, by adding strips up, by moving one input a little. */
import { Point, Segment } from '@flatten-js/core';
import cephes from 'cephes';
import { beforeAll, describe, expect, it, test } from 'vitest';
import { elbowLineOf } from '../../src/facts/elbow-line.ts';
import { factsOf, type Facts } from '../../src/facts/facts.ts';
import { Ground } from '../../src/fit/ground.ts';
import { lay } from '../../src/fit/lay.ts';
import { nearestGap } from '../../src/fit/nearest.ts';
import { curvatureRadiusAt, heightAt } from '../../src/geometry/ellipse.ts';
import type { Buckle, Order, Style } from '../../src/order/types.ts';
import { defaultModel as model } from '../../src/sources/numbers.ts';
import { widthAt } from '../../src/stock/outline.ts';
import { orderOf, plainBuckle, rigging } from '../support/orders.ts';
import { within, withinRelative } from '../support/within.ts';

beforeAll(async () => {
  await cephes.compiled;
});

type Line = readonly (readonly [number, number])[];
const pairs = (flat: ArrayLike<number>): Line =>
  Array.from({ length: flat.length / 2 }, (_, i) => [flat[2 * i]!, flat[2 * i + 1]!] as const);

/** Forward place of a line at a station, level beyond its ends. */
function forwardAt(line: Line, s: number): number {
  if (s <= line[0]![1]) return line[0]![0];
  for (let i = 1; i < line.length; i++) {
    const [[x0, s0], [x1, s1]] = [line[i - 1]!, line[i]!];
    if (s <= s1 && s1 > s0) return x0 + ((x1 - x0) * (s - s0)) / (s1 - s0);
  }
  return line.at(-1)![0];
}

const segments = (line: Line): Segment[] =>
  line.slice(1).map(([x, s], i) => new Segment(new Point(...line[i]!), new Point(x, s)));

/** Least distance by the library; where one lies over the other, minus the greatest overlap that a fine scan finds. */
function gapOf(edge: Line, elbow: Line): number {
  let overlap = 0;
  const [from, to] = [edge[0]![1], edge.at(-1)![1]];
  const corners = [...edge, ...elbow].map(([, s]) => s).filter((s) => s >= from && s <= to);
  const scan = Array.from({ length: 400 }, (_, i) => from + ((to - from) * i) / 399);
  for (const s of [...corners, ...scan])
    overlap = Math.min(overlap, forwardAt(elbow, s) - forwardAt(edge, s));
  if (overlap < 0) return overlap;
  return Math.min(
    ...segments(edge).flatMap((mine) => segments(elbow).map((other) => mine.distanceTo(other)[0])),
  );
}

const buckles: readonly Buckle[] = [plainBuckle, { ...plainBuckle, frameWidth: 6, frameHeight: 3.25 }];

interface Case {
  readonly order: Order;
  readonly style: Style;
  readonly strands: number;
  readonly length: number;
  readonly buckle: Buckle;
}

/** From a ring far ahead to one far behind, from a pony to a draft, from narrow to far too wide. */
const cases: readonly Case[] = (
  [
    orderOf(),
    orderOf({ saddle: { rigging: rigging('7/8') } }),
    orderOf({ saddle: { rigging: rigging('5/8') }, horse: { barrel: 'round', heartGirth: 80 } }),
    orderOf({ saddle: { rigging: rigging('center-fire'), ringToRing: 40 } }),
    orderOf({ horse: { heartGirth: 56, elbowRoom: 2.5 } }),
  ] as const
).flatMap((order) =>
  (['straight', 'high-flare', 'low-flare'] as const).flatMap((style) =>
    [11, 17, 25, 31].flatMap((strands) =>
      [24, 30, 36].flatMap((length) => buckles.map((buckle) => ({ order, style, strands, length, buckle }))),
    ),
  ),
);

const laid = ({ order, style, strands, length, buckle }: Case, numbers = model) => {
  const facts = factsOf(order, numbers);
  const candidate = lay({ style, strands, length, buckle, layers: 1 }, new Ground(facts));
  return candidate === undefined ? undefined : { facts, candidate };
};
const each = (check: (one: NonNullable<ReturnType<typeof laid>>, asked: Case) => void): void => {
  let seen = 0;
  for (const asked of cases) {
    const one = laid(asked);
    if (one === undefined) continue;
    seen += 1;
    check(one, asked);
  }
  expect(seen).toBeGreaterThan(300);
};

/** Leading edge of the cords, from what the shape says of widths. */
const cordsOf = ({ candidate: { shape }, facts }: NonNullable<ReturnType<typeof laid>>): Line => {
  const { slope } = facts.centreLine;
  const stations = [0, shape.fullUpTo, shape.pinchedFrom, shape.top].filter(
    (s, i, all) => i === 0 || s > all[i - 1]!,
  );
  return stations.map((s) => [slope * s + widthAt(shape, s) / 2, s] as const);
};
const frameOf = ({ candidate: { shape, buckle }, facts }: NonNullable<ReturnType<typeof laid>>): Line => {
  const { slope } = facts.centreLine;
  const [low, high] = [shape.top, shape.top + buckle.frameHeight];
  return [
    [slope * low, low],
    [slope * low + buckle.frameWidth / 2, low],
    [slope * high + buckle.frameWidth / 2, high],
  ];
};

describe('where it hangs', () => {
  test('half of the length and of the give, less the frame, is the end of the cords', () => {
    each(({ candidate: c, facts }, { length, buckle }) => {
      within(c.shape.top, (length + 1) / 2 - buckle.frameHeight, 1e-12);
      within(c.buckleAboveElbow, heightAt(facts.barrel.ellipse, c.shape.top) - facts.elbowHeight, 1e-9);
      within(c.buckleBelowWidest, facts.girth.value / 4 - c.shape.top, 1e-12);
      within(c.run, (2 * facts.ring.station.value - length - 1) / 2, 1e-12);
      // Ring to ring is twice as unsure as one ring, the give by half of itself; each side has half of both.
      within(c.runSd, Math.sqrt((2 * facts.ring.station.sd) ** 2 + 0.5 ** 2) / 2, 1e-12);
    });
  });

  test('no cords below no side: such a cinch cannot be laid', () => {
    const short = { order: orderOf(), strands: 17, buckle: plainBuckle };
    expect(laid({ ...short, style: 'straight', length: 4 })).toBeUndefined();
    expect(laid({ ...short, style: 'straight', length: 4.5 })).toBeDefined();
    expect(laid({ ...short, style: 'high-flare', length: 4.5 })).toBeDefined();
    // A low flare needs its own 3 in below 5 in of pinched cords: (length + 1) / 2 - 2.5 >= 8.
    expect(laid({ ...short, style: 'low-flare', length: 20 })).toBeDefined();
    expect(laid({ ...short, style: 'low-flare', length: 19.9 })).toBeUndefined();
  });
});

describe('how wide it is', () => {
  test('a strand is a quarter inch, pinched a fifth', () => {
    each(({ candidate: c }, { style, strands }) => {
      within(c.width, strands / 4, 1e-12);
      within(c.buckleWidth, style === 'straight' ? strands / 4 : strands / 5, 1e-12);
      within(widthAt(c.shape, c.shape.top), c.buckleWidth, 1e-12);
      expect([c.style, c.strands]).toEqual([style, strands]);
    });
  });

  test('a high flare begins 3 in below the buckle, a low one at least 5, where the elbow wants it', () => {
    each(({ candidate: c }, { style }) => {
      if (style === 'straight') expect(c.flareStart).toBeUndefined();
      if (style === 'high-flare') within(c.flareStart!, 3, 1e-12);
      if (style === 'low-flare') expect(c.flareStart!).toBeGreaterThanOrEqual(5 - 1e-9);
      if (style !== 'straight') within(c.shape.pinchedFrom, c.shape.top - c.flareStart!, 1e-9);
    });
  });

  test('the narrowest place between armpit and elbow, the hardest press there, and what holds above', () => {
    each(({ candidate: c, facts }) => {
      const [armpit, elbow] = [3 * facts.k, 7 * facts.k];
      const scan = Array.from({ length: 200 }, (_, i) => armpit + ((elbow - armpit) * i) / 199);
      // Behind the elbow a cinch is as its cords lie, even where a short one ends below it.
      const beyond = { ...c.shape, top: Math.max(c.shape.top, elbow) };
      within(c.elbowWidth, Math.min(...scan.map((s) => widthAt(beyond, s))), 1e-9);
      // Thin-walled hoop: tension over width times radius, 28.66 lbf, at the armpit, the elbow and between.
      const press = [armpit, (armpit + elbow) / 2, elbow].map(
        (s) => 28.66 / (widthAt(beyond, s) * curvatureRadiusAt(facts.barrel.ellipse, s)),
      );
      withinRelative(c.pressure, Math.max(...press), 1e-9);
      const strips = 4000;
      const step = (c.shape.top - armpit) / strips;
      let area = 0;
      for (let i = 0; i < strips; i++) area += step * widthAt(c.shape, armpit + (i + 0.5) * step);
      withinRelative(c.gripArea, 2 * area, 1e-5);
    });
  });
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

  test('of a straight: its spread is what one spread of each input does to it, squared and added up', () => {
    let seen = 0;
    each((one, { style }) => {
      const { candidate: c, facts } = one;
      if (style !== 'straight' || Math.abs(c.clearance.inches) < 0.01) return;
      const frame = c.clearance.where === 'buckle';
      const at = (row: Facts['spread'][number], by: number): number => {
        const station = facts.ring.station.value + by * row.ringStation;
        const { push, pushStation } = facts.centreLine;
        const slope = (facts.ring.x + by * row.ringX) / station + (push.value + by * row.push) / pushStation;
        const girth = (facts.k + by * row.k) * 72;
        const elbow = pairs(elbowLineOf(facts.room.value + by * row.room, girth, facts.model));
        const edge = (frame ? frameOf(one) : cordsOf(one)).map(([x, s]): readonly [number, number] => {
          const half = x - facts.centreLine.slope * s;
          return [slope * s + half * (frame ? 1 : 1 + by * row.width), s];
        });
        return gapOf(edge, elbow);
      };
      const tiny = 1e-3;
      const [squares, kinks] = facts.spread.reduce(
        ([sum, bent], row) => {
          const [more, here, less] = [at(row, tiny), at(row, 0), at(row, -tiny)];
          return [sum + ((more - less) / (2 * tiny)) ** 2, bent + Math.abs(more + less - 2 * here) / tiny];
        },
        [0, 0],
      );
      // Where two places are equally near there is no one slope.
      if (kinks > 0.01) return;
      seen += 1;
      withinRelative(c.clearance.sd, Math.sqrt(squares), 2e-3);
      within(c.clearance.chance, cephes.ndtr((c.clearance.inches - facts.floor) / c.clearance.sd), 1e-9);
    });
    expect(seen).toBeGreaterThan(60);
  });

  test('of a roper: no surer than the surer half alone, nor less sure than both would be apart', () => {
    each(({ candidate: c, facts }, { style }) => {
      if (style === 'straight' || c.clearance.where === 'buckle') return;
      const alone = cephes.ndtr((c.clearance.inches - facts.floor) / c.clearance.sd);
      expect(c.clearance.chance).toBeLessThanOrEqual(alone + 1e-3);
      // Both parts move the same way nearly always (Slepian 1962): at worst they are independent and equally near.
      expect(c.clearance.chance).toBeGreaterThanOrEqual(alone * alone - 0.02);
    });
  });
});

describe('a low flare', () => {
  it.each(['full', '7/8', '3/4'] as const)(
    'on %s begins as high as the elbow allows, and no higher',
    (name) => {
      const order = orderOf({ saddle: { rigging: rigging(name) } });
      const one = laid({ order, style: 'low-flare', strands: 23, length: 36, buckle: plainBuckle })!;
      const { candidate: c, facts } = one;
      const { shape } = c;
      const gapFrom = (start: number): number => {
        const full = shape.full / 2;
        const line: Line = [0, start - 3, start].map(
          (s) => [facts.centreLine.slope * s + (s < start ? full : shape.pinched / 2), s] as const,
        );
        return gapOf(line, pairs(facts.elbowLine));
      };
      const here = gapFrom(shape.pinchedFrom);
      expect(here).toBeGreaterThanOrEqual(Math.min(facts.required, gapFrom(3)) - 1e-6);
      // Higher up it would come nearer than it is tied for, unless the buckle or the widest part stops it first.
      const stopped = shape.pinchedFrom >= Math.min(shape.top - 5, facts.girth.value / 4) - 1e-6;
      if (!stopped && shape.pinchedFrom > 3 + 1e-6)
        expect(gapFrom(shape.pinchedFrom + 0.25)).toBeLessThan(here);
    },
  );
});

test('equal choices are numbered equally, and only those', () => {
  const facts = factsOf(orderOf(), model);
  const ground = new Ground(facts);
  const on = (style: Style, strands: number, length: number, buckle = plainBuckle) =>
    lay({ style, strands, length, buckle, layers: 1 }, ground)!;
  const [a, b, c, d, e] = [
    on('straight', 17, 30),
    on('straight', 17, 32),
    on('straight', 19, 30),
    on('high-flare', 17, 30),
    on('straight', 17, 30, buckles[1]),
  ];
  expect([b.strandsNo, b.buckleNo, b.styleNo]).toEqual([a.strandsNo, a.buckleNo, a.styleNo]);
  expect(b.lengthNo).not.toBe(a.lengthNo);
  expect(c.strandsNo).not.toBe(a.strandsNo);
  expect(d.styleNo).not.toBe(a.styleNo);
  expect(e.buckleNo).not.toBe(a.buckleNo);
  // Cords lie the same whatever buckle they end at.
  expect(e.bodyNo).toBe(a.bodyNo);
  expect(c.bodyNo).not.toBe(a.bodyNo);
  expect(a.clearanceNo === b.clearanceNo).toBe(a.clearance === b.clearance);
});
