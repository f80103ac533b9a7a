/** The jobs of one bench; one that waits leaves a gap for a later one. */
import type { BenchTime } from './bench-time.ts';
import type { Work } from './work.ts';

/** In minutes of its bench. */
export interface Span {
  readonly work: Work;
  readonly from: number;
  readonly to: number;
}

export class Timeline {
  readonly spans: Span[] = [];
  private readonly bench: BenchTime;
  private gaps: { from: number; to: number }[] = [];
  private end = 0;

  constructor(bench: BenchTime, works: readonly Work[] = []) {
    this.bench = bench;
    for (const work of works) this.add(work);
  }

  /** Minute it would be done: in the first gap that holds it, else at the end. */
  endOf({ minutes, from }: Work): number {
    const release = this.bench.doneIn(from);
    const gap = this.gaps.find((each) => Math.max(each.from, release) + minutes <= each.to);
    return Math.max(gap?.from ?? this.end, release) + minutes;
  }

  /** Returns the minute it is done; moves no other job. */
  add(work: Work): number {
    const to = this.endOf(work);
    const from = to - work.minutes;
    if (from >= this.end) this.gaps.push({ from: this.end, to: from });
    this.gaps = this.gaps
      .flatMap((gap) =>
        gap.from <= from && to <= gap.to
          ? [
              { from: gap.from, to: from },
              { from: to, to: gap.to },
            ]
          : [gap],
      )
      .filter((gap) => gap.from < gap.to);
    this.end = Math.max(this.end, to);
    this.spans.push({ work, from, to });
    return to;
  }
}
