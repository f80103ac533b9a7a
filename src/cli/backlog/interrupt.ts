/** Ctrl-C and the like: asks the run to stop after what is under way, instead of ending it in the middle. */

const signals = ['SIGINT', 'SIGTERM', 'SIGHUP'] as const;

/** Listens for signals until it is told to stop listening. */
export class Interrupt {
  requested = false;
  #wake: (() => void) | undefined;
  readonly #heard = (): void => {
    this.requested = true;
    this.#wake?.();
    this.release(); // the second time ends the program at once
  };

  /** Begins to listen. */
  listen(): void {
    for (const signal of signals) process.on(signal, this.#heard);
  }

  /** Back to what the system does by itself. */
  release(): void {
    for (const signal of signals) process.off(signal, this.#heard);
  }

  /** What is awaited, or undefined as soon as somebody says stop. */
  async orStop<T>(awaited: Promise<T>): Promise<T | undefined> {
    if (this.requested) return undefined;
    // Not Promise.race: against a promise that lives long, it would keep everything that ever ran.
    return new Promise((resolve, reject) => {
      this.#wake = () => {
        resolve(undefined);
      };
      awaited.then(resolve, reject);
    });
  }
}
