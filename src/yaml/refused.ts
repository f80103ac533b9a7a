/** Texts that are not even handed to the YAML package: so deep, so long or so full that reading them would cost more than any order does. */

/** Orders are four levels deep; the bound keeps a hostile file from exhausting the stack. */
export const deepest = 24;

/** So many brackets or dashes in one another, even if some stand in quotes, are no order; the package's stack is not to be tried. */
const mostBrackets = 200;

/** Letters of a document, as JavaScript counts them. An order has a few thousand. */
export const mostLetters = 400_000;

/** Line ends, commas and brackets of a document, wherever they stand: time and memory of the package go by them. */
export const mostMarks = 30_000;

export const tooDeep = `at most ${String(deepest)} levels of lists and blocks`;
const tooLong = `at most ${String(mostLetters)} characters in a document`;
const tooFull = `at most ${String(mostMarks)} line ends, commas and brackets in a document`;

/** Why a document is not read, and where it passes the bound; undefined when it may be read. */
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

/** Where brackets that go far too deep pass the bound of levels, or where dashes that do begin. */
function deepAt(text: string): number | undefined {
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
