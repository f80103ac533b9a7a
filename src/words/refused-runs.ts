/** Groups ruled-out strand counts into runs, for fewer lines. */
import type { Refused } from '../advice/refused.ts';
import type { Style } from '../order/types.ts';

/** `mildest` comes closest to passing. */
export interface RefusedRun {
  readonly style: Style;
  readonly from: number;
  readonly to: number;
  readonly rule: string;
  readonly mildest: Refused;
}

/** Neighboring counts of one style that fail the same rule. */
export function refusedRuns(refused: readonly Refused[]): RefusedRun[] {
  const runs: RefusedRun[] = [];
  for (const style of new Set(refused.map((entry) => entry.style))) {
    const ofStyle = refused.filter((entry) => entry.style === style).sort((a, b) => a.strands - b.strands);
    for (const entry of ofStyle) {
      const last = runs.at(-1);
      const joins = last?.style === style && last.rule === entry.rule && entry.strands === last.to + 2;
      if (last !== undefined && joins) runs[runs.length - 1] = { ...last, to: entry.strands };
      else runs.push({ style, from: entry.strands, to: entry.strands, rule: entry.rule, mildest: entry });
    }
  }
  return runs;
}
