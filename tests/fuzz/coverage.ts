/** Which parts of the program a try went through that none before it did, by the counters that V8 keeps for each block. */
import { Session, type Profiler } from 'node:inspector';

/** Counters are slow to keep and slow to read: they are kept for a part of a run. */
export class Coverage {
  readonly #session = new Session();
  readonly #seen = new Set<string>();

  constructor() {
    this.#session.connect();
    this.#post('Profiler.enable');
    this.#post('Profiler.startPreciseCoverage', { callCount: true, detailed: true });
  }

  /** How many blocks have been run for the first time since the last call. */
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

  /** Blocks seen in all. */
  get blocks(): number {
    return this.#seen.size;
  }

  end(): void {
    this.#post('Profiler.stopPreciseCoverage');
    this.#post('Profiler.disable');
    this.#session.disconnect();
  }

  /** Answers within the call, since the session is to this process itself. */
  #post(method: string, parameters: object = {}): unknown {
    let answer: unknown;
    this.#session.post(method, parameters, (error: Error | null, result: unknown) => {
      if (error !== null) throw error;
      answer = result;
    });
    return answer;
  }
}
