/** Every number of a laid cinch but its clearance, worked out once more the slow way: by scanning, by adding strips up. */
import { describe, expect, it, test } from 'vitest';
import { factsOf } from '../../src/facts/facts.ts';
import { Ground } from '../../src/fit/ground.ts';
import { lay } from '../../src/fit/lay.ts';
import { curvatureRadiusAt, heightAt } from '../../src/geometry/ellipse.ts';
import type { Buckle, Style } from '../../src/order/types.ts';
import { defaultModel as model } from '../../src/sources/numbers.ts';
import { widthAt } from '../../src/stock/outline.ts';
import { orderOf, plainBuckle, rigging } from '../support/orders.ts';
import { within, withinRelative } from '../support/within.ts';
import { type Line, pairs, gapOf, buckles, laid, each } from '../support/laid.ts';

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

  test('its outline is as wide as its shape, from the midline to the buckle', () => {
    each(({ candidate: { outline, shape } }) => {
      const { stations, widths } = outline;
      expect([stations[0], stations.at(-1)]).toEqual([0, shape.top]);
      stations.forEach((station, i) => {
        within(widths[i]!, widthAt(shape, station), 1e-9);
      });
    });
  });

  test('cord: every strand is as long as the cinch at least, and two colors take more than one', () => {
    const order = (accent: string[]) => orderOf({ colors: { accent } });
    each(({ candidate: c }, { strands, length }) => {
      expect(c.cordFeet).toBeGreaterThanOrEqual((strands * length) / 12 - 6);
      expect(c.cordFeet).toBeLessThan((1.5 * strands * length) / 12);
    });
    const asked = { style: 'straight', strands: 17, length: 30, buckle: plainBuckle } as const;
    const feet = (accent: string[]) => laid({ ...asked, order: order(accent) })!.candidate;
    expect(feet(['rust']).accentFeet).toBeGreaterThan(0);
    for (const colors of [['rust'], ['rust', 'sage']]) {
      expect(feet(colors).accentAtMost).toBeGreaterThanOrEqual(feet(colors).accentFeet);
      expect(feet(colors).accentAtMost).toBeLessThan(3 * feet(colors).accentFeet);
    }
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
  const on = (
    style: Style,
    strands: number,
    [length, buckle = plainBuckle]: [number, (Buckle | undefined)?],
  ) => lay({ style, strands, length, buckle, layers: 1 }, ground)!;
  const [a, b, c, d, e] = [
    on('straight', 17, [30]),
    on('straight', 17, [32]),
    on('straight', 19, [30]),
    on('high-flare', 17, [30]),
    on('straight', 17, [30, buckles[1]]),
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
