/** The side of the barrel as if its skin were laid flat: shapes in inches, x forward of the girth groove, s up from the chest midline. */
import type { Facts } from '../facts/facts.ts';
import type { Candidate } from '../fit/candidate.ts';
import { flatOf } from '../stock/flat.ts';
import { outlineOf, widthAt } from '../stock/outline.ts';
import type { Layer, Point, Shape } from './scene.ts';

/** Drawn so that the reader knows what they are; nothing is judged by them [common practice, no source]. */
const usual = { latigo: 1.75, ring: 1.5 };

/** A pair of edges, from the chest midline up, each as points. */
interface Edges {
  readonly front: readonly Point[];
  readonly back: readonly Point[];
}

/** The cinch, its buckle, the latigo and the ring, from the bottom up; the cords' front edge is the one that was judged. */
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
    { name: 'buckle', shapes: buckleShapes(candidate, slope) },
  ];
}

/** Flat [x, s, ...] as points. */
export function pointsOf(flat: ArrayLike<number>): Point[] {
  return Array.from({ length: flat.length / 2 }, (_, i): Point => [flat[2 * i] ?? 0, flat[2 * i + 1] ?? 0]);
}

const around = ({ front, back }: Edges): Point[] => [...front, ...back.toReversed()];

const cordShapes = (edges: Edges): Shape[] => [
  { kind: 'area', points: around(edges), fill: 'cord', stroke: 'edge' },
];

/** The lines between the cords: each keeps its share of the width. */
function strandShapes({ front, back }: Edges, strands: number): Shape[] {
  return Array.from({ length: strands - 1 }, (_, i): Shape => {
    const share = (i + 1) / strands;
    const points = front.map(([x, s], at): Point => [x + ((back[at]?.[0] ?? x) - x) * share, s]);
    return { kind: 'line', points, stroke: 'strand' };
  });
}

/** How far apart the rows of a woven bar are drawn, inches. */
const ROW = 0.25;

function barShapes(candidate: Candidate, slope: number): Shape[] {
  const { shape } = candidate;
  const { bars, half } = flatOf(candidate);
  // On the horse the cord has given, so that every distance is longer by this share.
  const given = shape.top / half;
  return bars.flatMap(({ from, length }) => {
    const high = shape.top - from * given;
    const low = Math.max(0, high - length * given);
    const corners = [low, shape.fullUpTo, shape.pinchedFrom, high].filter((s) => s >= low && s <= high);
    const across = (s: number): Edges => ({
      front: [[slope * s + widthAt(shape, s) / 2, s]],
      back: [[slope * s - widthAt(shape, s) / 2, s]],
    });
    const all = corners.map(across);
    const rows = Math.max(1, Math.round((high - low) / ROW));
    const edges = { front: all.flatMap(({ front }) => front), back: all.flatMap(({ back }) => back) };
    return [
      { kind: 'area', points: around(edges), fill: 'woven', stroke: 'weave' } as const,
      ...Array.from({ length: rows - 1 }, (_, i): Shape => {
        const { front, back } = across(low + ((high - low) * (i + 1)) / rows);
        return { kind: 'line', points: [...front, ...back], stroke: 'weave' };
      }),
    ];
  });
}

/** The frame, as it was judged, and its tongue. */
function buckleShapes({ buckle, shape }: Candidate, slope: number): Shape[] {
  const low = shape.top;
  const high = low + buckle.frameHeight;
  const half = buckle.frameWidth / 2;
  const at = (s: number, side: number): Point => [slope * s + side, s];
  const rung = low + 0.4 * buckle.frameHeight;
  const points = [at(low, half), at(high, half), at(high, -half), at(low, -half)];
  return [
    { kind: 'area', points, fill: 'paper', stroke: 'buckle' },
    { kind: 'line', points: [at(rung, half), at(rung, -half)], stroke: 'buckle' },
    { kind: 'line', points: [at(rung, 0), at(high, 0)], stroke: 'buckle' },
  ];
}

/** Straight from the buckle to the ring; none where the buckle already reaches it. */
function latigoShapes({ buckle, shape }: Candidate, { centreLine: { slope }, ring }: Facts): Shape[] {
  const from = shape.top + 0.4 * buckle.frameHeight;
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

/** The lower rim of the ring is where the latigo goes through. */
const ringShapes = ({ ring }: Facts): Shape[] => [
  { kind: 'circle', at: [ring.x, ringMiddle(ring)], radius: usual.ring, stroke: 'ring' },
];

const ringMiddle = ({ station }: Facts['ring']): number => station.value + 0.85 * usual.ring;
