/** The program as a worker: batches in, rows out. */
import { isMainThread, parentPort, workerData } from 'node:worker_threads';
import { benchFor, doUnit, type Unit, type WorkBy } from './work.ts';

/** Serves until the run ends. False when this is no worker: somebody typed the word. */
export async function serve(): Promise<boolean> {
  if (isMainThread || parentPort === null) return false;
  const port = parentPort;
  const bench = await benchFor(workerData as WorkBy);
  port.on('message', (units: Unit[]) => {
    port.postMessage(units.map((unit) => doUnit(unit, bench)));
  });
  return true;
}
