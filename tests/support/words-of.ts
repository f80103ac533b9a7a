/** Splits a command line of a test case into its words, as a shell would: spaces part, quotes keep together. */

/** Words of one line; single and double quotes are alike, and nothing is expanded. */
export function wordsOf(line: string): string[] {
  const words: string[] = [];
  for (const [whole] of line.matchAll(/(?:[^\s'"]+|'[^']*'|"[^"]*")+/g)) {
    words.push(whole.replace(/'([^']*)'|"([^"]*)"/g, (_, one?: string, two?: string) => one ?? two ?? ''));
  }
  return words;
}
