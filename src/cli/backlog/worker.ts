/** The program as a worker: batches in, rows out. */
import { isMainThread, parentPort, workerData } from 'node:worker_threads';
import type { Shop } from '../../order/types.ts';
import { doUnit, type Unit } from './work.ts';

/** Serves until the run ends. False when this is no worker: somebody typed the word. */
export function serve(): boolean {
  if (isMainThread || parentPort === null) return false;
  const port = parentPort;
  const shop = workerData as Shop;
  port.on('message', (units: Unit[]) => {
    port.postMessage(units.map((unit) => doUnit(unit, shop)));
  });
  return true;
}
