/** `draw --on-photo`: the cinch on the order's photo. */
import type { Advice } from '../../advice/advice.ts';
import type { PhotoPage } from '../../photo/drawn/html.ts';
import type { PhotoScene } from '../../photo/drawn/page.ts';
import { askedOf } from '../asked-cinch.ts';
import { emit, emitBytes, guardInputs, tellNotWritten } from '../emit.ts';
import { worse, type ExitCode } from '../fault.ts';
import type { CliIo } from '../io.ts';
import { lackingText } from '../pdf.ts';
import { orderFiles } from '../order-files.ts';
import { tellFaults } from '../problems.ts';
import { colorFor } from '../screen.ts';
import { shopOf } from '../shop.ts';
import { guardAsked, type DrawOptions } from './asked.ts';
import { tellNone } from './none.ts';
import { tellWithout } from '../photo/without.ts';
import { findPhotos } from './photo-files.ts';
import { photoFor, rasterFile } from './photo-pixels.ts';
import { picturesOf, type Asking, type Made, type Picture } from './pictures.ts';
import { guardCount, makePlace, outputsFor } from './places.ts';

/** Reports orders without a photo. */
export async function drawOnPhoto(
  paths: readonly string[],
  options: DrawOptions,
  io: CliIo,
): Promise<ExitCode> {
  guardAsked(options, io);
  const names = await orderFiles(paths, io, 'draw');
  const inputs = [...names, options.shop];
  guardInputs(options.out, inputs, io);
  const errorColor = colorFor(io, options.color, 'stderr');
  const shop = await shopOf(options.shop, io, errorColor);
  const asking: Asking = { options, shop, asked: await askedOf(options, shop) };
  const { looked, found, without } = await findPhotos(names, options, io);
  guardCount(found.length, options);
  const made: Made[] = [];
  const drawn: Drawn[] = [];
  for (const { entry, file } of found) {
    const [one] = await picturesOf([entry.order], asking);
    if (one === undefined) continue;
    made.push(one);
    if (one.picture !== undefined) drawn.push({ ...one.picture, file });
  }
  const outputs = outputsFor(drawn, options);
  for (const { place } of outputs) guardInputs(place, [...inputs, ...drawn.map(({ file }) => file)], io);
  if (outputs.length > 0) makePlace(options, io);
  for (const { place, pictures } of outputs) await write(pictures, place, { options, io });
  const told = await tellFaults(looked, io, errorColor);
  if (outputs.length === 0) tellNotWritten(options.out, io);
  if (without.length > 0) tellWithout(without, { ...lack, useful: looked.length > without.length }, io);
  return worse(told, tellNone(made, io));
}

const lack = {
  nothing: 'nothing to draw on',
  hint: 'Make one with: cinchwright photo --pick PICTURE',
};

interface Drawn extends Picture {
  readonly file: string;
}

interface Run {
  readonly options: DrawOptions;
  readonly io: CliIo;
}

async function write(
  pictures: readonly Drawn[],
  place: string | undefined,
  { options, io }: Run,
): Promise<void> {
  const { photoCodecs } = await import('../codecs.ts');
  const codecs = await photoCodecs();
  const { format } = options;
  const lacking = new Set<string>();
  const pages: PhotoPage[] = [];
  for (const picture of pictures) {
    const { drawing, letters } = await drawingOf(picture, options);
    for (const letter of letters) lacking.add(letter);
    const photo = await photoFor(drawing, { file: picture.file, codecs });
    if (format === 'html') {
      const jpeg = Buffer.from(await codecs.jpeg(photo, 80)).toString('base64');
      pages.push({ ...picture, units: options.units, drawing, address: `data:image/jpeg;base64,${jpeg}` });
    } else emitBytes(await rasterFile(drawing, photo, { codecs, format }), place, io);
  }
  if (format === 'html') emit((await import('../../photo/drawn/html.ts')).photosHtml(pages), place, io);
  if (lacking.size > 0) io.stderr(`cinchwright: ${lackingText([...lacking], 'picture')}\n`);
}

async function drawingOf(
  { advice, shown }: { advice: Advice; shown: Picture['shown'] },
  { units }: DrawOptions,
): Promise<{ drawing: PhotoScene; letters: readonly string[] }> {
  const [{ photoScene }, { printedScene }, { paperFonts }] = await Promise.all([
    import('../../photo/drawn/page.ts'),
    import('../../draw/pdf-bundle.ts'),
    import('../fonts.ts'),
  ]);
  const reading = advice.facts.photo;
  if (reading === undefined) throw new Error('the order has no photo');
  const drawing = photoScene({ advice, reading, shown, units });
  const { scene, lacking } = printedScene(drawing.scene, paperFonts());
  return { drawing: { ...drawing, scene }, letters: lacking };
}
