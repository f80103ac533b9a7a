/** Clips lines to a box: no viewer needs masks. */
import type { Point, Shape } from './scene.ts';

/** Two opposite corners. */
export interface Box {
  readonly from: Point;
  readonly to: Point;
}

/** Liang and Barsky 1984. */
export function within(points: readonly Point[], { from, to }: Box): Point[][] {
  const pieces: Point[][] = [];
  let open = false;
  for (const [i, start] of points.slice(0, -1).entries()) {
    const end = points[i + 1] ?? start;
    let [enter, leave] = [0, 1];
    for (const axis of [0, 1] as const) {
      const step = end[axis] - start[axis];
      const parts = [(from[axis] - start[axis]) / step, (to[axis] - start[axis]) / step];
      const isOut = step === 0 && (start[axis] < from[axis] || start[axis] > to[axis]);
      if (isOut) leave = -1;
      if (step === 0) continue;
      enter = Math.max(enter, Math.min(...parts));
      leave = Math.min(leave, Math.max(...parts));
    }
    if (enter >= leave) {
      open = false;
      continue;
    }
    const at = (part: number): Point => [
      start[0] + part * (end[0] - start[0]),
      start[1] + part * (end[1] - start[1]),
    ];
    if (!open || enter > 0) pieces.push([at(enter)]);
    pieces.at(-1)?.push(at(leave));
    open = leave === 1;
  }
  return pieces;
}

/** Areas and text stay. */
export const linesWithin = (shapes: readonly Shape[], box: Box): Shape[] =>
  shapes.flatMap((shape): Shape[] =>
    shape.kind === 'line' ? within(shape.points, box).map((points) => ({ ...shape, points })) : [shape],
  );
