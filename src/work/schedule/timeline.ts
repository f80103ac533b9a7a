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
  /** In order of time. */
  readonly spans: Span[] = [];
  private readonly bench: BenchTime;

  constructor(bench: BenchTime, works: readonly Work[] = []) {
    this.bench = bench;
    for (const work of works) this.add(work);
  }

  /** Minute it would be done: in the first gap that holds it, else at the end. */
  endOf(work: Work): number {
    return this.placeOf(work).to;
  }

  /** Returns the minute it is done; moves no other job. */
  add(work: Work): number {
    const { place, to } = this.placeOf(work);
    this.spans.splice(place, 0, { work, from: to - work.minutes, to });
    return to;
  }

  private placeOf({ minutes, from }: Work): { place: number; to: number } {
    let to = this.bench.doneIn(from) + minutes;
    let place = 0;
    for (const span of this.spans) {
      if (to <= span.from) break;
      to = Math.max(to, span.to + minutes);
      place++;
    }
    return { place, to };
  }
}
