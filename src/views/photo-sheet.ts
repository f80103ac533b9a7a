/** What an order's photo gives: lengths, their errors, and what would make them surer. */
import type { Surer } from '../horse/photo-surer.ts';
import { listed } from '../units/phrase.ts';
import { errorNames } from '../words/photo-errors.ts';
import {
  cannotGive,
  facesText,
  pictureText,
  seenEntries,
  seenText,
  shareText,
  sourceWords,
  takenText,
  usedTexts,
  worthTexts,
} from '../words/about-photo.ts';
import { left, right, under, type Block, type Sheet } from '../pages/sheet.ts';
import { phraseText, spreadNumber, type Units } from '../units/text.ts';
import type { PhotoResult } from '../words/types.ts';
import { orderTitle } from '../words/words.ts';

type Read = PhotoResult & { readonly ok: true };

/** The paper. */
export function photoSheet(result: Read, units: Units): Sheet {
  const { advice, worth } = result;
  const { facts, photoRemarks: remarks, assumptions, cautions } = advice;
  return {
    title: orderTitle(facts.order),
    shop: 'What the side photo gives',
    about: [pictureText(result), takenText(result, units), facesText(result.photo)],
    notice: facts.lengthNeed.measured
      ? undefined
      : 'A side photo never gives the length: do not cut until ring to ring is measured.',
    blocks: [
      ...under(
        `What it shows, in ${unitNames[units]}, and what percent of the error comes from each source`,
        [seenTable(result, units), { kind: 'text', tone: 'quiet', text: `${sourceWords.join('; ')}.` }],
      ),
      ...under('What we use from it', [{ kind: 'list', items: usedTexts(assumptions, units) }]),
      ...under('Where it disagrees', [{ kind: 'list', items: remarks.map((one) => phraseText(one, units)) }]),
      ...under('What it gains', [{ kind: 'list', items: worthTexts(worth, units) }]),
      ...under('What would make it surer, and the give or take then', surerBlocks(result, units)),
      ...under('What a side photo cannot give', [{ kind: 'list', items: cannotGive }]),
    ],
    rules: [],
    cautions,
  };
}

function seenTable({ photo }: Read, units: Units): Block {
  return {
    kind: 'table',
    columns: [...left(''), ...right('shown', 'give or take', ...errorNames)],
    rows: seenEntries(photo).map(({ name, seen }) => [
      name,
      seenText(seen, units).replace(/ (?:in|cm)$/, ''),
      spreadNumber(seen.sd, units),
      ...errorNames.map((source) => shareText(seen.shares[source])),
    ]),
  };
}

/** The elbow clearance depends on these. */
const weighty = ['room', 'ringBehindElbow', 'ringHeight'] as const;

/** Ways that cut a spread by 5%; the others share a line. */
function surerBlocks({ photo: { seen }, surer }: Read, units: Units): Block[] {
  const then = ({ sd }: Surer, name: (typeof weighty)[number]): number => sd[name] ?? seen[name].sd;
  const helps = (way: Surer): boolean => weighty.some((name) => then(way, name) < HELPS * seen[name].sd);
  const idle = surer.filter((way) => !helps(way)).map(({ what }) => what);
  const table: Block = {
    kind: 'table',
    columns: [...left(''), ...right('elbow room', 'elbow to ring', 'ring height')],
    rows: [
      ['now', ...weighty.map((name) => spreadNumber(seen[name].sd, units))],
      ...surer
        .filter(helps)
        .map((way) => [way.what, ...weighty.map((name) => spreadNumber(then(way, name), units))]),
    ],
  };
  const rest = idle.length === 0 ? [] : [`Would hardly help here: ${listed(idle)}.`];
  return [
    table,
    { kind: 'list', items: [...rest, 'A tape is surer than any photo: see what to measure next in size.'] },
  ];
}

const HELPS = 0.95;
const unitNames: Readonly<Record<Units, string>> = { in: 'inches', cm: 'centimeters' };
