/** A flat drawing matches the ticket and a template is true to size. */
import { describe, expect, test } from 'vitest';
import { paperFonts } from '../../src/cli/fonts.ts';
import { factsOf } from '../../src/horse/facts.ts';
import type { Made } from '../../src/cinch/candidate.ts';
import { lay } from '../../src/cinch/lay.ts';
import { sideOf } from '../../src/cinch/side.ts';
import { sizeOrder } from '../../src/index.ts';
import type { Order } from '../../src/order/types.ts';
import { ticketOf, type Ticket } from '../../src/work/ticket.ts';
import { flatCinch, flatLayers } from '../../src/draw/flat.ts';
import { flatScene } from '../../src/draw/flat-page.ts';
import { shownSpec } from '../../src/draw/shown.ts';
import { sceneSvg } from '../../src/draw/svg.ts';
import { printWords, templateOf, templateScene, type Template } from '../../src/draw/template.ts';
import { templatesPdf } from '../../src/draw/template-pdf.ts';
import { defaultShop } from '../../src/cinch/default-shop.ts';
import { orderOf, plainBuckle, rigging } from '../support/orders.ts';
import { drawnOn, type Point } from '../support/read-drawing.ts';
import { readPdf } from '../support/read-pdf.ts';
import { cornersOf, inLayer, readSvg, type Svg } from '../support/read-svg.ts';
import { within } from '../support/within.ts';

/** A tenth of a millimeter, in inches. */
const TENTH_MM = 0.1 / 25.4;

const orders: readonly [string, Order][] = [
  ['a straight', orderOf({ saddle: { ringToRing: 44 } })],
  [
    'a high flare',
    orderOf({ horse: { trouble: ['saddle-rolls'] }, saddle: { rigging: rigging('3/4'), ringToRing: 45.5 } }),
  ],
  ['a low flare', orderOf({ use: 'roping', horse: { trouble: ['saddle-rolls'] } })],
  ['a pony', orderOf({ horse: { heartGirth: 50, kind: 'pony' }, saddle: { rigging: rigging('7/8') } })],
  [
    'a draft',
    orderOf({ horse: { heartGirth: 95, kind: 'draft' }, saddle: { rigging: rigging('center-fire') } }),
  ],
];

/** The outline goes along one edge and back along the other. */
function widthAt(corners: readonly Point[], x: number): number {
  const ys = corners.flatMap(([ax, ay], i) => {
    const [bx, by] = corners[(i + 1) % corners.length]!;
    if (ax === bx || x < Math.min(ax, bx) - 1e-9 || x > Math.max(ax, bx) + 1e-9) return [];
    return [ay + ((by - ay) * (x - ax)) / (bx - ax)];
  });
  return Math.max(...ys) - Math.min(...ys);
}

const extent = (points: readonly Point[], axis: 0 | 1): [number, number] => [
  Math.min(...points.map((point) => point[axis])),
  Math.max(...points.map((point) => point[axis])),
];

/** `inches` turns the file's unit into inches. */
function expectTicket(svg: Svg, ticket: Ticket, inches: number): void {
  const corners = cornersOf(inLayer(svg, 'cords')[0]!).map(([x, y]): Point => [x * inches, y * inches]);
  const [left, right] = extent(corners, 0);
  within(right - left, 2 * ticket.half, TENTH_MM);
  for (const { at, width } of ticket.profile) {
    // Just inside the ends, where the outline is upright.
    const inside = Math.max(at, 1e-6);
    within(widthAt(corners, left + inside), width, TENTH_MM);
    within(widthAt(corners, right - inside), width, TENTH_MM);
  }
  const bars = inLayer(svg, 'bars').filter(({ attributes }) => attributes['fill'] !== 'none');
  const spans = bars.map((bar) => extent(cornersOf(bar), 0).map((x) => x * inches));
  expect(spans).toHaveLength(2 * ticket.bars.length);
  ticket.bars.forEach(({ kind, from, length }, i) => {
    const [start, end] = spans[2 * i]!;
    within(start! - left, from, TENTH_MM);
    within(end! - left, kind === 'centre' ? ticket.half : from + length, TENTH_MM);
    within(right - spans[2 * i + 1]![1]!, from, TENTH_MM);
  });
  const hardware = inLayer(svg, 'buckle')
    .flatMap(cornersOf)
    .map(([x, y]): Point => [x * inches, y * inches]);
  const [outer, other] = extent(hardware, 0);
  within(other - outer, ticket.lengths.finished, 2 * TENTH_MM);
  const [top, bottom] = extent(hardware, 1);
  within(bottom - top, ticket.buckle.frameWidth, TENTH_MM);
}

/**
 * Corners by hand: inches below the buckle on the horse, and the width there. Straights: the bar's 3 in or
 * 1/8 in a strand in two layers, then 1/4 from 2 in down. Ropers: 0.145 or 0.2 a strand for 3 in, spread 3
 * in further down. Wider cords gather on the bar, up to the first row.
 */
const corners: readonly (readonly [Made, readonly Point[]])[] = [
  [{ style: 'straight', strands: 11, layers: 1 }, [[0, 2.75]]],
  [
    { style: 'straight', strands: 15, layers: 1 },
    [
      [0, 3],
      [2, 3.75],
    ],
  ],
  [
    { style: 'straight', strands: 19, layers: 2 },
    [
      [0, 2.375],
      [2, 4.75],
    ],
  ],
  [
    { style: 'high-flare', strands: 19, layers: 2 },
    [
      [0, 2.755],
      [3, 2.755],
      [6, 4.75],
    ],
  ],
  [
    // The first row starts half an inch from the buckle on the bench.
    { style: 'high-flare', strands: 19, layers: 1 },
    [
      [0, 3],
      [(0.5 * 13) / 12.5, 3.8],
      [3, 3.8],
      [6, 4.75],
    ],
  ],
];

test.each(corners)('by hand: %o', (made, byHand) => {
  // The low edge on the horse: 31 / 2 - 2.5 = 13; on the bench, before the cord gives: 30 / 2 - 2.5.
  const [horse, bench] = [13, 12.5];
  const spec = { ...made, buckle: plainBuckle, length: 30 };
  const cinch = flatCinch(lay(spec, sideOf(factsOf(orderOf(), defaultShop.model)))!, []);
  const points = (layer: number, each = 0): readonly Point[] => {
    const shape = flatLayers(cinch)[layer]!.shapes[each]!;
    if (shape.kind !== 'area') throw new Error('no area');
    return shape.points;
  };
  const drawn = (at: number): number => widthAt(points(0), at - bench);
  const expected = (at: number): number => {
    const down = (at * horse) / bench;
    const next = byHand.findIndex(([below]) => below > down);
    const [[from, wide], [to, wider]] = [byHand.at(next < 0 ? -1 : next - 1)!, byHand.at(next)!];
    return next < 0 ? wide : wide + ((wider - wide) * (down - from)) / (to - from);
  };
  for (let at = 0.01; at <= bench; at += 0.05) within(drawn(at), expected(at), 1e-6);
  for (const { at, width } of cinch.profile) within(width, expected(at), 1e-9);
  // Woven bars reach both edges, also around a corner.
  const bars = flatLayers(cinch)[2]!.shapes.flatMap(({ kind }, i) => (kind === 'area' ? [points(2, i)] : []));
  expect(bars.length).toBeGreaterThan(2);
  for (const bar of bars) {
    const [from, to] = extent(bar, 0);
    for (let share = 0.05; share < 1; share += 0.1) {
      const x = from + share * (to - from);
      within(widthAt(bar, x), widthAt(points(0), x), 1e-9);
    }
  }
});

describe.each(orders)('%s', (_, order) => {
  const advice = sizeOrder(order, defaultShop);
  // Two of each style.
  const specs = advice.specs.filter(
    ({ candidate: { style } }, i, all) =>
      all.slice(0, i).filter((before) => before.candidate.style === style).length < 2,
  );
  const tickets = specs.map((spec) => ticketOf(spec, advice, { day: '2026-11-20' }));
  const templates = specs.map(({ candidate }): Template =>
    templateOf({ advice, candidate, mark: undefined, units: 'in' }),
  );

  test('the picture has the outline, bars and buckles of the ticket', () => {
    specs.forEach((spec, i) => {
      const scene = flatScene({ advice, shown: shownSpec(spec, advice, 'in'), units: 'in' });
      const svg = readSvg(sceneSvg(scene));
      expectTicket(svg, tickets[i]!, svg.scale / 72);
    });
  });

  test('the template is as large as the cinch, in millimeters', () => {
    templates.forEach((template, i) => {
      const svg = readSvg(sceneSvg(templateScene(template), 'mm'));
      expect(svg.size).toEqual([`${String(svg.viewBox[2])}mm`, `${String(svg.viewBox[3])}mm`]);
      expectTicket(svg, tickets[i]!, 1 / 25.4);
      const bars = inLayer(svg, 'check').flatMap((each) =>
        each.name === 'path' ? [extent(cornersOf(each), 0)] : [],
      );
      const lengths = bars.map(([from, to]) => to - from).filter((length) => length > 1);
      within(lengths[0]!, 100, 0.1);
      within(lengths[1]!, 101.6, 0.1);
    });
  });

  test.each(['letter', 'a4'] as const)(
    'the sheets of %s are true to size and can be joined',
    async (paper) => {
      const which = paper === 'a4' ? -1 : 0;
      const template = templates.at(which)!;
      const ticket = tickets.at(which)!;
      const day = new Date('2026-11-20T00:00:00Z');
      const { bytes } = await templatesPdf([template], { paper, fonts: paperFonts(), day });
      const pages = await drawnOn(bytes);
      expect(pages.length).toBeGreaterThan(1);
      let reached = 0;
      const crossesBefore: Point[] = [];
      pages.forEach((drawn) => {
        const [window] = drawn.filter(({ clips }) => clips).map(({ points }) => points);
        const cords = drawn.find(
          ({ width, points }) => Math.abs(width - 1.1) < 1e-6 && points.length >= 6,
        )!.points;
        const [left, right] = extent(cords, 0);
        const [, middle] = extent(cords, 1);
        within(right - left, 2 * ticket.half * 72, TENTH_MM * 72);
        for (const { at, width } of ticket.profile) {
          within(widthAt(cords, left + Math.max(at * 72, 1e-4)), width * 72, TENTH_MM * 72);
        }
        const lengths = drawn.filter(({ width }) => width === 1.7).map(({ points }) => extent(points, 0));
        const checks = lengths.map(([from, to]) => to - from);
        expect(checks.some((length) => Math.abs(length - (100 / 25.4) * 72) < TENTH_MM * 72)).toBe(true);
        expect(checks.some((length) => Math.abs(length - 288) < TENTH_MM * 72)).toBe(true);
        // The window on the drawing, from the left end and the lower edge of the cords.
        const [from, to] = extent(window!, 0);
        const [top, bottom] = extent(window!, 1);
        expect(from - left).toBeLessThan(reached + 1e-3);
        reached = Math.max(reached, to - left);
        const crosses = drawn
          .filter(
            ({ points }) =>
              points.length === 2 && Math.abs(extent(points, 0)[1] - extent(points, 0)[0] - 18) < 1e-3,
          )
          .map(({ points }): Point => [(points[0]![0] + points[1]![0]) / 2, points[0]![1]])
          .filter(([x, y]) => x > from && x < to && y > top && y < bottom)
          .map(([x, y]): Point => [x - left, y - middle]);
        const shared = crosses.filter(([x, y]) =>
          crossesBefore.some(([bx, by]) => Math.hypot(x - bx, y - by) < TENTH_MM * 72),
        );
        if (crossesBefore.length > 0) expect(shared.length).toBeGreaterThanOrEqual(2);
        crossesBefore.push(...crosses);
      });
      expect(reached).toBeGreaterThan(2 * ticket.half * 72);
    },
  );

  test('every sheet says how to print it, and not to cut before ring to ring is taped', async () => {
    const day = new Date('2026-11-20T00:00:00Z');
    const { bytes } = await templatesPdf([templates[0]!], { paper: 'letter', fonts: paperFonts(), day });
    const { pages } = await readPdf(bytes);
    const labels = pages.map(({ items }) => {
      const text = items.map((item) => item.text).join(' ');
      expect(text).toContain(printWords);
      expect(text).toContain('100 mm');
      expect(text.includes('DO NOT CUT')).toBe(order.saddle.ringToRing === undefined);
      return /Sheet ([A-Z]\d+) of /.exec(text)?.[1];
    });
    // Each has its own name, in the order of the map.
    expect(new Set(labels).size).toBe(pages.length);
    expect(labels).toEqual([...labels].sort());
  });
});
