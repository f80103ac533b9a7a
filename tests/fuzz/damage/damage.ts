/** Damages a file's values, writing or bytes. */
import type { Random } from '../../../src/math/random.ts';
import { happens, pick, whole } from '../../support/draw.ts';
import { mutate } from '../../support/mutate-orders.ts';
import { changed, documentsOf, type Lexicon } from './tree.ts';
import { written } from './write.ts';

/** Longer ones only take time. */
const longest = 20_000;

export function damaged(parents: readonly Buffer[], chance: Random, lexicon: Lexicon): Buffer {
  const parent = pick(chance, parents);
  if (happens(chance, 0.45)) {
    const other = pick(chance, parents);
    return mutate([parent.toString('utf8'), other.toString('utf8')], chance).subarray(0, longest);
  }
  const documents = documentsOf(parent.toString('utf8')).slice(0, 4);
  if (documents.length === 0) return mutate([parent.toString('utf8')], chance).subarray(0, longest);
  if (happens(chance, 0.2))
    documents.push(...documentsOf(pick(chance, parents).toString('utf8')).slice(0, 2));
  const which = whole(chance, 0, documents.length - 1);
  const said = documents.map((each, i) => (i === which ? changed(each, chance, lexicon) : each));
  return Buffer.from(written(said, chance)).subarray(0, longest);
}

export function damagedBytes(bytes: Buffer, chance: Random): Buffer {
  const at = whole(chance, 0, Math.max(0, bytes.length - 1));
  const to = Math.min(bytes.length, at + whole(chance, 1, 12));
  const copy = Buffer.from(bytes);
  switch (whole(chance, 0, 5)) {
    case 0:
      if (copy.length > 0) copy[at] = (copy[at] ?? 0) ^ (1 << whole(chance, 0, 7));
      return copy;
    case 1:
      if (copy.length > 0)
        copy[at] = pick(chance, [0, 1, 0x7f, 0x80, 0xff, 0x0a, 0x22, 0xd8, 0xd9, 0xda, 0xe1]);
      return copy;
    case 2:
      return copy.subarray(0, at);
    case 3:
      return Buffer.concat([copy.subarray(0, at), copy.subarray(to)]);
    case 4:
      return Buffer.concat([copy.subarray(0, to), copy.subarray(at)]);
    default:
      return Buffer.concat([
        copy.subarray(0, at),
        Buffer.alloc(whole(chance, 1, 9), 0xff),
        copy.subarray(at),
      ]);
  }
}
