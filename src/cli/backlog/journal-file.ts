/** The journal beside the output: what is finished is written down as it comes, so that a run cut short can go on. */
import fs from 'node:fs';
import path from 'node:path';
import { headerLine, readFinished, readHeader, type Fingerprint } from '../../backlog/journal.ts';
import { writeHandle } from '../files.ts';
import { writing } from '../system-error.ts';
import { digest } from './digest.ts';

/** Where a finished unit stands in the journal. */
interface Spot {
  readonly hash: string;
  readonly at: number;
  readonly length: number;
}

/** What was found in a journal from before. */
export interface Found {
  /** Lines that count. */
  readonly finished: number;
  /** Lines that do not: torn, or damaged. */
  readonly damaged: number;
  /** Parts of the fingerprint that were others in that run. */
  readonly others: readonly (keyof Fingerprint)[];
}

const SYNC_EVERY = 1000;

/** Name of the journal of an output. */
export const journalOf = (out: string): string => `${out}.unfinished`;

/** A journal opened for writing behind what stands in it. */
export class JournalFile {
  readonly found: Found;
  readonly #file: string;
  readonly #handle: number;
  readonly #print: Fingerprint;
  readonly #spots = new Map<string, Spot>();
  #synced = 0;
  #end: number;

  /** Makes the journal, or opens the one that is there; `resume` says which of the two is wanted. Throws the system's error. */
  constructor(file: string, print: Fingerprint, resume: boolean) {
    this.#file = file;
    this.#print = print;
    this.#handle = fs.openSync(file, resume ? 'a+' : 'ax+', 0o666);
    try {
      const { found, end, last } = this.#read();
      this.found = found;
      // A torn line is taken away, so that the next one starts on a line of its own.
      if (fs.fstatSync(this.#handle).size > end) fs.ftruncateSync(this.#handle, end);
      this.#end = end;
      if (last === undefined || !same(last, print)) this.#write(headerLine(print, digest));
      fs.fsyncSync(this.#handle);
      syncFolder(file);
    } catch (error) {
      fs.closeSync(this.#handle);
      throw error;
    }
  }

  /** Hash under which a unit was finished before. */
  hashOf(id: string): string | undefined {
    return this.#spots.get(id)?.hash;
  }

  /** Rows of a unit that was finished before. */
  bodyOf(id: string): string | undefined {
    const spot = this.#spots.get(id);
    if (spot === undefined) return undefined;
    const bytes = Buffer.allocUnsafe(spot.length);
    fs.readSync(this.#handle, bytes, 0, spot.length, spot.at);
    return readFinished(bytes.toString('utf8'), this.#print, digest)?.body;
  }

  /** What its lines go by. */
  get print(): Fingerprint {
    return this.#print;
  }

  /**
   * Writes down what is finished, as lines that go by this print. After a write that fails the journal is as it was before.
   * Errors: the disk takes no more.
   */
  add(lines: readonly string[]): void {
    if (lines.length === 0) return;
    writing(path.basename(this.#file), () => {
      this.#write(lines.join(''));
    });
  }

  /** Once a second onto the disk, in case the power fails. */
  syncNowAndThen(now: number): void {
    if (now - this.#synced < SYNC_EVERY) return;
    this.sync();
    this.#synced = now;
  }

  /** Onto the disk. Errors: the disk says no. */
  sync(): void {
    writing(path.basename(this.#file), () => {
      fs.fsyncSync(this.#handle);
    });
  }

  /** Lets go of it; it stays for the next run. */
  close(): void {
    fs.closeSync(this.#handle);
  }

  /** The output is in place: nothing is left to go on with. */
  remove(): void {
    syncFolder(this.#file);
    fs.rmSync(this.#file, { force: true });
  }

  /** The same when there was nothing to read: only what an earlier run has finished must stay. */
  removeIfNew(): void {
    const { finished, damaged, others } = this.found;
    if (finished + damaged + others.length === 0) this.remove();
  }

  #write(text: string): void {
    const bytes = Buffer.byteLength(text);
    try {
      writeHandle(this.#handle, text);
      this.#end += bytes;
    } catch (error) {
      fs.ftruncateSync(this.#handle, this.#end);
      throw error;
    }
  }

  /** Goes through the whole journal and remembers where everything stands that counts. */
  #read(): { found: Found; end: number; last: Fingerprint | undefined } {
    const strangers: Fingerprint[] = [];
    let last: Fingerprint | undefined;
    let end = 0;
    let [finished, damaged] = [0, 0];
    for (const { at, bytes } of linesOf(this.#handle)) {
      end = at + bytes.length + 1;
      const line = bytes.toString('utf8');
      const entry = readFinished(line, this.#print, digest);
      const header = entry === undefined ? readHeader(line, digest) : undefined;
      if (entry !== undefined) {
        finished += 1;
        this.#spots.set(entry.id, { hash: entry.hash, at, length: bytes.length });
      } else if (header !== undefined) {
        last = header;
        if (!same(header, this.#print)) strangers.push(header);
      } else if (strangers.every((other) => readFinished(line, other, digest) === undefined)) damaged += 1;
    }
    const others = (['program', 'shop'] as const).filter((key) =>
      strangers.some((header) => header[key] !== this.#print[key]),
    );
    return { found: { finished, damaged, others }, end, last };
  }
}

const same = (a: Fingerprint, b: Fingerprint): boolean => a.program === b.program && a.shop === b.shop;

/** A file is in place for good only when its folder is on the disk too. */
export function syncFolder(file: string): void {
  try {
    const folder = fs.openSync(path.dirname(file), 'r');
    fs.fsyncSync(folder);
    fs.closeSync(folder);
  } catch {
    // Not every system lets a folder be opened.
  }
}

const PART = 1_048_576;

/** Whole lines of a file, without their ends, and where each starts; what comes after the last end is none. */
function* linesOf(handle: number): Generator<{ at: number; bytes: Buffer }> {
  let rest: Buffer = Buffer.alloc(0);
  let start = 0;
  for (;;) {
    const part = Buffer.allocUnsafe(PART);
    const read = fs.readSync(handle, part, 0, PART, start + rest.length);
    if (read === 0) return;
    rest = Buffer.concat([rest, part.subarray(0, read)]);
    let from = 0;
    for (let end = rest.indexOf(0x0a); end !== -1; end = rest.indexOf(0x0a, from)) {
      yield { at: start + from, bytes: rest.subarray(from, end) };
      from = end + 1;
    }
    start += from;
    rest = rest.subarray(from);
  }
}
