/** A parsed document as plain lists, blocks and texts, with the place of everything in it. */

export interface Block {
  [key: string]: Tree;
}
/** Every leaf is the text as it was written: 15.10, 7/8, 012 and yes are never turned into something else. */
export type Tree = string | Tree[] | Block;

/** Offsets in the file of a key and of its value. */
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

/** How a message calls what it found: the text itself, or the kind of thing. */
export function describe(tree: Tree | undefined): string | undefined {
  if (tree === undefined || typeof tree === 'string') return tree;
  return Array.isArray(tree) ? 'a list' : 'a block of keys';
}
