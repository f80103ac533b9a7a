/** Order numbers are to be unique in a backlog: which order came first with a number. */
import type { Cells } from './row.ts';

/** Remembers where each order number was seen first. */
export class FirstPlaces {
  readonly #places = new Map<string, string>();

  /** "file:line" of the first order of that number, if this is a later one. */
  of({ order, file, line }: Cells): string | undefined {
    if (typeof order !== 'string' || typeof file !== 'string' || typeof line !== 'number') return undefined;
    const first = this.#places.get(order);
    if (first === undefined) this.#places.set(order, `${file}:${String(line)}`);
    return first;
  }
}
