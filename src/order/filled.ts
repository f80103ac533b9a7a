/** A said order as a file: the blank order with the answers filled in and everything else as it stands there. */
import { blankOrder } from './blank.ts';
import { treeAt, type Block, type Tree } from '../yaml/tree.ts';

/** Text of an order file that is read back as the same order, once it says what is needed. */
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
      // Of height and girth one is enough; whatever else is needed stays open until somebody fills it in.
      if (value === undefined) return key === 'height' && hasGirth ? `#${line}` : line;
      const comment = / #.*$/.exec(rest)?.[0] ?? '';
      return `${indent}${key}: ${written(value)}${comment}`;
    })
    .join('\n');
}

/** A value on one line. */
function written(value: Tree): string {
  if (typeof value === 'string') return isPlain(value) ? value : JSON.stringify(value);
  if (Array.isArray(value)) return `[${value.map(written).join(', ')}]`;
  const pairs = Object.entries(value).map(([key, each]) => `${key}: ${written(each)}`);
  return `{ ${pairs.join(', ')} }`;
}

/** Letters, digits and few signs between: nothing that YAML could take for something else. */
const isPlain = (text: string): boolean =>
  /^[A-Za-z0-9](?:[A-Za-z0-9 ./-]*[A-Za-z0-9/.])?$/.test(text) && !/^null$/i.test(text);
