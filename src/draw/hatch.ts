/** Hatching as plain lines: no printer needs patterns or masks. */
import { hatch } from './look.ts';
import type { Point, Shape } from './scene.ts';

/** Points; holes stay open, and touching areas share one grid. */
export function hatched(outline: readonly Point[]): Shape[] {
  const { gap, slant, stroke } = hatch;
  const angle = (slant * Math.PI) / 180;
  const along: Point = [Math.cos(angle), -Math.sin(angle)];
  const across: Point = [Math.sin(angle), Math.cos(angle)];
  const turned = outline.map(([x, y]): Point => [x * along[0] + y * along[1], x * across[0] + y * across[1]]);
  const rows = turned.map(([, row]) => row);
  const found: Shape[] = [];
  for (let row = Math.ceil(Math.min(...rows) / gap) * gap; row < Math.max(...rows); row += gap) {
    const cuts = cutsAt(turned, row);
    for (let i = 0; i + 1 < cuts.length; i += 2) {
      const ends = [cuts[i] ?? 0, cuts[i + 1] ?? 0].map((cut): Point => [
        cut * along[0] + row * across[0],
        cut * along[1] + row * across[1],
      ]);
      found.push({ kind: 'line', points: ends, stroke });
    }
  }
  return found;
}

/** Where a row crosses the outline, in order. */
function cutsAt(outline: readonly Point[], row: number): number[] {
  const cuts: number[] = [];
  for (const [i, [x, y]] of outline.entries()) {
    const [nextX, nextY] = outline[(i + 1) % outline.length] ?? [x, y];
    // Half-open: a corner counts once or not at all.
    if (y <= row === nextY <= row) continue;
    cuts.push(x + ((nextX - x) * (row - y)) / (nextY - y));
  }
  return cuts.sort((a, b) => a - b);
}
