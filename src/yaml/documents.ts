/** Cuts a file into documents, so a broken one spoils no other. */

export interface Chunk {
  /** From 1. */
  number: number;
  text: string;
  /** Offset in the file. */
  base: number;
}

/** Safe, since YAML allows no line starting "---" or "..." inside a value. Drops empty documents. */
export function cut(text: string): Chunk[] {
  const chunks: Chunk[] = [];
  const add = (start: number, end: number): void => {
    const base = text.startsWith('...', start) ? start + 3 : start;
    const chunk = text.slice(base, end);
    if (tells(chunk)) chunks.push({ number: chunks.length + 1, text: chunk, base });
  };
  let start = 0;
  for (const { index } of text.matchAll(/^(?:---|\.\.\.)(?=\s|$)/gm)) {
    add(start, index);
    start = index;
  }
  add(start, text.length);
  return chunks;
}

const tells = (chunk: string): boolean => /(?:^|\n)[^\S\n]*[^\s#%]/.test(chunk.replace(/^---/, ''));
