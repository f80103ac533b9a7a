/** A plainly written document becomes its tree at once, by a faster reader of YAML; of any other nothing is said. */
import { FAILSAFE_SCHEMA, load } from 'js-yaml';
import { bottomlessAt } from './bottomless.ts';
import { isPlain } from './plain-lines.ts';
import type { Block, Tree } from './tree.ts';

/**
 * Text of one document -> the tree that load.ts makes of it, or undefined for whatever is faulty or unusual: no place is kept, and
 * a fault is told by the reader that keeps them.
 */
export function quickTree(raw: string): Tree | undefined {
  const text = raw.includes('\r') ? raw.replaceAll('\r\n', '\n') : raw;
  if (bottomlessAt(text) !== undefined || !isPlain(text)) return undefined;
  try {
    // Failsafe: every scalar stays text. Doubled keys are thrown out by the package.
    return settled(load(text, { schema: FAILSAFE_SCHEMA }));
  } catch {
    return undefined;
  }
}

/** Leaves trimmed, in place; undefined when one is left empty or says so. */
function settled(node: unknown): Tree | undefined {
  if (typeof node === 'string') {
    const text = node.trim();
    // In quotes they would be words: the other reader knows whether they were.
    return text === '' || /^(?:~|null)$/i.test(text) ? undefined : text;
  }
  if (typeof node !== 'object' || node === null) return undefined;
  return Array.isArray(node) ? settledList(node) : settledBlock(node as Record<string, unknown>);
}

function settledList(list: unknown[]): Tree | undefined {
  for (let at = 0; at < list.length; at += 1) {
    const tree = settled(list[at]);
    if (tree === undefined) return undefined;
    list[at] = tree;
  }
  return list as Tree[];
}

function settledBlock(block: Record<string, unknown>): Tree | undefined {
  for (const key of Object.keys(block)) {
    const tree = settled(block[key]);
    if (tree === undefined) return undefined;
    block[key] = tree;
  }
  return block as Block;
}
