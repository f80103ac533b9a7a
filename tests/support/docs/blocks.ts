/** Fills `<!-- made: NAME -->` to `<!-- end -->` in hand-written pages. */
import { howToTakePhoto } from '../../../src/words/ask-words.ts';
import { csvColumns, nameList } from './columns.ts';
import { jsonKeys } from './json-keys.ts';
import { limits } from './limits.ts';
import { packages } from './packages.ts';
import { roomLines } from './rooms.ts';

const blocks: Readonly<Record<string, () => string | Promise<string>>> = {
  'csv columns': csvColumns,
  'how to take a photo': () => howToTakePhoto.map((step, i) => `${String(i + 1)}. ${step}`).join('\n'),
  'json keys': jsonKeys,
  limits,
  names: nameList,
  packages,
  rooms: roomLines,
};

const block = /(<!-- made: ([\w ]+) -->\n)[^]*?(<!-- end -->)/g;

/** @throws when there is no block, or an unknown one */
export async function filled(page: string): Promise<string> {
  const made = new Map<string, string>();
  for (const [, , name = ''] of page.matchAll(block)) {
    const make = blocks[name];
    if (make === undefined) throw new Error(`nothing makes a block "${name}"`);
    made.set(name, await make());
  }
  if (made.size === 0) throw new Error('no block to fill');
  const parts = page.split(block);
  // Every fourth part is text between blocks; then a start, its name and an end.
  return parts.map((part, i) => (i % 4 === 2 ? `\n${made.get(part) ?? ''}\n\n` : part)).join('');
}
