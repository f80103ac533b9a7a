/** Splits a test's command line into words. */

/** Single and double quotes are alike; nothing is expanded. */
export function wordsOf(line: string): string[] {
  const words: string[] = [];
  for (const [whole] of line.matchAll(/(?:[^\s'"]+|'[^']*'|"[^"]*")+/g)) {
    words.push(whole.replace(/'([^']*)'|"([^"]*)"/g, (_, one?: string, two?: string) => one ?? two ?? ''));
  }
  return words;
}
