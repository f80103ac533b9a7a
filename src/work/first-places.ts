/** Finds repeated order numbers in a backlog. */
import type { Cells } from './row.ts';

export class FirstPlaces {
  readonly #places = new Map<string, string>();

  /** "file:line" of the first order with that number; undefined for the first. */
  of({ order, file, line }: Cells): string | undefined {
    if (typeof order !== 'string' || typeof file !== 'string' || typeof line !== 'number') return undefined;
    const first = this.#places.get(order);
    if (first === undefined) this.#places.set(order, `${file}:${String(line)}`);
    return first;
  }
}
