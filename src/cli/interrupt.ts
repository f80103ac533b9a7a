/** Ctrl-C and the like: what was begun is cleared away, and the program ends at once. */
const signals = ['SIGINT', 'SIGTERM', 'SIGHUP'] as const;

/**
 * Does that before a signal ends the program, until the returned function is called. The signal itself ends it then, as it ends every
 * other command: process.exit would wait for a pipe that nobody writes into.
 */
export function beforeStop(clear: () => void): () => void {
  const release = (): void => {
    for (const signal of signals) process.off(signal, stop);
  };
  const stop = (signal: NodeJS.Signals): void => {
    clear();
    release();
    process.kill(process.pid, signal);
  };
  for (const signal of signals) process.on(signal, stop);
  return release;
}
