/** Every number of a laid cinch but its clearance, worked out the slow way. */
import { describe, expect, test } from 'vitest';
import { curvatureRadiusAt, heightAt } from '../../src/math/ellipse.ts';
import { widthAt, outlineOf } from '../../src/cinch/outline.ts';
import { orderOf, plainBuckle } from '../support/orders.ts';
import { within, withinRelative } from '../support/within.ts';
import { each, laid } from '../support/laid.ts';

describe('where it hangs', () => {
  test('half of the length and of the give, less the frame, is the end of the cords', () => {
    each(({ candidate: c, facts }, { length, buckle }) => {
      within(c.shape.top, (length + 1) / 2 - buckle.frameHeight, 1e-12);
      within(c.buckleAboveElbow, heightAt(facts.barrel.ellipse, c.shape.top) - facts.elbowHeight, 1e-9);
      within(c.buckleBelowWidest, facts.girth.value / 4 - c.shape.top, 1e-12);
      within(c.run, (2 * facts.ring.station.value - length - 1) / 2, 1e-12);
      // Ring to ring is twice as unsure as one ring, the give by half of itself; each side has half.
      within(c.runSd, Math.sqrt((2 * facts.ring.station.sd) ** 2 + 0.5 ** 2) / 2, 1e-12);
    });
  });

  test('a cinch too short for its cords cannot be laid', () => {
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
  test('a strand is a quarter inch, pinched a fifth, or 0.145 in two layers', () => {
    each(({ candidate: c }, { style, strands, layers }) => {
      within(c.width, strands / 4, 1e-12);
      if (style !== 'straight') within(c.buckleWidth, strands * (layers === 2 ? 0.145 : 0.2), 1e-12);
      expect([c.style, c.strands, c.layers]).toEqual([style, strands, layers]);
    });
  });

  test('a straight comes off the bar, 3 in or what its strands fill of it, and is full 2 in further down', () => {
    each(({ candidate: c }, { style, strands, layers }) => {
      if (style !== 'straight') return;
      const [full, bar] = [strands / 4, Math.min(3, layers === 2 ? strands / 8 : strands / 4)];
      within(c.buckleWidth, bar, 1e-12);
      const down = [0, 1, 2, 4].map((inches) => widthAt(c.shape, c.shape.top - inches));
      [bar, (bar + full) / 2, full, full].forEach((width, i) => {
        within(down[i]!, width, 1e-9);
      });
    });
  });

  test('a roper is full 3 in below where it begins to widen, if there is so much side left', () => {
    each(({ candidate: c }, { style }) => {
      if (style === 'straight') return;
      const { pinchedFrom: start } = c.shape;
      const down = [-1, 0, 1, 1.5].filter((inches) => inches <= start).map((inches) => start - inches);
      for (const s of down)
        within(
          widthAt(c.shape, s),
          c.buckleWidth + ((c.width - c.buckleWidth) * Math.max(0, start - s)) / 3,
          1e-9,
        );
      if (start >= 3) within(widthAt(c.shape, start - 3), c.width, 1e-9);
      within(widthAt(c.shape, c.shape.top), c.buckleWidth, 1e-12);
    });
  });

  test('its outline is as wide as its shape, from the midline to the buckle', () => {
    each(({ candidate: { shape } }) => {
      const { stations, widths } = outlineOf(shape);
      // Coinciding corners stand once; a straight has none between its ends.
      const turns = shape.pinched === shape.full ? [] : [shape.fullUpTo, shape.pinchedFrom];
      expect(stations).toEqual([...new Set([0, ...turns, shape.top])]);
      stations.forEach((station, i) => {
        within(widths[i]!, widthAt(shape, station), 1e-9);
      });
    });
  });

  test('cord: every strand is as long as the cinch at least, and two colors take hardly more than one', () => {
    const order = (accent: string[]) => orderOf({ colors: { accent } });
    each(({ candidate: c }, { strands, length }) => {
      expect(c.cordFeet).toBeGreaterThanOrEqual((strands * length) / 12 - 6);
      expect(c.cordFeet).toBeLessThan((1.5 * strands * length) / 12);
    });
    const asked = { style: 'straight', strands: 17, length: 30, buckle: plainBuckle } as const;
    const feet = (accent: string[]) => laid({ ...asked, order: order(accent) })!.candidate;
    expect(feet(['rust']).accentFeet).toBeGreaterThan(0);
    // Each color is cut to whole feet.
    const [one, two] = [['rust'], ['rust', 'sage']].map((colors) => feet(colors).accentFeet);
    expect([one, one! + 1]).toContain(two);
  });

  test('a high flare begins 3 in below the buckle, a low one at least 5, where the elbow wants it', () => {
    each(({ candidate: c }, { style }) => {
      if (style === 'straight') expect(c.flareStart).toBeUndefined();
      if (style === 'high-flare') within(c.flareStart!, 3, 1e-12);
      if (style === 'low-flare') expect(c.flareStart!).toBeGreaterThanOrEqual(5 - 1e-9);
      if (style !== 'straight') within(c.shape.pinchedFrom, c.shape.top - c.flareStart!, 1e-9);
    });
  });

  test('the narrowest place between armpit and elbow, and the hardest press there', () => {
    each(({ candidate: c, facts }) => {
      const [armpit, elbow] = [3 * facts.k, 7 * facts.k];
      const scan = Array.from({ length: 200 }, (_, i) => armpit + ((elbow - armpit) * i) / 199);
      // Behind the elbow a cinch is as its cords lie, even below the end of a short one.
      const beyond = { ...c.shape, top: Math.max(c.shape.top, elbow) };
      within(c.elbowWidth, Math.min(...scan.map((s) => widthAt(beyond, s))), 1e-9);
      // Thin-walled hoop: tension over width times radius, 28.66 lbf.
      const press = [armpit, (armpit + elbow) / 2, elbow].map(
        (s) => 28.66 / (widthAt(beyond, s) * curvatureRadiusAt(facts.barrel.ellipse, s)),
      );
      withinRelative(c.pressure, Math.max(...press), 1e-9);
    });
  });
});
