/** The text of a file, cut into its documents, and where each of them starts. */
import { cut, type Chunk } from './documents.ts';
import { Lines } from './lines.ts';

export interface Source {
  text: string;
  file: string;
  lines: Lines;
  /** Documents, in order. */
  chunks: readonly Chunk[];
}

/**
 * Text of a file as it was read, or of a part of it.
 * @param before lines of the file that stand before that part
 */
export function sourceOf(raw: string, file: string, before = 0): Source {
  // A byte order mark belongs to the encoding; files glued together have them in the middle too.
  const text = raw.replace(/^\ufeff/gm, '');
  return { text, file, lines: new Lines(text, before), chunks: cut(text) };
}

/** Offset in the file of the first contents of a document. */
export function startOf(chunk: Chunk): number {
  const match = /^(?!---|[ \t]*(?:#|%|\r?$))[ \t]*/m.exec(chunk.text);
  return chunk.base + (match === null ? 0 : match.index + match[0].length);
}
