/** `photo`: what each side photo measures and what that gains. */
import type { Command } from 'commander';
import type { Shop } from '../../order/types.ts';
import type { PhotoResult } from '../../words/types.ts';
import { guardInputs, tellNotWritten } from '../emit.ts';
import type { Paper } from '../../pages/pdf/document.ts';
import { CliFault, exit, printable, worse, type ExitCode } from '../fault.ts';
import { failed, namesOf, readEntries, type Entry } from '../input.ts';
import type { CliIo } from '../io.ts';
import { formatOption, outOption, paperOption, shopOption, unitsOption } from '../options.ts';
import { tellFaults } from '../problems.ts';
import { guardPdf } from '../pdf.ts';
import { printViews, type Format, type Views } from '../print.ts';
import type { Session } from '../program.ts';
import { colorFor } from '../screen.ts';
import { tellWithout } from '../photo/without.ts';
import { shopOf } from '../shop.ts';

interface PhotoOptions {
  pick?: string;
  photosFrom?: string;
  format: Format;
  units: 'in' | 'cm';
  shop?: string;
  out?: string;
  paper?: Paper;
  color: boolean;
}

const examples = `
The marks in the order are enough; the picture, if it is there, is checked
against them. --pick writes a page to click the marks on. A photo never gives
the length: tape ring to ring. How to take one: docs/photo.md.

  cinchwright photo --pick juniper-side.jpg
  cinchwright photo order.yaml`;

/** Adds the command. */
export function addPhoto(program: Command, session: Session): void {
  program
    .command('photo')
    .summary('measure from a side photo')
    .description('Measures from the side photo of each order: each length, how sure, what it gains.')
    .argument('[files...]', 'order files')
    .option('--pick <picture>', 'write a page to click the marks on')
    .option('--photos-from <folder>', 'look for the pictures in this folder')
    .addOption(formatOption())
    .addOption(paperOption())
    .addOption(unitsOption())
    .addOption(shopOption())
    .addOption(outOption())
    .addHelpText('after', examples)
    .action(async (files: string[], _: unknown, command: Command) => {
      const options = command.optsWithGlobals<PhotoOptions>();
      if (options.pick === undefined) session.code = await photo(files, options, session.io);
      else {
        const { pickTo } = await import('../photo/pick.ts');
        session.code = await pickTo({ image: options.pick, out: options.out, files }, session.io);
      }
    });
}

interface Named {
  readonly name: string;
  readonly entry: Entry;
}

async function photo(files: readonly string[], options: PhotoOptions, io: CliIo): Promise<ExitCode> {
  const names = namesOf(files, io, 'photo');
  guardPdf(options, io);
  guardInputs(options.out, [...names, options.shop], io);
  guardFolder(options.photosFrom, io);
  const errorColor = colorFor(io, options.color, 'stderr');
  const shop = await shopOf(options.shop, io, errorColor);
  const read = await namedEntries(names, io);
  const { looked, results } = await readPhotos(read, { options, io, shop });
  const without = read.flatMap(({ entry }) =>
    entry.ok && entry.order.photo === undefined ? [entry.order.order] : [],
  );
  const shown = results.some(({ ok }) => ok);
  const printed = options.format === 'table' ? shown : results.length > 0;
  if (printed) await printViews(viewsOf(results, options), options, io);
  const told = await tellFaults(looked, io, errorColor);
  if (!printed) tellNotWritten(options.out, io);
  if (without.length > 0) tellWithout(without, { ...lack, useful: results.length > 0 }, io);
  const nothing = results.some((result) => result.ok && result.worth.first === undefined);
  return worse(told, nothing ? exit.noSpec : exit.good);
}

function guardFolder(folder: string | undefined, io: CliIo): void {
  if (folder === undefined || io.standsAt(folder) === 'directory') return;
  throw new CliFault(`--photos-from takes a folder, and "${printable(folder)}" is not one`);
}

/** Pictures lie next to the file. */
async function namedEntries(names: readonly string[], io: CliIo): Promise<Named[]> {
  const entries = await readEntries(names, io);
  return entries.map((entry) => ({ entry, name: names.includes(entry.file) ? entry.file : '-' }));
}

interface Work {
  readonly options: PhotoOptions;
  readonly io: CliIo;
  readonly shop: Shop;
}

async function readPhotos(
  read: readonly Named[],
  { options, io, shop }: Work,
): Promise<{ looked: Entry[]; results: PhotoResult[] }> {
  const { sizeOrder } = await import('../../index.ts');
  const { photoWorth } = await import('../../advice/photo-worth.ts');
  const { surerPhoto } = await import('../../horse/photo-surer.ts');
  const { lookAtPicture } = await import('../photo/look.ts');
  const looked: Entry[] = [];
  const results: PhotoResult[] = [];
  for (const { name, entry } of read) {
    if (!entry.ok) {
      looked.push(entry);
      results.push(failed(entry));
      continue;
    }
    const { order, file, line } = entry;
    if (order.photo === undefined) continue;
    const seen = await lookAtPicture(entry, order.photo, { name, from: options.photosFrom, io });
    if (!seen.ok) {
      const fault: Entry & { ok: false } = {
        ok: false,
        file,
        line,
        order: order.order,
        problems: [seen.problem],
      };
      looked.push(fault);
      results.push(failed(fault));
      continue;
    }
    guardInputs(options.out, [seen.path], io);
    const advice = sizeOrder(order, shop);
    const { photo } = advice.facts;
    if (photo === undefined) continue;
    const worth = photoWorth(advice, sizeOrder({ ...order, photo: undefined }, shop));
    const { picture } = seen;
    results.push({ ok: true, file, advice, photo, picture, worth, surer: surerPhoto(advice.facts) });
  }
  return { looked, results };
}

const lack = {
  nothing: 'nothing to measure',
  hint: 'docs/photo.md shows how to take a photo and what to write.',
};

const viewsOf = (results: readonly PhotoResult[], { units }: PhotoOptions): Views => ({
  sheets: async () => {
    const { photoSheet } = await import('../../views/photo-sheet.ts');
    return results.flatMap((result) => (result.ok ? [photoSheet(result, units)] : []));
  },
  json: async () => (await import('../../views/photo-data.ts')).photoJson(results),
  csv: async () => (await import('../../views/photo-data.ts')).photoCsv(results),
});
