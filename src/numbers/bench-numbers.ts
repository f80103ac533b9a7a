/** Numbers of the bench: where bars sit, what the frame takes up, how near is near enough; each with its basis. */
import { choice as ownChoice, fixedOn } from './model-number.ts';

type Unit = 'in' | 'passes' | 'widths' | 'share';

const choice = fixedOn<Unit>(ownChoice);
/** Our choices too, held against the cord that a how-to takes. */
const ofSum = fixedOn<Unit>({ kind: 'choice', source: 'cord-estimate' });

/** The table; the shop file does not override these. */
export const benchNumbers = {
  'hardware-off': ofSum(5, 'in', 'buckles and bars take this off each strand'),
  'turn-at-buckle': ofSum(0.6, 'in', 'cord of one turn round the bar of a buckle'),
  'tail-radius': ofSum(0.2, 'in', 'a tail goes twice round every strand of its piece, at this radius'),
  'cord-over': ofSum(0.15, 'share', 'body cord cut over what the sum says'),
  'least-tail': choice(8, 'in', 'a shorter tail cannot be held by the needle'),
  'accent-passes': ofSum(9, 'passes', 'passes of accent cord in an inch of bar'),
  'accent-slack': ofSum(1.5, 'widths', 'accent cord of one pass, over and under'),
  'frame-take-up': choice(0.5, 'in', 'off the frame the finished cinch draws up by about this'),
  'end-bar-from': choice(1.5, 'in', 'the end bar of a straight starts this far from the buckle'),
  'end-bar': choice(1.25, 'in', 'end bar of a straight'),
  'center-bar': choice(1.75, 'in', 'center bar of a straight'),
  'weave-row': choice(1, 'in', 'weave row of a roper, and its center bar'),
  'first-row-from': choice(0.5, 'in', 'the first weave row of a roper starts this far from the buckle'),
  'row-gap': choice(2.5, 'in', 'rows of a pinched part are no further apart'),
  'profile-step': choice(2, 'in', 'the width is checked every so far from the buckle'),
  'length-tolerance': choice(0.25, 'in', 'finished length, either way'),
  'width-tolerance': choice(0.25, 'in', 'width, either way'),
  'least-remnant': choice(120, 'in', 'a leftover of cord at least this long goes back on the shelf'),
  'bar-tolerance': choice(0.25, 'in', 'place of a bar, either way'),
} as const;

/** Value of one. */
export const bench = (key: keyof typeof benchNumbers): number => benchNumbers[key].value;
