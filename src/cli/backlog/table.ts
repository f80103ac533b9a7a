/** Rows go to the output, errors to their table. */
import { FirstPlaces } from '../../work/first-places.ts';
import type { Row } from '../../work/row.ts';
import { count, newSummary, total, type Summary } from '../../work/summary.ts';
import type { BacklogPrinter } from '../../views/backlog-data.ts';
import { errorRows, errorsHead } from '../../words/backlog-words.ts';
import type { Output } from './output.ts';

export interface Ends {
  readonly printer: BacklogPrinter;
  readonly output: Output;
  readonly errors: Output | undefined;
}

/** Throws the system's error. */
export class Table {
  readonly summary: Summary = newSummary();
  readonly #ends: Ends;
  readonly #first = new FirstPlaces();

  constructor(ends: Ends) {
    this.#ends = ends;
  }

  begin(): void {
    const { printer, output, errors } = this.#ends;
    // What cannot be written is told before a row is printed.
    errors?.write(errorsHead());
    output.write(printer.head);
  }

  get orders(): number {
    return total(this.summary);
  }

  add(row: Row): void {
    const { printer, output, errors } = this.#ends;
    const earlier = this.#first.of(row.cells);
    const cells = earlier === undefined ? row.cells : { ...row.cells, sameNumberAs: earlier };
    output.write((this.orders > 0 ? printer.between : printer.before) + printer.row(cells));
    errors?.write(errorRows(row));
    count(this.summary, cells);
  }

  finish(): void {
    const { printer, output, errors } = this.#ends;
    const { orders } = this.summary;
    output.write(printer.foot(orders.sized + orders.tight > 0, this.orders > 0));
    errors?.finish();
    output.finish();
  }

  /** Leaves the old files. */
  drop(): void {
    this.#ends.output.drop();
    this.#ends.errors?.drop();
  }
}
