/** A file's text, cut into documents with places. */
import { cut, type Chunk } from './documents.ts';
import { Lines } from './lines.ts';

export interface Source {
  text: string;
  file: string;
  lines: Lines;
  chunks: readonly Chunk[];
}

/** @param before lines above this part */
export function sourceOf(raw: string, file: string, before = 0): Source {
  // Byte order marks; joined files have several.
  const text = raw.replace(/^\ufeff/gm, '');
  return { text, file, lines: new Lines(text, before), chunks: cut(text) };
}

/** Offset of the first contents. */
export function startOf(chunk: Chunk): number {
  const match = /^(?!---|[ \t]*(?:#|%|\r?$))[ \t]*/m.exec(chunk.text);
  return chunk.base + (match === null ? 0 : match.index + match[0].length);
}
