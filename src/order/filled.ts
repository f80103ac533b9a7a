/** Writes a spoken order as a file: the blank order, answered. */
import { blankOrder } from './blank.ts';
import { treeAt, type Block, type Tree } from '../yaml/tree.ts';

/** Reads back as the same order once complete. */
export function filledOrder(tree: Block): string {
  let block: string | undefined;
  const hasGirth = treeAt(tree, ['horse', 'heart-girth']) !== undefined;
  return blankOrder()
    .split('\n')
    .map((line) => {
      const [, indent, key, rest = ''] = /^#?( *)([a-z-]+):(.*)$/.exec(line) ?? [];
      if (key === undefined || indent === undefined) return line;
      if (indent === '' && rest === '') {
        block = key;
        return line;
      }
      const value = treeAt(tree, indent === '' || block === undefined ? [key] : [block, key]);
      // Height or girth is enough; other needed keys stay open.
      if (value === undefined) return key === 'height' && hasGirth ? `#${line}` : line;
      const comment = / #.*$/.exec(rest)?.[0] ?? '';
      return `${indent}${key}: ${written(value)}${comment}`;
    })
    .join('\n');
}

function written(value: Tree): string {
  if (typeof value === 'string') return isPlain(value) ? value : JSON.stringify(value);
  if (Array.isArray(value)) return `[${value.map(written).join(', ')}]`;
  const pairs = Object.entries(value).map(([key, each]) => `${key}: ${written(each)}`);
  return `{ ${pairs.join(', ')} }`;
}

/** YAML can take it for nothing but text. */
const isPlain = (text: string): boolean =>
  /^[A-Za-z0-9](?:[A-Za-z0-9 ./-]*[A-Za-z0-9/.])?$/.test(text) && !/^null$/i.test(text);
