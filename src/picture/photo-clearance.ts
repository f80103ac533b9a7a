/** The clearance on a photo: a line where it is least, and its number on the side of the elbow. */
import type { Candidate } from '../fit/candidate.ts';
import { clearanceNumber, endBars } from './clearance-number.ts';
import { haloed, type OnPhoto } from './photo-halo.ts';
import { box, segment, type Layer, type Point, type Shape } from './scene.ts';

/** White round the number, points. */
const PAD = 4;
const LINE = 12;
const ASIDE = 26;

/** The line of the clearance, and its number on the side of the elbow. */
export function clearanceOnPhoto(candidate: Candidate, { place, units, facing, size }: OnPhoto): Layer {
  const { clearance } = candidate;
  const [from, to] = [place(clearance.from), place(clearance.to)];
  const { texts, width: wide } = clearanceNumber(clearance, units);
  const width = wide + 2 * PAD;
  const end = to;
  const wanted = facing < 0 ? end[0] - ASIDE - width : end[0] + ASIDE;
  const left = Math.min(size[0] - width - 2, Math.max(2, wanted));
  const middle = Math.min(size[1] - LINE - 2, Math.max(LINE + 2, end[1]));
  const leader: Point = [facing < 0 ? left + width : left, middle];
  return {
    name: 'clearance',
    shapes: [
      ...haloed([{ kind: 'line', points: [from, to], stroke: 'clearance' }, ...endBars(from, to)]),
      segment(end, leader, 'leader'),
      box([left, middle - LINE], [left + width, middle + LINE], { fill: 'paper', stroke: 'leader' }),
      ...texts.map(({ text, hand }, i): Shape => ({
        kind: 'label',
        at: [left + width / 2, middle + (i === 0 ? -2 : LINE - 3)],
        text,
        hand,
        anchor: 'middle',
      })),
    ],
  };
}
