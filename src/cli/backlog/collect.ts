/** Results in the order of the input: into the journal first, then into the output, the table of faults and the counts. */
import { FirstPlaces } from '../../backlog/first-places.ts';
import { decodeRows } from '../../backlog/journal.ts';
import type { Row } from '../../backlog/row.ts';
import { moved, problemText } from '../../backlog/settle.ts';
import { count, newSummary, total, type Summary } from '../../backlog/summary.ts';
import type { BacklogPrinter } from '../../report/backlog-cells.ts';
import { errorRows } from '../../report/backlog-words.ts';
import type { JournalFile } from './journal-file.ts';
import type { Output } from './output.ts';
import type { Source } from '../sources.ts';
import type { Task } from './units.ts';
import type { Done } from './work.ts';

export interface Ends {
  readonly printer: BacklogPrinter;
  readonly output: Output;
  readonly errors: Output | undefined;
  readonly journal: JournalFile | undefined;
  readonly now: () => number;
}

/** Takes what is done, batch after batch. */
export class Collector {
  readonly summary: Summary = newSummary();
  /** Bytes of orders that are done. */
  bytes = 0;
  readonly #ends: Ends;
  readonly #first = new FirstPlaces();
  #source: Source | undefined;
  /** Orders of the present source so far. */
  #documents = 0;

  constructor(ends: Ends) {
    this.#ends = ends;
  }

  /** Orders done so far. */
  get orders(): number {
    return total(this.summary);
  }

  /** One batch, in its turn. Throws the system's error when something cannot be written. */
  take(tasks: readonly Task[], done: readonly Done[]): void {
    const { journal, output, errors, printer, now } = this.#ends;
    const fresh = tasks.flatMap(({ unit }, i) => {
      const { hash, body } = done[i] as Done;
      return body === undefined ? [] : [{ id: unit.id, hash, body }];
    });
    journal?.add(fresh);
    journal?.syncNowAndThen(now());
    const rows = tasks.flatMap((task, i) => this.#rowsOf(task, done[i] as Done));
    output.write(rows.map(({ cells }) => printer.row(cells)).join(''));
    errors?.write(rows.map(errorRows).join(''));
  }

  #rowsOf({ unit, source, lines, bytes }: Task, { hash, body }: Done): Row[] {
    const { summary } = this;
    this.bytes += bytes;
    if (source !== this.#source) this.#documents = 0;
    this.#source = source;
    const kept = body ?? this.#ends.journal?.bodyOf(unit.id);
    if (kept === undefined) throw new Error('the journal has lost what it held');
    const rows = decodeRows(kept);
    if (body === undefined) summary.taken += rows.length;
    else if (unit.known !== undefined && hash !== '') summary.changed += 1;
    const before = { lines, documents: unit.part ? this.#documents : 0 };
    this.#documents += rows.length;
    return rows.map((row) => this.#settled(moved(row, before)));
  }

  #settled({ cells, problems }: Row): Row {
    const whole = {
      ...cells,
      problem: problemText(problems),
      'same-number-as': this.#first.of(cells) ?? null,
    };
    count(this.summary, whole);
    return { cells: whole, problems };
  }
}
