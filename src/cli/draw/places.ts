/** Where pictures go: one to a file, many into a folder, each named after its order. */
import path from 'node:path';
import { CliFault, printable } from '../fault.ts';
import type { CliIo } from '../io.ts';
import type { DrawOptions } from './asked.ts';

/** Refuses what does not go together before anything is read. */
export function guardAsked(options: DrawOptions, io: CliIo): void {
  const { spec, wants, current, out, outDir } = options;
  const parts = [options.style, options.strands, options.buckle, options.length];
  const named = parts.some((part) => part !== undefined);
  if (spec !== undefined && (named || wants === true || current === true))
    throw new CliFault('--spec names one spec already: leave out the other cinches');
  if (named && (wants === true || current === true))
    throw new CliFault('a cinch named here is drawn beside the best one: leave out --wants and --current');
  if (out !== undefined && outDir !== undefined) throw new CliFault('name --out or --out-dir, not both');
  if (outDir === undefined) return;
  if (outDir === '') throw new CliFault('--out-dir needs the name of a folder');
  if (io.standsAt(outDir) !== 'directory')
    throw new CliFault(`there is no folder ${printable(outDir)}`, { hint: 'Make it first.' });
}

/** One file takes one picture. */
export function guardCount(orders: number, { outDir }: DrawOptions): void {
  if (orders < 2 || outDir !== undefined) return;
  throw new CliFault(`a file holds one picture, and there are ${String(orders)} orders`, {
    hint: 'Name a folder with --out-dir: each picture gets a file of its own there.',
  });
}

/** Names of the files, in the order of the pictures; undefined is standard output. Orders of one name are counted. */
export function placesFor(
  pictures: readonly { readonly order: string }[],
  { out, outDir, format }: Pick<DrawOptions, 'out' | 'outDir' | 'format'>,
): (string | undefined)[] {
  if (outDir === undefined) return pictures.map(() => out);
  const taken = new Set<string>();
  return pictures.map(({ order }) => {
    const stem = stemOf(order);
    let name = stem;
    for (let i = 2; taken.has(name); i++) name = `${stem}-${String(i)}`;
    taken.add(name);
    return path.join(outDir, `${name}.${format}`);
  });
}

const LONGEST = 60;

/** An order's name as that of a file on any system: small letters, digits and dashes. */
export function stemOf(order: string): string {
  const plain = order
    .normalize('NFKD')
    .toLowerCase()
    .replace(/[^a-z0-9]+/g, '-')
    .slice(0, LONGEST)
    .replace(/^-+|-+$/g, '');
  return `order-${plain === '' ? 'without-a-name' : plain}`;
}
