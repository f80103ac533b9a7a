/** What photos give, for scripts: lengths in inches, shares of the square of each spread. */
import type { Clearance } from '../cinch/candidate.ts';
import { cannotGive, isFromPhoto, seenEntries } from '../words/about-photo.ts';
import { jsonText, rounded, roundedChance } from '../pages/json.ts';
import { assumptionValue, candidateValue, failedValue } from './size-json.ts';
import { phraseText } from '../units/text.ts';
import type { PhotoResult, PictureSeen } from '../words/types.ts';

/** Whole document: `{ schema, results }`. */
export const photoJson = (results: readonly PhotoResult[]): string =>
  jsonText({ schema: 'cinchwright/photo/1', results: results.map(resultValue) });

function resultValue(result: PhotoResult): Record<string, unknown> {
  if (!result.ok) return failedValue(result);
  const { advice, photo, picture, worth, surer, file } = result;
  const { first, firstWithout, without } = worth;
  return {
    order: advice.facts.order.order,
    file,
    picture: pictureValue(photo.photo.file, picture),
    imageSize: photo.photo.imageSize,
    faces: photo.stand.facing > 0 ? 'right' : 'left',
    seen: seenEntries(photo).map(({ name, seen }) => ({
      length: name,
      inches: rounded(seen.value),
      sd: rounded(seen.sd),
      shares: Object.fromEntries(
        Object.entries(seen.shares).map(([source, share]) => [source, rounded(share)]),
      ),
    })),
    used: advice.assumptions.filter(isFromPhoto).map(assumptionValue),
    remarks: advice.photoRemarks.map((remark) => phraseText(remark, 'in', 'decimals')),
    first: first === undefined ? null : candidateValue(first.candidate),
    withoutPhoto: {
      sameCinch: without === undefined ? null : clearance(without),
      first: firstWithout === undefined ? null : candidateValue(firstWithout.candidate),
    },
    surer: surer.map(({ what, sd }) => ({
      what,
      sd: Object.fromEntries(
        seenEntries(photo).map(({ key, name }) => [name, rounded(sd[key] ?? photo.seen[key]?.sd ?? NaN)]),
      ),
    })),
    cannotGive: [...cannotGive],
    cautions: [...advice.cautions],
  };
}

function pictureValue(file: string, picture: PictureSeen): Record<string, unknown> {
  if (!picture.there) return { file, there: false };
  const { kind, width, height, orientation } = picture;
  return { file, there: true, kind, width, height, orientation };
}

const clearance = ({ inches, sd, chance }: Clearance): Record<string, unknown> => ({
  inches: rounded(inches),
  sd: rounded(sd),
  chance: roundedChance(chance),
});
