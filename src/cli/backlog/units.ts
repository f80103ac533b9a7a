/** The list of things to read becomes units of work: small files whole, all else in slices, and units become batches. */
import fs from 'node:fs';
import type { CliIo } from '../io.ts';
import { systemWords } from '../system-error.ts';
import { slicesOf } from './pieces.ts';
import type { Source } from '../sources.ts';
import type { Unit } from './work.ts';

/** A unit with what only the one who collects the results needs. */
export interface Task {
  readonly unit: Unit;
  readonly source: Source;
  /** Lines of the file before this slice. */
  readonly lines: number;
  /** Rough number of orders in it, to see when more cores pay. */
  readonly weight: number;
  /** Bytes, for the progress bar. */
  readonly bytes: number;
}

/** Larger files go in slices. */
const WHOLE = 262_144;
/** Bytes of a usual order. */
const ORDER = 400;

const byLine = /\.(?:ndjson|jsonl)$/i;

/** All units, in the order of the sources. What is not a small plain file is read here, slice by slice. */
export async function* tasksOf(sources: readonly Source[], io: CliIo): AsyncGenerator<Task> {
  for (const source of sources) {
    if (inSlices(source)) yield* sliced(source, io);
    else yield whole(source);
  }
}

const inSlices = ({ plain, size, path, fault }: Source): boolean =>
  fault === undefined && (!plain || (size ?? 0) > WHOLE || (path !== undefined && byLine.test(path)));

function whole(source: Source): Task {
  const { label, path, size = 0, fault } = source;
  const from = fault === undefined && path !== undefined ? { path } : { fault: fault ?? '' };
  const unit = { id: label, label, from, part: false };
  return { unit, source, lines: 0, weight: Math.max(1, size / ORDER), bytes: size };
}

async function* sliced(source: Source, io: CliIo): AsyncGenerator<Task> {
  const { label, path } = source;
  const parts = path === undefined ? io.stdinParts() : fs.createReadStream(path);
  const asked = path !== undefined && byLine.test(path) ? true : undefined;
  let count = 0;
  const next = (): Pick<Unit, 'id' | 'label' | 'part'> => {
    count += 1;
    return { id: `${label}#${String(count)}`, label, part: true };
  };
  try {
    for await (const slice of slicesOf(parts, asked)) {
      // A copy with a memory of its own: it is handed over to the worker, not copied again.
      const bytes = new Uint8Array(slice.bytes);
      const unit = { ...next(), from: { bytes }, byLine: slice.byLine };
      yield { unit, source, lines: slice.lines, weight: bytes.length / ORDER, bytes: bytes.length };
    }
  } catch (error) {
    const fault = systemWords(error);
    if (fault === undefined) throw error;
    yield { unit: { ...next(), from: { fault } }, source, lines: 0, weight: 1, bytes: 0 };
  }
}

/** Most units of a batch, and the weight that closes one before. */
const MOST = 16;
const HEAVY = 64;

/** Units that are handed out together. */
export async function* batchesOf(tasks: AsyncIterable<Task>): AsyncGenerator<Task[]> {
  let batch: Task[] = [];
  let weight = 0;
  for await (const task of tasks) {
    batch.push(task);
    weight += task.weight;
    if (batch.length < MOST && weight < HEAVY) continue;
    yield batch;
    batch = [];
    weight = 0;
  }
  if (batch.length > 0) yield batch;
}
