/** Splits a command line into words. */

/** Quotes are alike; nothing is expanded. */
export function wordsOf(line: string): string[] {
  const words: string[] = [];
  for (const [whole] of line.matchAll(/(?:[^\s'"]+|'[^']*'|"[^"]*")+/g)) {
    words.push(whole.replace(/'([^']*)'|"([^"]*)"/g, (_, one?: string, two?: string) => one ?? two ?? ''));
  }
  return words;
}
