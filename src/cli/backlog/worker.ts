/** The program as a worker: batches in, rows out. */
import { isMainThread, parentPort, workerData } from 'node:worker_threads';
import type { WorkBy } from './pool.ts';
import { printerFor } from './printers.ts';
import { doUnit, type Unit } from './work.ts';

/** Serves until the run ends. False when this is no worker: somebody typed the word. */
export async function serve(): Promise<boolean> {
  if (isMainThread || parentPort === null) return false;
  const port = parentPort;
  const { shop, look, print } = workerData as WorkBy;
  const bench = { shop, print, printer: await printerFor(look) };
  port.on('message', (units: Unit[]) => {
    port.postMessage(units.map((unit) => doUnit(unit, bench)));
  });
  return true;
}
