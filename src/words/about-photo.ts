/** What a side photo gives and can't show, in words. */
import type { Assumption } from '../horse/estimate.ts';
import type { PhotoReading, Seen, SeenName } from '../photo/read/reading.ts';
import type { PhotoWorth } from '../advice/photo-worth.ts';
import { feetText } from '../units/feet.ts';
import { decimals, formatLength } from '../units/print.ts';
import { assumptionText } from './about-rest.ts';
import { basisText, capital, chanceText, spreadNumber, type Units } from '../units/text.ts';
import type { PhotoResult } from './types.ts';
import { specName } from './words.ts';

type Read = PhotoResult & { readonly ok: true };

/** In printed order. */
const seenNames: Readonly<Record<SeenName, string>> = {
  room: 'elbow room',
  ringBehindElbow: 'elbow back to ring',
  ringOffset: 'groove forward to ring',
  ringHeight: 'ring above underline',
  depth: 'barrel depth',
  setBack: 'fork back to ring (set-back)',
  barSpan: 'bar span',
};

/** The lengths this photo shows. */
export function seenEntries({ seen }: PhotoReading): { key: SeenName; name: string; seen: Seen }[] {
  return (Object.keys(seenNames) as SeenName[]).flatMap((key) => {
    const entry = seen[key];
    return entry === undefined ? [] : [{ key, name: seenNames[key], seen: entry }];
  });
}

export const sourceWords: readonly string[] = [
  'click: how exactly the marks were clicked',
  'scale: length of the reference',
  'depth: camera, reference or marks nearer or farther than we took them to be',
  "yaw: camera not square to the horse's side",
  'tilt: camera not level',
  'roll: picture turned',
];

export const cannotGive: readonly string[] = [
  'Cinch length: a side photo shows nothing that runs around the chest. Tape ring to ring before you cut cord.',
  'Heart girth or barrel width: from the side only depth shows.',
  'How the horse moves, how soft the girth is, what lies under hair and pad.',
  'Whether the saddle fits, or stays there when ridden.',
];

/** File, size, and whether we found it. */
export function pictureText({ photo: { photo }, picture }: Read): string {
  const [width, height] = photo.imageSize;
  const size = `${String(width)} x ${String(height)} pixels`;
  if (!picture.there) return `Picture: ${photo.file}, ${size}; file not found; we used only the marks.`;
  const turned =
    picture.orientation === 1 ? '' : `, stored turned (orientation ${String(picture.orientation)})`;
  return `Picture: ${photo.file}, ${size}; file found, and it agrees (${picture.kind.toUpperCase()}${turned}).`;
}

/** Lets a reader catch swapped marks. */
export const facesText = ({ stand }: Pick<PhotoReading, 'stand'>): string =>
  `The horse faces ${stand.facing > 0 ? 'right' : 'left'}; if not, elbow and girth groove are swapped.`;

/** How the photo was taken. */
export function takenText({ photo: { photo, stand } }: Read, units: Units): string {
  const { reference, plumb, cameraDistance } = photo;
  const scale =
    reference.kind === 'stick'
      ? `a stick of ${formatLength(reference.length, units)}`
      : `a flat sheet of ${formatLength(reference.width, units)} by ${formatLength(reference.height, units)}`;
  const far =
    cameraDistance === undefined
      ? `camera distance not given, so we took ${farText(stand.camera.distance, units)}`
      : `camera ${farText(cameraDistance, units)} away`;
  const string = plumb === undefined ? 'no plumb line' : 'plumb line';
  return `${capital(scale)}; ${far}; ${string}.`;
}

/** "12 ft 6 in". */
const farText = (inches: number, units: Units): string =>
  units === 'in' ? feetText(8 * Math.round(inches)) : formatLength(inches, units);

/** "4.49 in", "11.4 cm". */
export const seenText = ({ value }: Seen, units: Units): string => formatLength(value, units, 'computed');

/** Of the variance, in whole percent. */
export const shareText = (share: number): string => decimals(100 * share, 0);

/** Whether the photo contributed to an input. */
export const isFromPhoto = ({ kind, basis }: Pick<Assumption, 'kind' | 'basis'>): boolean =>
  kind === 'photo' || basis.startsWith('worked out from');

/** Inputs a photo can give: the value, or why it is not used. */
export function usedTexts(assumptions: readonly Assumption[], units: Units): string[] {
  const inputs = ['elbow room', 'ring set-back', 'ring to ring', 'barrel width over depth'];
  return assumptions
    .filter(({ input }) => inputs.includes(input))
    .map((entry) =>
      isFromPhoto(entry)
        ? `${capital(assumptionText(entry, units))}.`
        : `${capital(entry.input)}: ${basisText(entry)}; the photo is not used here.`,
    );
}

/** The chance of our pick with and without the photo. */
export function worthTexts({ first, without, firstWithout }: PhotoWorth, units: Units): string[] {
  if (first === undefined) return ['No cinch we tie passes here: see size.'];
  const { clearance } = first.candidate;
  const sure = (seen: { chance: number; inches: number; sd: number }): string =>
    `should clear the elbow by ${formatLength(seen.inches, units, 'computed')}, give or take ${spreadNumber(seen.sd, units)}, chance ${chanceText(seen.chance)}`;
  const name = capital(specName(first.candidate));
  const other =
    firstWithout === undefined
      ? 'Without the photo nothing passes.'
      : specName(firstWithout.candidate) === specName(first.candidate)
        ? 'It comes first without the photo, too.'
        : `Without the photo ${specName(firstWithout.candidate)} comes first.`;
  return [
    `${name}: with the photo it ${sure(clearance)}.`,
    without === undefined ? '' : `Without the photo it ${sure(without)}.`,
    other,
  ].filter((text) => text !== '');
}
