/** The clearance on a photo: a line where it is least, and its number on the elbow's side. */
import type { Candidate } from '../cinch/candidate.ts';
import { clearanceNumber, endBars, numberHeight } from './clearance-number.ts';
import { haloed, type OnPhoto } from './photo-halo.ts';
import { segment, type Layer } from './scene.ts';

const ASIDE = 26;

/** The line and its number. */
export function clearanceOnPhoto(candidate: Candidate, { place, units, facing, size }: OnPhoto): Layer {
  const { clearance } = candidate;
  const [from, to] = [place(clearance.from), place(clearance.to)];
  const { width, shapes } = clearanceNumber(clearance, units);
  const wanted = facing < 0 ? to[0] - ASIDE - width : to[0] + ASIDE;
  const left = Math.min(size[0] - width - 2, Math.max(2, wanted));
  const half = numberHeight / 2;
  const middle = Math.min(size[1] - half - 2, Math.max(half + 2, to[1]));
  return {
    name: 'clearance',
    shapes: [
      ...haloed([{ kind: 'line', points: [from, to], stroke: 'clearance' }, ...endBars(from, to)]),
      segment(to, [facing < 0 ? left + width : left, middle], 'leader'),
      ...shapes([left, middle - half]),
    ],
  };
}
