/** A parsed document: lists, blocks, text and their places. */

export interface Block {
  [key: string]: Tree;
}
/** Text stays as written: 15.10, 7/8, 012, yes. */
export type Tree = string | Tree[] | Block;

/** Offsets in the file. */
export interface Spot {
  key: number;
  value: number;
}

/** Not a list or text. */
export function isBlock(tree: Tree | undefined): tree is Block {
  return typeof tree === 'object' && !Array.isArray(tree);
}

/** The value at a path, if any. */
export function treeAt(tree: Tree | undefined, path: readonly PropertyKey[]): Tree | undefined {
  let here = tree;
  for (const step of path) {
    if (Array.isArray(here) && typeof step === 'number') here = here[step];
    else if (isBlock(here) && typeof step === 'string' && Object.hasOwn(here, step)) here = here[step];
    else return undefined;
  }
  return here;
}

/** The text itself, or its kind. */
export function describe(tree: Tree | undefined): string | undefined {
  if (tree === undefined || typeof tree === 'string') return tree;
  return Array.isArray(tree) ? 'a list' : 'a block of keys';
}
