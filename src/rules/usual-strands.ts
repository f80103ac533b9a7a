/** Do makers tie this many strands here? */
import { isTied, isUsual, type StrandBand } from '../horse/practice.ts';
import type { Candidate } from '../cinch/candidate.ts';
import { count, say, type Phrase } from '../units/phrase.ts';
import type { Seen } from './paths.ts';
import { rule, type CaseFacts } from './rule.ts';

const practice = {
  straight: { least: 15, from: 17, low: 17, high: 19, to: 19, most: 21 },
  roper: { least: 19, from: 19, low: 19, high: 25, to: 25, most: 25 },
};
const facts = { practice };

type Bands = Seen<CaseFacts, 'practice.straight' | 'practice.roper'>;
type Parts = Seen<Candidate, 'style' | 'strands'>;

/** In this style. */
export const bandOf = ({ practice }: Bands, { style }: Pick<Parts, 'style'>): StrandBand =>
  style === 'straight' ? practice.straight : practice.roper;

/** Odd counts within half a step of a bound. */
const first = (low: number): number => 2 * Math.ceil((low - 2) / 2 - 1e-9) + 1;
const last = (high: number): number => 2 * Math.floor(high / 2 + 1e-9) + 1;

/** "17 to 19 strands are usual where this ring hangs". */
export function usualWords(band: StrandBand): Phrase {
  if (last(band.high) < first(band.low)) return say`ropers are too wide for a horse this small`;
  return say`${count(first(band.low))} to ${count(last(band.high))} strands are usual where this ring hangs`;
}

const words = (seen: Bands, { style, strands }: Parts): Phrase => {
  const band = bandOf(seen, { style });
  const usual = usualWords(band);
  if (usual.values.length === 0) return usual;
  const more = isUsual(strands, band)
    ? ''
    : !isTied(strands, band)
      ? '; this is well outside: measure again'
      : strands < band.low
        ? '; fewer only where a horse is short of room'
        : '; more only with plenty of room, taped';
  return { words: [...usual.words.slice(0, -1), (usual.words.at(-1) ?? '') + more], values: usual.values };
};

export const usualStrands = rule({
  id: 'usual-strands',
  question: 'Are these as many strands as makers tie where this ring hangs?',
  reads: ['practice.straight', 'practice.roper'],
  looks: ['style', 'strands'],
  evidence: [
    { basis: 'practice', source: 'common-practice', agreement: 'settled' },
    {
      basis: 'choice',
      source: 'engineering-choice',
      why: 'interpolated between two riggings, and between pony and horse',
    },
  ],
  can: ['good', 'acceptable', 'poor'],
  judge(seen, tied) {
    const band = bandOf(seen, tied);
    const margin = Math.min(tied.strands - band.least, band.most - tied.strands);
    const judgement = isUsual(tied.strands, band)
      ? 'good'
      : isTied(tied.strands, band)
        ? 'acceptable'
        : 'poor';
    return { judgement, margin, reason: words };
  },
  examples: [
    {
      shows: 'a straight of 19 on a 7/8 rig',
      facts,
      candidate: { style: 'straight', strands: 19 },
      gives: 'good',
    },
    {
      shows: 'a straight of 15 there, for a horse short of room',
      facts,
      candidate: { style: 'straight', strands: 15 },
      gives: 'acceptable',
    },
    {
      shows: 'a straight of 25 there',
      facts,
      candidate: { style: 'straight', strands: 25 },
      gives: 'poor',
    },
    {
      shows: 'a roper of 23 there',
      facts,
      candidate: { style: 'high-flare', strands: 23 },
      gives: 'good',
    },
  ],
  since: '0.1.0',
});
