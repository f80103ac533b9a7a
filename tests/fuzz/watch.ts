/** Another thread reports a try that never ends. */
import { Worker } from 'node:worker_threads';
import { keptText, type Failure } from './case.ts';

/** Seconds before the whole run is ended. */
const patience = 30;
const size = 4_000_000;

const script = `
const { workerData: { state, text, file, patience } } = require('node:worker_threads');
const fs = require('node:fs');
const view = new Int32Array(state);
let last = -1, since = Date.now();
setInterval(() => {
  const now = Atomics.load(view, 0);
  if (now !== last) { last = now; since = Date.now(); return; }
  if (Date.now() - since < patience * 1000) return;
  fs.writeFileSync(file, Buffer.from(new Uint8Array(text).slice(0, view[1])));
  fs.writeSync(2, 'a try did not end in ' + patience + ' s: ' + file + '\\n');
  process.exit(1);
}, 1000);
`;

/** Call the result before each try. */
export function watch(file: string): {
  readonly before: (failure: Failure) => void;
  readonly end: () => void;
} {
  const state = new SharedArrayBuffer(8);
  const text = new SharedArrayBuffer(size);
  const view = new Int32Array(state);
  const bytes = Buffer.from(text);
  const worker = new Worker(script, { eval: true, workerData: { state, text, file, patience } });
  worker.unref();
  return {
    before: (failure) => {
      view[1] = bytes.write(keptText(failure));
      Atomics.add(view, 0, 1);
    },
    end: () => void worker.terminate(),
  };
}
