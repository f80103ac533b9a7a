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
  const marks = [...text.matchAll(/^(?:---|\.\.\.)(?=\s|$)/gm)].map((mark) => mark.index);
  const starts = [0, ...marks];
  return starts
    .map((start, index) => withoutEndMark(text.slice(start, starts[index + 1]), start))
    .filter((chunk) => !isBlank(chunk.text))
    .map((chunk, index) => ({ ...chunk, number: index + 1 }));
}

function withoutEndMark(text: string, base: number): { text: string; base: number } {
  return text.startsWith('...') ? { text: text.slice(3), base: base + 3 } : { text, base };
}

function isBlank(text: string): boolean {
  return text
    .replace(/^---/, '')
    .split('\n')
    .every((line) => /^\s*(#|%|$)/.test(line));
}
