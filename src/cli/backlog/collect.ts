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
    const { journal, output, errors, now } = this.#ends;
    const { before, between } = this.#ends.printer;
    journal?.add(done.flatMap(({ line }) => line ?? []));
    journal?.syncNowAndThen(now());
    const begun = this.orders > 0;
    const texts: string[] = [];
    const faults: string[] = [];
    tasks.forEach((task, i) => {
      this.#takeOne(task, done[i] as Done, { texts, faults });
    });
    if (texts.length > 0) output.write((begun ? between : before) + texts.join(between));
    errors?.write(faults.join(''));
  }

  #takeOne(task: Task, done: Done, { texts, faults }: { texts: string[]; faults: string[] }): void {
    if (task.source !== this.#source) this.#documents = 0;
    this.#source = task.source;
    this.bytes += task.bytes;
    const { printed, body, hash } = done;
    if (body !== undefined && task.unit.known !== undefined && hash !== '') this.summary.changed += 1;
    const before = printed === undefined ? undefined : this.#first.of(printed.cells);
    if (printed !== undefined && before === undefined) {
      this.#documents += 1;
      count(this.summary, printed.cells);
      texts.push(printed.text);
      return;
    }
    for (const row of this.#rowsOf(task, done)) {
      const whole = this.#settled(row, before);
      texts.push(this.#ends.printer.row(whole.cells));
      faults.push(errorRows(whole));
    }
  }

  #rowsOf({ unit, lines }: Task, { body }: Done): Row[] {
    const kept = body ?? this.#ends.journal?.bodyOf(unit.id);
    if (kept === undefined) throw new Error('the journal has lost what it held');
    const rows = decodeRows(kept);
    if (body === undefined) this.summary.taken += rows.length;
    const before = { lines, documents: unit.part ? this.#documents : 0 };
    this.#documents += rows.length;
    return rows.map((row) => moved(row, before));
  }

  /** @param before place of the first order of that number, where it was asked for already */
  #settled({ cells, problems }: Row, before: string | undefined): Row {
    const whole = {
      ...cells,
      problem: problemText(problems),
      'same-number-as': before ?? this.#first.of(cells) ?? null,
    };
    count(this.summary, whole);
    return { cells: whole, problems };
  }
}
