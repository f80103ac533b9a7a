/** Cleans up when a signal ends the program. */

const signals = ['SIGINT', 'SIGTERM', 'SIGHUP'] as const;
const clearings = new Set<() => void>();

/** Until the returned function is called. Then the signal ends the program: process.exit would wait for stalled pipes. */
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

/** Holds signals meanwhile; for short actions. */
export function unbroken<T>(act: () => T): T {
  const release = beforeStop(() => undefined);
  try {
    return act();
  } finally {
    setImmediate(release); // earlier signals arrive first
  }
}
