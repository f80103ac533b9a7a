/** Ctrl-C and the like: what was begun is cleared away, and the program ends at once. */
import { exit } from '../fault.ts';

const signals = ['SIGINT', 'SIGTERM', 'SIGHUP'] as const;

/** Does that before a signal ends the program, until the returned function is called. */
export function beforeStop(clear: () => void): () => void {
  const stop = (): void => {
    clear();
    process.exit(exit.stopped);
  };
  for (const signal of signals) process.on(signal, stop);
  return () => {
    for (const signal of signals) process.off(signal, stop);
  };
}
