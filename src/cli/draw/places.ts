/** Where pictures go: one to a file, many to a folder. */
import path from 'node:path';
import { CliFault } from '../fault.ts';
import type { CliIo } from '../io.ts';
import { writing } from '../system-error.ts';
import type { DrawOptions } from './asked.ts';

/** SVG and PNG hold one. */
const holdsMany = ({ format }: Pick<DrawOptions, 'format'>): boolean => format === 'html' || format === 'pdf';

/** Errors: several orders for one picture. */
export function guardCount(orders: number, options: Pick<DrawOptions, 'format' | 'outDir'>): void {
  if (orders < 2 || options.outDir !== undefined || holdsMany(options)) return;
  const kind = options.format.toUpperCase();
  throw new CliFault(`a file of ${kind} holds one picture; there are ${String(orders)} orders`, {
    hint: 'Use --out-dir FOLDER: each picture gets its own file.',
  });
}

/** Without a place, standard output. */
export interface Output<P> {
  readonly place: string | undefined;
  readonly pictures: readonly P[];
}

/** Numbers repeated names. */
export function outputsFor<P extends { readonly order: string }>(
  pictures: readonly P[],
  options: Pick<DrawOptions, 'out' | 'outDir' | 'format'>,
): Output<P>[] {
  const { out, outDir } = options;
  if (pictures.length === 0) return [];
  if (outDir === undefined) return [{ place: out, pictures }];
  const taken = new Set<string>();
  return pictures.map((picture) => {
    const stem = stemOf(picture.order);
    let name = stem;
    for (let i = 2; taken.has(name); i++) name = `${stem}-${String(i)}`;
    taken.add(name);
    return { place: path.join(outDir, `${name}.${options.format}`), pictures: [picture] };
  });
}

/** Throws the system's error, in words. */
export function makePlace({ outDir }: Pick<DrawOptions, 'outDir'>, io: CliIo): void {
  if (outDir === undefined || io.standsAt(outDir) === 'directory') return;
  writing(outDir, () => {
    io.makeFolder(outDir);
  });
}

const LONGEST = 60;

/** Lower case, digits, dashes. */
function stemOf(order: string): string {
  const plain = order
    .normalize('NFKD')
    .toLowerCase()
    .replace(/[^a-z0-9]+/g, '-')
    .slice(0, LONGEST)
    .replace(/^-+|-+$/g, '');
  return `order-${plain === '' ? 'without-a-name' : plain}`;
}
