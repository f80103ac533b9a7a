/** `draw --on-photo`: orders in, their photos out with the cinch drawn on them, small enough to be sent. */
import type { Advice } from '../../advice/advice.ts';
import type { PhotoPage } from '../../picture/photo-html.ts';
import type { PhotoScene } from '../../picture/photo-page.ts';
import type { Codecs, PictureType } from '../../raster/codecs.ts';
import type { Orientation, Raster } from '../../raster/raster.ts';
import { askedOf } from '../asked-cinch.ts';
import { emit, emitBytes, guardInputs, tellNotWritten } from '../emit.ts';
import { CliFault, exit, printable, worse, type ExitCode } from '../fault.ts';
import { namesOf, readEntries, type Entry } from '../input.ts';
import type { CliIo } from '../io.ts';
import { lackingText } from '../pdf.ts';
import { lookAtPicture } from '../photo/look.ts';
import { readPhoto } from '../photo/picture.ts';
import { tellFaults } from '../problems.ts';
import { colorFor } from '../screen.ts';
import { shopOf } from '../shop.ts';
import { guardAsked, type DrawOptions } from './asked.ts';
import { tellNone } from './none.ts';
import { picturesOf, type Asking, type Made, type Picture } from './pictures.ts';
import { guardCount, outputsFor } from './places.ts';
import { pngWriter } from './png-writer.ts';

/** A photo takes four bytes a pixel while it is worked on, and twice that for a moment. */
const limits = { bytes: 50_000_000, pixels: 60_000_000 };

/** Draws on the photos of all orders that have one, and tells of the rest. */
export async function drawOnPhoto(
  files: readonly string[],
  options: DrawOptions,
  io: CliIo,
): Promise<ExitCode> {
  guardAsked(options, io);
  const names = namesOf(files, io, 'draw');
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
  for (const { place, pictures } of outputs) await write(pictures, place, { options, io });
  const told = await tellFaults(looked, io, errorColor);
  if (outputs.length === 0) tellNotWritten(options.out, io);
  if (without.length > 0) tellWithout(without, looked.length > without.length, io);
  return worse(told, tellNone(made, io));
}

/** A picture to be made, and the photo it is made on. */
interface Drawn extends Picture {
  readonly file: string;
}

interface Found {
  readonly looked: Entry[];
  readonly found: { readonly entry: Entry & { ok: true }; readonly file: string }[];
  /** Orders without a photo block. */
  readonly without: string[];
}

async function findPhotos(
  names: readonly string[],
  { photosFrom: from }: DrawOptions,
  io: CliIo,
): Promise<Found> {
  const looked: Entry[] = [];
  const found: Found['found'] = [];
  const without: string[] = [];
  for (const name of names) {
    for (const entry of await readEntries([name], io)) {
      looked.push(entry);
      if (!entry.ok) continue;
      const { photo } = entry.order;
      if (photo === undefined) {
        without.push(entry.order.order);
        continue;
      }
      const seen = await lookAtPicture(entry, photo, { name, from, io });
      if (seen.ok && seen.path !== undefined) found.push({ entry, file: seen.path });
      else looked[looked.length - 1] = faulty(entry, seen.ok ? absent(entry, photo.file) : seen.problem);
    }
  }
  return { looked, found, without };
}

type Problem = (Entry & { ok: false })['problems'][number];

const faulty = ({ file, line, order }: Entry & { ok: true }, problem: Problem): Entry => ({
  ok: false,
  file,
  line,
  order: order.order,
  problems: [problem],
});

const absent = ({ file, line }: Entry & { ok: true }, name: string): Problem => ({
  file,
  line,
  column: 1,
  path: 'photo.file',
  found: name,
  expected: 'a picture to draw on',
  hint: 'it is not there: put it beside the order file, or name its folder with --photos-from',
});

function tellWithout(orders: readonly string[], useful: boolean, io: CliIo): void {
  const names = orders.map(printable);
  const which = names.length === 1 ? `order ${names.join('')} has` : `orders ${names.join(', ')} have`;
  const message = `nothing to draw on: ${which} no "photo" block`;
  const hint = 'Make one with: cinchwright photo --pick PICTURE';
  if (!useful) throw new CliFault(message, { hint });
  io.stderr(`cinchwright: ${message}\n`);
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
  if (format === 'html') emit((await import('../../picture/photo-html.ts')).photosHtml(pages), place, io);
  if (lacking.size > 0) io.stderr(`cinchwright: ${lackingText([...lacking], 'picture')}\n`);
}

async function drawingOf(
  { advice, shown }: { advice: Advice; shown: Picture['shown'] },
  { units }: DrawOptions,
): Promise<{ drawing: PhotoScene; letters: readonly string[] }> {
  const [{ photoScene }, { printedScene }, { paperFonts }] = await Promise.all([
    import('../../picture/photo-page.ts'),
    import('../../print/pdf.ts'),
    import('../fonts.ts'),
  ]);
  const reading = advice.facts.photo;
  if (reading === undefined) throw new Error('the order has no photo');
  const drawing = photoScene({ advice, reading, shown, units });
  const { scene, lacking } = printedScene(drawing.scene, paperFonts());
  return { drawing: { ...drawing, scene }, letters: lacking };
}

/** Width of a picture, pixels: fills a telephone, and is enlarged twice without blocks. */
const WIDE = 1260;

/** The part of the photo that is shown, upright, without anything the camera noted besides. */
async function photoFor(
  { part }: PhotoScene,
  { file, codecs }: { file: string; codecs: Codecs },
): Promise<Raster> {
  const { cutOut, enlarged, liesOnItsSide } = await import('../../raster/raster.ts');
  const read = readPhoto(file, limits);
  const name = printable(file);
  if (!read.ok) throw new CliFault(`${name}: ${read.why}`, { code: exit.input });
  const orientation = read.orientation as Orientation;
  const [width, height] = liesOnItsSide(orientation) ? [read.height, read.width] : [read.width, read.height];
  const type: PictureType = read.kind === 'jpeg' ? 'image/jpeg' : 'image/png';
  let stored: Raster;
  try {
    stored = await codecs.decode(read.bytes, type, { width, height });
  } catch {
    throw new CliFault(`${name}: the picture is damaged and cannot be drawn on`, { code: exit.input });
  }
  return enlarged(cutOut(stored, part, { width: WIDE, orientation }), WIDE);
}

/** More is not taken by many messengers. */
const MOST_BYTES = 2_000_000;

async function rasterFile(
  { scene }: PhotoScene,
  photo: Raster,
  { codecs, format }: { codecs: Codecs; format: string },
): Promise<Uint8Array> {
  const [{ svgPixels }, { sceneSvg }, { fontFiles }, { composed, cutOut }] = await Promise.all([
    pngWriter(),
    import('../../picture/svg.ts'),
    import('../fonts.ts'),
    import('../../raster/raster.ts'),
  ]);
  const sheet = composed(photo, svgPixels(sceneSvg(scene), { fontFiles: fontFiles(), width: WIDE }));
  if (format === 'jpeg') {
    for (const quality of [82, 70, 55]) {
      const bytes = await codecs.jpeg(sheet, quality);
      if (bytes.length <= MOST_BYTES) return bytes;
    }
    return codecs.jpeg(sheet, 40);
  }
  let bytes = await codecs.png(sheet);
  for (let width = WIDE * 0.85; bytes.length > MOST_BYTES && width > 400; width *= 0.85) {
    const box = { x: 0, y: 0, width: sheet.width, height: sheet.height };
    bytes = await codecs.png(cutOut(sheet, box, { width, orientation: 1 }));
  }
  return bytes;
}
