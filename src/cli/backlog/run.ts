/** A whole backlog: what was named is read, done on as many cores as pay, and written in the order of the input. */
import type { Collector } from './collect.ts';
import type { Interrupt } from './interrupt.ts';
import type { JournalFile } from './journal-file.ts';
import { alone, bundlePath, mostJobs, workers, type Pool } from './pool.ts';
import { batchesOf, type Task } from './units.ts';
import type { WorkBy } from './work.ts';

/**
 * Below this many orders starting workers takes longer than they save: each has to be warmed up. Measured on two cores:
 * at 10 000 orders two workers took 0.93 of the time of one thread, at 40 000 they took 0.74.
 */
const PAYS = 6000;

export interface Plan {
  readonly by: WorkBy;
  /** Workers asked for; undefined when the program may choose. */
  readonly jobs: number | undefined;
  readonly cores: number;
  readonly journal: JournalFile | undefined;
  readonly interrupt: Interrupt;
  readonly collector: Collector;
  readonly after: () => void;
}

/** Does all tasks; false when it was stopped before the end. Errors: those of reading, writing and workers. */
export async function doAll(tasks: AsyncGenerator<Task>, plan: Plan): Promise<boolean> {
  const { interrupt, collector, journal } = plan;
  const ahead: { batch: Task[]; done: ReturnType<Pool['run']> }[] = [];
  const batches = batchesOf(withKnown(tasks, journal));
  const { pool, started } = await poolFor(batches, plan);
  const finishOne = async (): Promise<void> => {
    const first = ahead.shift();
    if (first === undefined) return;
    collector.take(first.batch, await first.done);
    plan.after();
  };
  try {
    for (const batch of started) {
      ahead.push({ batch, done: begin(pool, batch) });
      if (ahead.length >= pool.ahead) await finishOne();
    }
    for (;;) {
      const next = await interrupt.orStop(batches.next());
      if (next === undefined || next.done === true) break;
      ahead.push({ batch: next.value, done: begin(pool, next.value) });
      if (ahead.length >= pool.ahead) await finishOne();
    }
    // What is under way is finished even after a stop: it takes a moment, and nothing done is lost.
    while (ahead.length > 0) await finishOne();
    return !interrupt.requested;
  } finally {
    pool.end();
  }
}

function begin(pool: Pool, batch: readonly Task[]): ReturnType<Pool['run']> {
  const done = pool.run(batch.map(({ unit }) => unit));
  done.catch(() => undefined); // it is heard when its turn comes
  return done;
}

async function* withKnown(
  tasks: AsyncGenerator<Task>,
  journal: JournalFile | undefined,
): AsyncGenerator<Task> {
  for await (const task of tasks) {
    const known = journal?.hashOf(task.unit.id);
    yield known === undefined ? task : { ...task, unit: { ...task.unit, known } };
  }
}

/** Looks at the first batches to see whether there is work for several. */
async function poolFor(
  batches: AsyncGenerator<Task[]>,
  { by, jobs, cores, interrupt, journal }: Plan,
): Promise<{ pool: Pool; started: Task[][] }> {
  const program = bundlePath();
  const team = jobs ?? Math.min(cores, mostJobs(journal?.found.finished ?? 0));
  const started: Task[][] = [];
  if (program === undefined || team === 1) return { pool: await alone(by), started };
  let weight = 0;
  while (jobs === undefined && weight < PAYS) {
    const next = await interrupt.orStop(batches.next());
    if (next === undefined || next.done === true) return { pool: await alone(by), started };
    started.push(next.value);
    weight += next.value.reduce((sum, task) => sum + task.weight, 0);
  }
  return { pool: workers(program, team, by), started };
}
