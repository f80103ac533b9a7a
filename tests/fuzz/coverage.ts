/** The parts of the program that a try is the first to reach. */
import { Session, type Profiler } from 'node:inspector';

/** Slow: used for part of a run. */
export class Coverage {
  readonly #session = new Session();
  readonly #seen = new Set<string>();

  constructor() {
    this.#session.connect();
    this.#post('Profiler.enable');
    this.#post('Profiler.startPreciseCoverage', { callCount: true, detailed: true });
  }

  /** Blocks first run since the last call. */
  fresh(): number {
    let count = 0;
    const { result } = this.#post('Profiler.takePreciseCoverage') as Profiler.TakePreciseCoverageReturnType;
    for (const { url, functions } of result) {
      if (url.startsWith('node:')) continue;
      for (const { ranges } of functions) {
        for (const { startOffset, endOffset, count: times } of ranges) {
          if (times === 0) continue;
          const key = `${url}:${String(startOffset)}:${String(endOffset)}`;
          if (this.#seen.has(key)) continue;
          this.#seen.add(key);
          count += 1;
        }
      }
    }
    return count;
  }

  get blocks(): number {
    return this.#seen.size;
  }

  end(): void {
    this.#post('Profiler.stopPreciseCoverage');
    this.#post('Profiler.disable');
    this.#session.disconnect();
  }

  /** To this process, so it answers within the call. */
  #post(method: string, parameters: object = {}): unknown {
    let answer: unknown;
    this.#session.post(method, parameters, (error: Error | null, result: unknown) => {
      if (error !== null) throw error;
      answer = result;
    });
    return answer;
  }
}
