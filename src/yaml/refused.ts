/** Refuses text too deep, long or full to parse safely. */

/** Protects the stack; orders need four. */
export const deepest = 24;

/** No order has this many, even quoted. */
const mostBrackets = 200;

/** JavaScript characters; an order has a few thousand. */
export const mostLetters = 400_000;

/** The YAML package's time and memory grow with these. */
export const mostMarks = 30_000;

export const tooDeep = `at most ${String(deepest)} levels of lists and blocks`;
const tooLong = `at most ${String(mostLetters)} characters in a document`;
const tooFull = `at most ${String(mostMarks)} line ends, commas and brackets in a document`;

/** Why and where; undefined when it may be read. */
export function refused(text: string): { path: ''; expected: string; offset: number } | undefined {
  if (text.length > mostLetters) return { path: '', expected: tooLong, offset: mostLetters };
  const full = fullAt(text);
  if (full !== undefined) return { path: '', expected: tooFull, offset: full };
  const deep = deepAt(text);
  return deep === undefined ? undefined : { path: '', expected: tooDeep, offset: deep };
}

function fullAt(text: string): number | undefined {
  let count = 0;
  for (const { index } of text.matchAll(/[\n,[\]{}]/g)) {
    count += 1;
    if (count > mostMarks) return index;
  }
  return undefined;
}

function deepAt(text: string): number | undefined {
  let depth = 0;
  let passed = 0;
  // Skip comments.
  for (const { 0: sign, index } of text.matchAll(/(?<!\S)#.*|[[\]{}]/g)) {
    if (sign.startsWith('#')) continue;
    depth = Math.max(0, depth + (sign === '[' || sign === '{' ? 1 : -1));
    if (depth === deepest + 1) passed = index;
    if (depth > mostBrackets) return passed;
  }
  const run = new RegExp(`(?:[-?] +){${String(mostBrackets)}}`).exec(text);
  return run === null ? undefined : run.index;
}
