/** Who does the work: this thread alone, or several workers beside it, each running the same program. */
import type { Done, Unit, WorkBy } from './work.ts';

/** Does batches. Every batch is answered; which one comes first does not matter, since the asker keeps them in order. */
export interface Pool {
  /** How many batches are worth having under way. */
  readonly ahead: number;
  readonly run: (units: readonly Unit[]) => Promise<Done[]>;
  readonly end: () => void;
}

/** Word on the command line by which the program knows that it was started as a worker. */
export const workerWord = '--as-worker-of-backlog';

/** A list of what is finished that is longer takes the memory of a worker. */
const LONG = 20_000;

/**
 * Workers that share the memory of one machine: more than these need more memory than they save time. With 100 000 orders three
 * keep within 300 MB, and two do beside a journal of most of those orders.
 * @param finished units that the journal of an earlier run holds
 */
export const mostJobs = (finished: number): number => (finished > LONG ? 2 : 3);

/** All in this thread, with a moment for signals after every unit. */
export async function alone(by: WorkBy): Promise<Pool> {
  const { benchFor, doUnit } = await import('./work.ts');
  const bench = await benchFor(by);
  return {
    ahead: 1,
    run: async (units) => {
      const done: Done[] = [];
      for (const unit of units) {
        done.push(doUnit(unit, bench));
        await new Promise(setImmediate);
      }
      return done;
    },
    end: () => undefined,
  };
}

/** Memory of a worker. With a young memory of 16 MB, two took 20 MB more and were no faster; three stay within 300 MB for 100 000 orders. */
const limits = { maxYoungGenerationSizeMb: 8, maxOldGenerationSizeMb: 256 };

interface Waiting {
  readonly resolve: (done: Done[]) => void;
  readonly reject: (error: Error) => void;
}

/** Several workers; a batch goes to the one that has least to do. Errors: a worker that ends ends the run. */
export function workers(program: string, jobs: number, by: WorkBy): Pool {
  const { Worker } = process.getBuiltinModule('node:worker_threads');
  let broken: Error | undefined;
  const team = Array.from({ length: jobs }, () => {
    const worker = new Worker(program, { argv: [workerWord], workerData: by, resourceLimits: limits });
    const queue: Waiting[] = [];
    const fail = (error: Error): void => {
      broken ??= error;
      for (const { reject } of queue.splice(0)) reject(error);
    };
    worker.on('message', (done: Done[]) => queue.shift()?.resolve(done));
    worker.on('error', fail);
    worker.on('exit', () => {
      fail(new Error('a worker has ended too early'));
    });
    return { worker, queue };
  });
  return {
    ahead: jobs * 3,
    run: (units) =>
      new Promise((resolve, reject) => {
        if (broken !== undefined) {
          reject(broken);
          return;
        }
        const free = team.reduce((a, b) => (b.queue.length < a.queue.length ? b : a));
        free.queue.push({ resolve, reject });
        free.worker.postMessage(units, buffersOf(units));
      }),
    end: () => {
      for (const { worker } of team) void worker.terminate();
    },
  };
}

const buffersOf = (units: readonly Unit[]): ArrayBuffer[] =>
  units.flatMap(({ from }) => ('bytes' in from ? [from.bytes.buffer] : []));

/** Where the program stands as one file that a worker can run; undefined when it runs from its sources. */
export function bundlePath(): string | undefined {
  return typeof __filename === 'string' && __filename.endsWith('.cjs') ? __filename : undefined;
}
