/** Where the bytes of many orders may be cut, so that no order is cut in two and a slice reads as it would in the whole. */
import { isUtf8 } from 'node:buffer';
import { ENOUGH, isBlank, looksByLine } from '../by-line.ts';
import { mostBytes } from '../text-file.ts';

/** A stretch of a file, and how many lines stand before it. */
export interface Piece {
  readonly bytes: Buffer;
  readonly lines: number;
}

/** A slice is closed at the first chance after this many bytes: some forty orders. */
const SLICE = 16_384;
const NEWLINE = 0x0a;
const MARK = Buffer.from('\n---');

/** What is read as one text: every line where lines are orders, else all; documents apart when one of them is no text. */
export function piecesOf(bytes: Buffer, byLine = looksSo(bytes) ?? false): Piece[] {
  if (!byLine && isUtf8(bytes)) return [{ bytes, lines: 0 }];
  const pieces: Piece[] = [];
  let lines = 0;
  for (let from = 0; from < bytes.length || from === 0;) {
    const next = boundary(bytes.subarray(from), { least: 1, byLine, end: true });
    const piece = bytes.subarray(from, from + next);
    if (!saysNothing(piece)) pieces.push({ bytes: piece, lines });
    lines += newlines(piece);
    from += Math.max(next, 1);
  }
  return pieces.length === 0 ? [{ bytes, lines: 0 }] : pieces;
}

interface Cut {
  /** No boundary before this many bytes. */
  readonly least: number;
  readonly byLine: boolean;
  /** Nothing comes after these bytes. */
  readonly end: boolean;
}

/** Bytes up to the next order; all of them at the end, and -1 when more is needed to tell. */
function boundary(bytes: Buffer, { least, byLine, end }: Cut): number {
  for (let at = least - 1; at >= 0;) {
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

/** Slices of a stream, cut by its bytes alone, however they arrive. A stream without orders gives one empty slice. */
export async function* slicesOf(
  parts: AsyncIterable<Buffer>,
  asked: boolean | undefined,
): AsyncGenerator<Piece & { byLine: boolean }> {
  const slicer = new Slicer();
  let byLine = asked;
  let some = false;
  for await (const part of withEnd(parts)) {
    const end = part === undefined;
    slicer.add(part ?? Buffer.alloc(0), end);
    byLine ??= looksSo(slicer.rest, end);
    if (byLine === undefined) continue;
    for (const piece of slicer.pieces(byLine, end)) {
      some = true;
      yield { ...piece, byLine };
    }
  }
  if (!some) yield { bytes: Buffer.alloc(0), lines: 0, byLine: false };
}

/** Holds what has come and cannot be cut yet. */
class Slicer {
  rest: Buffer = Buffer.alloc(0);
  #parts: Buffer[] = [];
  #waiting = 0;
  #lines = 0;
  /** What belongs to an order that is too long has been reported with its start. */
  #skipping = false;

  /** Parts are joined when there are enough of them: joining each would copy a long order over and over. */
  add(part: Buffer, end: boolean): void {
    this.#parts.push(part);
    this.#waiting += part.length;
    if (!end && this.#waiting < Math.max(SLICE, this.rest.length)) return;
    this.rest = Buffer.concat([this.rest, ...this.#parts]);
    this.#parts = [];
    this.#waiting = 0;
  }

  /** What can be cut off, blank stretches left out. */
  *pieces(byLine: boolean, end: boolean): Generator<Piece> {
    for (let size = this.#next(byLine, end); size > 0; size = this.#next(byLine, end)) {
      const bytes = this.rest.subarray(0, size);
      if (!this.#skipping && !saysNothing(bytes)) yield { bytes, lines: this.#lines };
      this.#lines += newlines(bytes);
      this.#skipping = size > mostBytes;
      this.rest = this.rest.subarray(size);
    }
  }

  /** Bytes of the next slice; one byte too many of an order that is too long; 0 when more has to come. */
  #next(byLine: boolean, end: boolean): number {
    const cut = (least: number): number => boundary(this.rest, { least, byLine, end });
    const next = cut(this.#skipping ? 1 : SLICE);
    const size = next === -1 ? this.rest.length : next;
    if (size <= mostBytes) return Math.max(0, next);
    const first = cut(1);
    return first === -1 || first > mostBytes ? mostBytes + 1 : first;
  }
}

async function* withEnd(parts: AsyncIterable<Buffer>): AsyncGenerator<Buffer | undefined> {
  yield* parts;
  yield undefined;
}

const looksSo = (bytes: Buffer, end = true): boolean | undefined =>
  looksByLine(bytes.subarray(0, ENOUGH).toString('latin1'), !end && bytes.length < ENOUGH);

const saysNothing = (bytes: Buffer): boolean => isBlank(bytes.toString('latin1'));

function newlines(bytes: Buffer): number {
  let count = 0;
  for (let at = bytes.indexOf(NEWLINE); at !== -1; at = bytes.indexOf(NEWLINE, at + 1)) count += 1;
  return count;
}
