/** Bytes of a file become text, or a reason why they are none. */
import { isUtf8 } from 'node:buffer';

/** Order files are a few hundred bytes long; anything near this size is a mistake. */
export const mostBytes = 5_000_000;

export type TextRead = { ok: true; text: string } | { ok: false; why: string; line: number };

/** UTF-8 text of at most 5 MB. Errors: too large, not text at all, another encoding (with the line of the first wrong byte). */
export function textOf(bytes: Buffer): TextRead {
  if (bytes.length > mostBytes)
    return { ok: false, line: 1, why: 'it is too large: an order file has at most 5 MB' };
  if (isUtf16(bytes)) return { ok: false, line: 1, why: 'it is saved as UTF-16: save it as UTF-8' };
  const nul = bytes.indexOf(0);
  if (nul !== -1) return { ok: false, line: lineAt(bytes, nul), why: 'it is not a text file' };
  if (isUtf8(bytes)) return { ok: true, text: bytes.toString('utf8') };
  const at = firstWrong(bytes);
  const byte = (bytes[at] ?? 0).toString(16).padStart(2, '0');
  const line = lineAt(bytes, at);
  return {
    ok: false,
    line,
    why: `it is not UTF-8 text: byte ${String(at + 1)} of the file, on line ${String(line)}, is 0x${byte}; save it as UTF-8`,
  };
}

const isUtf16 = (bytes: Buffer): boolean =>
  (bytes[0] === 0xff && bytes[1] === 0xfe) || (bytes[0] === 0xfe && bytes[1] === 0xff);

function lineAt(bytes: Buffer, end: number): number {
  let line = 1;
  for (let i = 0; i < end; i++) if (bytes[i] === 0x0a) line++;
  return line;
}

/** Start of the first sequence that is not UTF-8: the longest good beginning, found by halving, ends there. */
function firstWrong(bytes: Buffer): number {
  let good = 0;
  let bad = bytes.length;
  while (bad - good > 1) {
    const middle = (good + bad) >> 1;
    if (isUtf8(bytes.subarray(0, wholeSigns(bytes, middle)))) good = middle;
    else bad = middle;
  }
  return wholeSigns(bytes, good);
}

/** `end`, moved back to before a sign that it would cut in two. */
function wholeSigns(bytes: Buffer, end: number): number {
  for (let back = 1; back <= 3 && back <= end; back++) {
    const byte = bytes[end - back] ?? 0;
    if (byte < 0x80) return end;
    if (byte < 0xc0) continue;
    const length = byte >= 0xf0 ? 4 : byte >= 0xe0 ? 3 : 2;
    return length > back ? end - back : end;
  }
  return end;
}
