/** Tries a target many times from a seed; inputs that reach new code become parents. */
import { seededRandom } from '../../src/math/random.ts';
import type { Case, Failure } from './case.ts';
import { Coverage } from './coverage.ts';
import { Bench } from './judge.ts';
import type { Target } from './target.ts';

export interface Plan {
  readonly tries: number;
  readonly seed: number;
  /** Tries counted by V8. With 0, a seed gives the same run everywhere. */
  readonly guided: number;
  /** Percent of inputs that go through command lines too, not the reader alone; 100 by default. */
  readonly run?: number;
  /** No try starts after this clock time. */
  readonly until?: number;
  /** Of one try; 2000 by default. */
  readonly mostMilliseconds?: number;
  /** Called before each try, which may never end. */
  readonly before?: (failure: Failure) => void;
}

export interface Figures {
  readonly target: string;
  tries: number;
  good: number;
  runs: number;
  parents: number;
  blocks: number;
  slowest: number;
  slow: Case | undefined;
  seconds: number;
  readonly failures: Failure[];
}

/** Stops there: the target fails everywhere. */
const mostFailures = 25;
/** Percent. Files that reach new code are mostly faulty. */
const fromSeeds = 70;

export async function fuzz(target: Target, plan: Plan): Promise<Figures> {
  const bench = new Bench(target, plan.mostMilliseconds);
  const figures: Figures = {
    ...{
      target: target.name,
      tries: 0,
      good: 0,
      runs: 0,
      parents: 0,
      blocks: 0,
      slowest: 0,
      slow: undefined,
      seconds: 0,
    },
    failures: [],
  };
  const start = performance.now();
  try {
    await new Fuzz(bench, plan, figures).all();
  } finally {
    bench.close();
  }
  figures.seconds = (performance.now() - start) / 1000;
  return figures;
}

class Fuzz {
  readonly #bench: Bench;
  readonly #plan: Plan;
  readonly #figures: Figures;
  readonly #parents: Buffer[];
  readonly #whys = new Set<string>();

  constructor(bench: Bench, plan: Plan, figures: Figures) {
    this.#bench = bench;
    this.#plan = plan;
    this.#figures = figures;
    this.#parents = [...bench.target.seeds];
  }

  async all(): Promise<void> {
    const { tries, guided } = this.#plan;
    await this.#guided(Math.min(tries, guided));
    while (!this.#ended()) await this.#one();
  }

  #ended(): boolean {
    const { tries, until = Infinity } = this.#plan;
    return (
      this.#figures.tries >= tries || this.#figures.failures.length >= mostFailures || Date.now() > until
    );
  }

  async #guided(tries: number): Promise<void> {
    if (tries === 0) return;
    const coverage = new Coverage();
    // What the seeds reach already is not new.
    for (const input of this.#parents) await this.#bench.judge({ target: '', input, lines: [] });
    coverage.fresh();
    while (this.#figures.tries < tries && !this.#ended()) {
      const input = await this.#one();
      if (coverage.fresh() === 0) continue;
      this.#parents.push(input);
      this.#figures.parents += 1;
    }
    this.#figures.blocks = coverage.blocks;
    coverage.end();
  }

  async #one(): Promise<Buffer> {
    const { seed, before, run } = this.#plan;
    const chance = seededRandom(seed, this.#figures.tries + 1);
    const parents = 100 * chance.uniform() < fromSeeds ? this.#bench.target.seeds : this.#parents;
    const { tried, standing } = this.#bench.next(parents, chance, run);
    before?.({ tried, why: 'it did not end' });
    const { why, runs, took, standing: found } = await this.#bench.judge(tried, standing);
    this.#figures.tries += 1;
    this.#figures.runs += runs;
    if (found === 'good') this.#figures.good += 1;
    if (took > this.#figures.slowest) {
      this.#figures.slowest = took;
      this.#figures.slow = tried;
    }
    if (why !== undefined) this.#fail({ tried, why });
    return tried.input;
  }

  /** One of a kind is enough. */
  #fail(failure: Failure): void {
    const kind = failure.why.replace(/"(?:[^"\\]|\\.)*"|\d+/g, '#').slice(0, 120);
    if (this.#whys.has(kind)) return;
    this.#whys.add(kind);
    this.#figures.failures.push(failure);
  }
}
