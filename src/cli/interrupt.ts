/** Ctrl-C and the like: what was begun is cleared away, and the program ends at once. */

const signals = ['SIGINT', 'SIGTERM', 'SIGHUP'] as const;
const clearings = new Set<() => void>();

/**
 * Does that before a signal ends the program, until the returned function is called. The signal itself ends it then, as it ends every
 * other command: process.exit would wait for a pipe that nobody writes into.
 */
export function beforeStop(clear: () => void): () => void {
  if (clearings.size === 0) for (const signal of signals) process.on(signal, stop);
  clearings.add(clear);
  return () => {
    if (clearings.delete(clear) && clearings.size === 0) ignoreNone();
  };
}

function stop(signal: NodeJS.Signals): void {
  for (const clear of clearings) clear();
  ignoreNone();
  process.kill(process.pid, signal);
}

function ignoreNone(): void {
  for (const signal of signals) process.off(signal, stop);
}

/** A signal that comes during a short act waits until it is done. */
export function unbroken<T>(act: () => T): T {
  const release = beforeStop(() => undefined);
  try {
    return act();
  } finally {
    setImmediate(release); // signals that have come are told before that
  }
}
