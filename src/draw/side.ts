/** A cinch on the barrel's skin laid flat, inches: x forward of the girth groove, s up from the chest midline. */
import type { Facts } from '../horse/facts.ts';
import type { Candidate } from '../cinch/candidate.ts';
import { flatOf } from '../cinch/flat.ts';
import { outlineOf, widthAt } from '../cinch/outline.ts';
import { buckleShapes, cordShapes, rung, strandShapes, wovenShapes } from './cinch-parts.ts';
import type { Layer, Point, Shape } from './scene.ts';

/** Inches, only to draw; nothing is judged by them [practice, no source]. */
const usual = { latigo: 1.75, ring: 1.5 };

/** From the bottom up; the front edge is the one judged. */
export function cinchLayers(candidate: Candidate, facts: Facts): Layer[] {
  const { slope } = facts.centreLine;
  const { stations, widths } = outlineOf(candidate.shape);
  const front = stations.map((s, i): Point => [slope * s + (widths[i] ?? 0) / 2, s]);
  const edges = { front, back: front.map(([x, s]): Point => [2 * slope * s - x, s]) };
  return [
    { name: 'latigo', shapes: latigoShapes(candidate, facts) },
    { name: 'ring', shapes: ringShapes(facts) },
    { name: 'cords', shapes: cordShapes(edges) },
    { name: 'strands', shapes: strandShapes(edges, candidate.strands) },
    { name: 'bars', shapes: barShapes(candidate, slope) },
    {
      name: 'buckle',
      shapes: buckleShapes(candidate.buckle, (up, aside) => {
        const s = candidate.shape.top + up;
        return [slope * s + aside, s];
      }),
    },
  ];
}

/** From flat [x, s, ...]. */
export function pointsOf(flat: ArrayLike<number>): Point[] {
  return Array.from({ length: flat.length / 2 }, (_, i): Point => [flat[2 * i] ?? 0, flat[2 * i + 1] ?? 0]);
}

function barShapes(candidate: Candidate, slope: number): Shape[] {
  const { shape } = candidate;
  const { bars, half } = flatOf(candidate);
  // The share by which the cinch has stretched.
  const given = shape.top / half;
  return bars.flatMap(({ from, length }) => {
    const high = shape.top - from * given;
    const low = Math.max(0, high - length * given);
    const corners = [low, shape.fullUpTo, shape.pinchedFrom, high].filter((s) => s >= low && s <= high);
    return wovenShapes(corners, (s) => {
      const half = widthAt(shape, s) / 2;
      return [
        [slope * s + half, s],
        [slope * s - half, s],
      ];
    });
  });
}

/** None when the buckle reaches the ring. */
function latigoShapes({ buckle, shape }: Candidate, { centreLine: { slope }, ring }: Facts): Shape[] {
  const from = shape.top + rung * buckle.frameHeight;
  const half = Math.min(usual.latigo, buckle.frameWidth * 0.7) / 2;
  const to = ring.station.value;
  if (to <= shape.top + buckle.frameHeight) return [];
  const points: Point[] = [
    [slope * from + half, from],
    [ring.x + half, to],
    [ring.x - half, to],
    [slope * from - half, from],
  ];
  return [{ kind: 'area', points, fill: 'strap', stroke: 'strap' }];
}

/** The latigo passes the lower rim. */
const ringShapes = ({ ring }: Facts): Shape[] => [
  { kind: 'circle', at: [ring.x, ringMiddle(ring)], radius: usual.ring, stroke: 'ring' },
];

const ringMiddle = ({ station }: Facts['ring']): number => station.value + 0.85 * usual.ring;
