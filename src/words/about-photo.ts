/** What a side photo gives, in words: names of its lengths, what was found of the picture, what it cannot tell. */
import type { Assumption } from '../horse/estimate.ts';
import type { PhotoReading, Seen, SeenName } from '../photo/read.ts';
import type { PhotoWorth } from '../advice/photo-worth.ts';
import { feetText } from '../units/feet.ts';
import { decimals, formatLength } from '../units/print.ts';
import { assumptionText } from './about-rest.ts';
import { basisText, capital, chanceText, spreadNumber, type Units } from '../units/text.ts';
import type { PhotoResult } from './types.ts';
import { specName } from './words.ts';

type Read = PhotoResult & { readonly ok: true };

/** Every length, in the order in which they are told. */
const seenNames: Readonly<Record<SeenName, string>> = {
  room: 'elbow room',
  ringBehindElbow: 'elbow back to ring',
  ringOffset: 'groove forward to ring',
  ringHeight: 'ring above underline',
  depth: 'barrel depth',
  setBack: 'fork back to ring (set-back)',
  barSpan: 'bar span',
};

/** The lengths that a photo shows, with their names. */
export function seenEntries({ seen }: PhotoReading): { key: SeenName; name: string; seen: Seen }[] {
  return (Object.keys(seenNames) as SeenName[]).flatMap((key) => {
    const entry = seen[key];
    return entry === undefined ? [] : [{ key, name: seenNames[key], seen: entry }];
  });
}

/** What is told of each source of error. */
export const sourceWords: readonly string[] = [
  'click: hand and eye that put the marks',
  'scale: length of the reference',
  'depth: reference and marks nearer or further than they are taken to be, and the camera',
  'yaw: camera not square to the side of the horse',
  'tilt: line of sight not level',
  'roll: picture turned',
];

/** What a photo of one side can never give. */
export const cannotGive: readonly string[] = [
  'The length of the cinch: nothing in a side photo goes round the chest. Tape from ring to ring before any cord is cut.',
  'The heart girth, or how wide the barrel is: two diameters make no girth.',
  'How the horse stands in motion, how soft the girth is, what lies under hair and pad.',
  'Whether the saddle fits, or lies where it will lie when it is ridden.',
];

/** The picture: where, how large, whether it was looked at. */
export function pictureText({ photo: { photo }, picture }: Read): string {
  const [width, height] = photo.imageSize;
  const size = `${String(width)} x ${String(height)} pixels`;
  if (!picture.there)
    return `Picture: ${photo.file}, ${size}; it was not found, and only the marks are used.`;
  const turned =
    picture.orientation === 1 ? '' : `, stored turned (orientation ${String(picture.orientation)})`;
  return `Picture: ${photo.file}, ${size}; the file is there and agrees (${picture.kind.toUpperCase()}${turned}).`;
}

/** Which way the horse is taken to look: swapped marks are seen by it. */
export const facesText = ({ stand }: Pick<PhotoReading, 'stand'>): string =>
  `The horse looks to the ${stand.facing > 0 ? 'right' : 'left'}: if it does not, elbow and girth groove are swapped.`;

/** How it was taken, as far as was said. */
export function takenText({ photo: { photo, stand } }: Read, units: Units): string {
  const { reference, plumb, cameraDistance } = photo;
  const scale =
    reference.kind === 'stick'
      ? `a stick of ${formatLength(reference.length, units)}`
      : `a flat sheet of ${formatLength(reference.width, units)} by ${formatLength(reference.height, units)}`;
  const far =
    cameraDistance === undefined
      ? `camera distance not said, taken as ${farText(stand.camera.distance, units)}`
      : `camera ${farText(cameraDistance, units)} away`;
  const string = plumb === undefined ? 'no plumb line' : 'plumb line';
  return `${capital(scale)}; ${far}; ${string}.`;
}

/** "12 ft 6 in"; a distance that was paced is not told in halves. */
const farText = (inches: number, units: Units): string =>
  units === 'in' ? feetText(8 * Math.round(inches)) : formatLength(inches, units);

/** "4.49 in", "11.4 cm". */
export const seenText = ({ value }: Seen, units: Units): string => formatLength(value, units, 'computed');

/** A share of the square of the spread, as whole percent. */
export const shareText = (share: number): string => decimals(100 * share, 0);

/** Whether a photo has a share in an input. */
export const isFromPhoto = ({ kind, basis }: Pick<Assumption, 'kind' | 'basis'>): boolean =>
  kind === 'photo' || basis.startsWith('worked out from');

/** Inputs that a photo can give: what of it is used, and why not. */
export function usedTexts(assumptions: readonly Assumption[], units: Units): string[] {
  const inputs = ['elbow room', 'ring set-back', 'ring to ring', 'barrel width over depth'];
  return assumptions
    .filter(({ input }) => inputs.includes(input))
    .map((entry) =>
      isFromPhoto(entry)
        ? `${capital(assumptionText(entry, units))}.`
        : `${capital(entry.input)}: ${basisText(entry)}; the photo is not used for it.`,
    );
}

/** How sure the first spec is, with the photo and without. */
export function worthTexts({ first, without, firstWithout }: PhotoWorth, units: Units): string[] {
  if (first === undefined) return ['Nothing the shop can tie passes for this pair: see size.'];
  const { clearance } = first.candidate;
  const sure = (seen: { chance: number; inches: number; sd: number }): string =>
    `clears the elbow by ${formatLength(seen.inches, units, 'computed')}, give or take ${spreadNumber(seen.sd, units)}, ${chanceText(seen.chance)} sure`;
  const name = capital(specName(first.candidate));
  const other =
    firstWithout === undefined
      ? 'Without it nothing would pass.'
      : specName(firstWithout.candidate) === specName(first.candidate)
        ? 'It would come first without the photo too.'
        : `Without the photo ${specName(firstWithout.candidate)} would come first.`;
  return [
    `${name}: with the photo it ${sure(clearance)}.`,
    without === undefined ? '' : `Without the photo it ${sure(without)}.`,
    other,
  ].filter((text) => text !== '');
}
