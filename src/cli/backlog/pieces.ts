/** Cuts a byte stream between orders. */
import { ENOUGH, isBlank, looksByLine } from '../by-line.ts';
import { mostLetters } from '../../yaml/refused.ts';

/** One order, or the start of a too long one. */
export interface Piece {
  readonly bytes: Buffer;
  /** Above it in the file. */
  readonly lines: number;
  readonly isWhole: boolean;
}

/** UTF-8 takes at most three per JavaScript character. */
const mostBytes = 3 * mostLetters;
/** Few orders are longer. */
const LONG = 65_536;
const NEWLINE = 0x0a;
const MARK = Buffer.from('\n---');

/**
 * The same however bytes arrive; at least one.
 * @param asked one order per line; undefined to find out
 */
export async function* piecesOf(
  parts: AsyncIterable<Buffer>,
  asked: boolean | undefined,
): AsyncGenerator<Piece> {
  const cutter = new Cutter();
  let byLine = asked;
  let some = false;
  for await (const part of withEnd(parts)) {
    const end = part === undefined;
    if (!cutter.add(part)) continue;
    byLine ??= looksSo(cutter.rest, end);
    if (byLine === undefined) continue;
    for (const piece of cutter.pieces(byLine, end)) {
      some = true;
      yield piece;
    }
  }
  if (!some) yield { bytes: Buffer.alloc(0), lines: 0, isWhole: true };
}

/** Holds at most one order and one chunk. */
class Cutter {
  rest: Buffer = Buffer.alloc(0);
  #parts: Buffer[] = [];
  #waiting = 0;
  #lines = 0;
  /** Drops the rest of a too long order. */
  #skipping = false;

  /** False while it collects chunks: each join copies the order. */
  add(part: Buffer | undefined): boolean {
    if (part !== undefined) this.#parts.push(Buffer.from(part));
    this.#waiting += part?.length ?? 0;
    if (part !== undefined && this.rest.length > LONG && this.#waiting < this.rest.length) return false;
    this.rest = Buffer.concat([this.rest, ...this.#parts]);
    this.#parts = [];
    this.#waiting = 0;
    return true;
  }

  /** Drops blank ones. */
  *pieces(byLine: boolean, end: boolean): Generator<Piece> {
    while (this.rest.length > 0) {
      const next = boundary(this.rest, byLine, end);
      if (this.#skipping) {
        this.#take(next === -1 ? Math.max(0, this.rest.length - MARK.length) : next);
        if (next === -1) return;
        this.#skipping = false;
        continue;
      }
      if (next === -1 && this.rest.length <= mostBytes) return;
      const isWhole = next !== -1 && next <= mostBytes;
      const lines = this.#lines;
      const bytes = this.#take(isWhole ? next : mostBytes + 1);
      this.#skipping = !isWhole;
      if (!isBlank(bytes.toString('latin1'))) yield { bytes, lines, isWhole };
    }
  }

  #take(size: number): Buffer {
    const bytes = this.rest.subarray(0, size);
    this.#lines += newlines(bytes);
    this.rest = this.rest.subarray(size);
    return bytes;
  }
}

/** Bytes before the next order; -1 when more is needed. */
function boundary(bytes: Buffer, byLine: boolean, end: boolean): number {
  for (let at = 0; ;) {
    const found = byLine ? bytes.indexOf(NEWLINE, at) : bytes.indexOf(MARK, at);
    if (found === -1) break;
    if (byLine) return found + 1;
    const after = bytes[found + MARK.length];
    if (after === undefined && !end) return -1;
    if (after === undefined || after === 0x20 || (after >= 0x09 && after <= 0x0d)) return found + 1;
    at = found + 1;
  }
  return end ? bytes.length : -1;
}

async function* withEnd(parts: AsyncIterable<Buffer>): AsyncGenerator<Buffer | undefined> {
  yield* parts;
  yield undefined;
}

const looksSo = (bytes: Buffer, end: boolean): boolean | undefined =>
  looksByLine(bytes.subarray(0, ENOUGH).toString('latin1'), !end && bytes.length < ENOUGH);

function newlines(bytes: Buffer): number {
  let count = 0;
  for (let at = bytes.indexOf(NEWLINE); at !== -1; at = bytes.indexOf(NEWLINE, at + 1)) count += 1;
  return count;
}
