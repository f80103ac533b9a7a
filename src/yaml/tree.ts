/** A parsed document as plain lists, blocks and text, with places. */

export interface Block {
  [key: string]: Tree;
}
/** Leaves stay text as written: 15.10, 7/8, 012, yes. */
export type Tree = string | Tree[] | Block;

/** Offsets in the file. */
export interface Spot {
  key: number;
  value: number;
}

/** Whether it is a block of keys, neither a list nor a text. */
export function isBlock(tree: Tree | undefined): tree is Block {
  return typeof tree === 'object' && !Array.isArray(tree);
}

/** What stands at a path of keys and list places, if anything does. */
export function treeAt(tree: Tree | undefined, path: readonly PropertyKey[]): Tree | undefined {
  let here = tree;
  for (const step of path) {
    if (Array.isArray(here) && typeof step === 'number') here = here[step];
    else if (isBlock(here) && typeof step === 'string' && Object.hasOwn(here, step)) here = here[step];
    else return undefined;
  }
  return here;
}

/** The text itself, or what kind of thing it is. */
export function describe(tree: Tree | undefined): string | undefined {
  if (tree === undefined || typeof tree === 'string') return tree;
  return Array.isArray(tree) ? 'a list' : 'a block of keys';
}
