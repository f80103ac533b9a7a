/** An empty order to fill in, optional lines commented out. */
import type { Key, Keys } from './key.ts';
import { orderKeys } from './order-schema.ts';

const head = `## An order for one cinch. Fill in the open lines; on any other line you can answer, delete the one "#"
## at the start and write your answer over the example. Lengths take a unit: in, cm, mm, ft.
## Hands are written 15.1 hh (the digit after the point counts inches, 0 to 3).

`;

/** Every line must stay right when its "#" is removed. */
export const blankOrder = (): string => head + linesOf(orderKeys, '');

const linesOf = (keys: Keys, indent: string): string =>
  Object.entries(keys)
    .map(([name, key]) => (key.above ?? '') + lineOf(indent + name, key))
    .join('');

function lineOf(name: string, key: Key): string {
  if (key.open !== undefined) return `${name}: # ${key.open}\n`;
  const { keys, note } = key;
  // A block with a needed key takes several lines.
  const isOpen = Object.values(keys ?? {}).some(({ open }) => open !== undefined);
  if (keys !== undefined && isOpen) return `${name}:\n${linesOf(keys, '  ')}`;
  return `#${name}: ${exampleOf(key) ?? ''}${note === undefined ? '' : ` # ${note}`}\n`;
}

function exampleOf({ example, keys }: Key): string | undefined {
  if (example !== undefined || keys === undefined) return example;
  const pairs = Object.entries(keys).map(([name, key]) => [name, exampleOf(key)] as const);
  const shown = pairs.flatMap(([name, text]) => (text === undefined ? [] : [`${name}: ${text}`]));
  return `{ ${shown.join(', ')} }`;
}
