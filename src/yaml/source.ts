/** The text of a file, cut into documents with their places. */
import { cut, type Chunk } from './documents.ts';
import { Lines } from './lines.ts';

export interface Source {
  text: string;
  file: string;
  lines: Lines;
  chunks: readonly Chunk[];
}

/** @param before lines of the file before this part */
export function sourceOf(raw: string, file: string, before = 0): Source {
  // Byte order marks; joined files have them in the middle too.
  const text = raw.replace(/^\ufeff/gm, '');
  return { text, file, lines: new Lines(text, before), chunks: cut(text) };
}

/** Offset of the first contents. */
export function startOf(chunk: Chunk): number {
  const match = /^(?!---|[ \t]*(?:#|%|\r?$))[ \t]*/m.exec(chunk.text);
  return chunk.base + (match === null ? 0 : match.index + match[0].length);
}
