/** Texts that go so deep that they are not even handed to the YAML package. */

/** Orders are four levels deep; the bound keeps a hostile file from exhausting the stack. */
export const deepest = 24;

/** So many brackets or dashes in one another, even if some stand in quotes, are no order; the package's stack is not to be tried. */
export const mostBrackets = 200;

/** Where brackets that go far too deep pass the bound of levels, or where dashes that do begin. */
export function bottomlessAt(text: string): number | undefined {
  let depth = 0;
  let passed = 0;
  // What follows "#" after a blank is a comment: it is matched as a whole and does not count.
  for (const { 0: sign, index } of text.matchAll(/(?<!\S)#.*|[[\]{}]/g)) {
    if (sign.startsWith('#')) continue;
    depth = Math.max(0, depth + (sign === '[' || sign === '{' ? 1 : -1));
    if (depth === deepest + 1) passed = index;
    if (depth > mostBrackets) return passed;
  }
  const run = new RegExp(`(?:[-?] +){${String(mostBrackets)}}`).exec(text);
  return run === null ? undefined : run.index;
}
