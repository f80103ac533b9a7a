/** Cuts a file into its YAML documents, so that one that cannot be read spoils no other. */

export interface Chunk {
  /** From 1, as they stand in the file. */
  number: number;
  text: string;
  /** Where the chunk starts in the file. */
  base: number;
}

/**
 * YAML forbids a line starting "---" or "..." inside any value, quoted or not, so cutting there is always right, and it keeps a
 * missing quote from swallowing the next order. Chunks of nothing but blanks, comments and directives are left out.
 */
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

/** Whether some line of it is neither blank nor a comment nor a directive. */
const tells = (chunk: string): boolean => /(?:^|\n)[^\S\n]*[^\s#%]/.test(chunk.replace(/^---/, ''));
