/** What photos give, for scripts: inches and shares of variance; as a table, one row per length. */
import { jsonText, rounded } from '../pages/json.ts';
import { cannotGive, isFromPhoto, seenEntries } from '../words/about-photo.ts';
import type { Name } from '../words/names.ts';
import { errorNames } from '../words/photo-errors.ts';
import type { PhotoResult, PictureSeen } from '../words/types.ts';
import {
  assumptionValue,
  candidateValue,
  clearanceValue,
  failedRow,
  failedValue,
  phraseValue,
} from './shared-values.ts';
import { tableCsv, type Values } from './table.ts';

type Read = PhotoResult & { readonly ok: true };

/** `{ schema, results }`. */
export const photoJson = (results: readonly PhotoResult[]): string =>
  jsonText({
    schema: 'cinchwright/photo/1',
    results: results.map((result) => (result.ok ? photoValue(result) : failedValue(result))),
  });

function photoValue(result: Read): Values {
  const { advice, photo, picture, worth, surer, file } = result;
  const { first, firstWithout, without } = worth;
  return {
    order: advice.facts.order.order,
    file,
    picture: pictureValue(photo.photo.file, picture),
    imageSize: photo.photo.imageSize,
    faces: photo.stand.facing > 0 ? 'right' : 'left',
    seen: seenValue(result),
    assumptions: advice.assumptions.filter(isFromPhoto).map(assumptionValue),
    remarks: advice.photoRemarks.map(phraseValue),
    first: first === undefined ? null : candidateValue(first.candidate),
    withoutPhoto: {
      clearance: without === undefined ? null : clearanceValue(without),
      first: firstWithout === undefined ? null : candidateValue(firstWithout.candidate),
    },
    surer: surer.map(({ what, sd }) => ({
      text: what,
      seen: seenEntries(photo).map(({ key, name, seen }) => ({
        measure: name,
        sd: rounded(sd[key] ?? seen.sd),
      })),
    })),
    cannotGive: [...cannotGive],
    cautions: [...advice.cautions],
  };
}

const seenValue = ({ photo }: Read): Values[] =>
  seenEntries(photo).map(({ name, seen }) => ({
    measure: name,
    inches: rounded(seen.value),
    sd: rounded(seen.sd),
    shares: Object.fromEntries(errorNames.map((source) => [source, rounded(seen.shares[source])])),
  }));

/** The file's own size, pixels. */
function pictureValue(file: string, picture: PictureSeen): Values {
  if (!picture.there) return { file, there: false };
  const { kind, width, height, orientation } = picture;
  return { file, there: true, kind, imageSize: [width, height], orientation };
}

export const photoColumns: readonly Name[] = [
  'order',
  'file',
  'picture',
  'measure',
  'inches',
  'sd',
  ...errorNames,
  'problem',
];

/** The table. */
export const photoCsv = (results: readonly PhotoResult[]): string =>
  tableCsv(photoColumns, results.flatMap(rowsOf));

function rowsOf(result: PhotoResult): Values[] {
  if (!result.ok) return [failedRow(result)];
  const { order, file, picture } = photoValue(result);
  return seenValue(result).map((seen) => ({ order, file, picture, ...seen }));
}
