/** The outline of a horse behind the cinch: our own drawing, sized to the order's horse. */
import type { Facts } from '../horse/facts.ts';
import type { Point } from './scene.ts';

/** Usual body length over heart girth; sets only how far the drawing extends [choice]. */
const LENGTH = 0.93;

const STEPS = 6;

/**
 * Inches for a girth of 72 in. Across: e ahead of the back of the elbow, c ahead of where its line meets the midline, h a share of
 * the way to the buttock. Up: from the midline, or with t from the withers.
 */
const drawing = {
  topline:
    'e28 t22, e18 t14.5, e10 t5.6, e4 t1.2, e-1 t0.6, h0 t0, h.17 t-1.4, h.4 t-1.9, h.6 t-1, h.76 t-.6, h.9 t-3, h.99 t-9.5, h1 t-16, h.96 t-24, h.89 4, h.88 -3, h.91 -9',
  breast: 'e29 t10, e21 t.5, e14.5 t-9.5, e12.2 19, e11.8 14, e9.6 9, e8.6 4, e8.1 -2, e7.8 -9',
  forearm: 'c0 0, c.7 -3, c.9 -9',
  belly: 'c0 0, h0 0, h.12 -.5, h.28 -.6, h.45 .8, h.62 4.6, h.68 6.2, h.73 3.6, h.77 -2, h.81 -9',
  shoulder: 'e3.4 t-2.4, e7.4 t-9, e11 t-15.5',
} as const;

export interface Horse {
  readonly lines: readonly (readonly Point[])[];
  /** Elbow, arm and shoulder: no cinch belongs there. */
  readonly limb: readonly Point[];
  /** Ahead of the groove. */
  readonly chest: number;
}

/** x from the groove, y from the midline; withers at half the girth. What is behind scales with body length. */
export function horseOf({ girth, room, k, elbowLine, order }: Facts): Horse {
  const top = girth.value / 2;
  const chest = room.value + 12 * k;
  const hind = Math.max(30 * k, (order.horse.bodyLength ?? LENGTH * girth.value) - chest);
  const from = { e: [room.value, k], c: [elbowLine[0] ?? 0, k], h: [0, -hind] } as const;
  const pointOf = (text: string): Point => {
    const [, mark = 'e', across, isTop, up] = /^([ech])(\S+) (t?)(\S+)$/.exec(text) ?? [];
    const [start, step] = from[mark as keyof typeof from];
    return [start + step * Number(across), (isTop === 't' ? top : 0) + k * Number(up)];
  };
  const line = (name: keyof typeof drawing): Point[] => curve(drawing[name].split(', ').map(pointOf));
  const [, , armpitX = 0, armpit = 0, elbowX = 0, elbow = 0] = elbowLine;
  return {
    chest,
    lines: (Object.keys(drawing) as (keyof typeof drawing)[]).map(line),
    limb: [
      ...line('shoulder'),
      // The part of the breast below the shoulder.
      ...line('breast').slice(4 * STEPS),
      ...line('forearm').toReversed(),
      [armpitX, armpit],
      [elbowX, elbow],
      pointOf('e2.4 t-4'),
    ],
  };
}

/** Catmull and Rom 1974, uniform. */
function curve(points: readonly Point[]): Point[] {
  return points.flatMap((point, i): Point[] => {
    const next = points[i + 1];
    if (next === undefined) return [point];
    const [before, after] = [points[i - 1] ?? point, points[i + 2] ?? next];
    return Array.from({ length: STEPS }, (_, step): Point => {
      const t = step / STEPS;
      const at = (axis: 0 | 1): number => {
        const [a, b, c, d] = [before[axis], point[axis], next[axis], after[axis]];
        return b + (t * (c - a + t * (2 * a - 5 * b + 4 * c - d + t * (3 * (b - c) + d - a)))) / 2;
      };
      return [at(0), at(1)];
    });
  });
}
