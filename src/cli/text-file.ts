/** A file's bytes as text, or why not. */
import { isUtf8 } from 'node:buffer';

/** Orders take a few hundred bytes. */
export const mostBytes = 5_000_000;

export type TextRead = { ok: true; text: string } | { ok: false; why: string; line: number };

/** UTF-8. Errors: too large, not text, another encoding (with its first line). */
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

/** Moves back so no character is cut. */
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
