/** One try: the input through its door, then its command lines. */
import type { Random } from '../../src/math/random.ts';
import type { Case } from './case.ts';
import { holdRun } from './hold-run.ts';
import { Folder } from './machine.ts';
import type { Standing, Target } from './target.ts';

export interface Judged {
  readonly standing: Standing;
  readonly runs: number;
  /** Milliseconds. */
  readonly took: number;
  readonly why?: string;
}

/** Processor time of a try. */
const mostMilliseconds = 2000;

/** Processor time: machines are busy. The watch ends what only waits. */
function millisecondsSince(start: NodeJS.CpuUsage): number {
  const { user, system } = process.cpuUsage(start);
  return (user + system) / 1000;
}

export class Bench {
  readonly target: Target;
  readonly #folder = new Folder();

  readonly #most: number;

  constructor(target: Target, most = mostMilliseconds) {
    this.target = target;
    this.#most = most;
    this.#folder.put(target.beside);
  }

  /** `run`: percent of inputs with command lines. */
  next(parents: readonly Buffer[], chance: Random, run = 100): { tried: Case; standing: Standing | Error } {
    const input = this.target.change(parents, chance);
    let standing: Standing | Error;
    try {
      standing = this.target.look(input);
    } catch (error) {
      standing = error as Error;
    }
    const all = standing instanceof Error ? [] : this.target.lines(standing, input, chance);
    const lines = this.target.onlyRuns === true || 100 * chance.uniform() < run ? all : [];
    return { tried: { target: this.target.name, input, lines }, standing };
  }

  /**
   * Never throws. A slow case is tried again: code runs slower the first time. `looked`: the door's answer, if
   * known.
   */
  async judge(tried: Case, looked?: Standing | Error): Promise<Judged> {
    // A simulation takes as long as was asked for.
    const most = tried.lines.flat().some((word) => word.startsWith('--simulate'))
      ? 5 * this.#most
      : this.#most;
    const first = await this.#once(tried, looked);
    if (first.why !== undefined || first.took <= most) return first;
    const second = await this.#once(tried, looked);
    if (second.why !== undefined || second.took <= most) return second;
    const took = Math.min(first.took, second.took);
    return { ...second, took, why: `it took ${took.toFixed(0)} ms, twice` };
  }

  async #once({ input, lines }: Case, looked?: Standing | Error): Promise<Judged> {
    const start = process.cpuUsage();
    let standing: Standing = 'faulty';
    let runs = 0;
    let why: string | undefined;
    try {
      if (looked instanceof Error) throw looked;
      standing = looked ?? this.target.look(input);
      for (const line of lines) {
        runs += 1;
        await this.#run(line, input);
      }
    } catch (error) {
      why = error instanceof Error ? `${error.name}: ${error.message}` : String(error);
    }
    return { standing, runs, took: millisecondsSince(start), ...(why === undefined ? {} : { why }) };
  }

  async #run(line: readonly string[], input: Buffer): Promise<void> {
    const { file, after, beside, writes } = this.target;
    this.#folder.put({ [file]: input });
    try {
      const ran = await this.#folder.run(line, input);
      holdRun(line, ran, `${input.toString('utf8')}\n${line.join(' ')}`);
      after?.({ ...ran, line }, (name) => this.#folder.read(name));
    } finally {
      if (writes === true) {
        this.#folder.empty();
        this.#folder.put(beside);
      }
    }
  }

  close(): void {
    this.#folder.remove();
  }
}
