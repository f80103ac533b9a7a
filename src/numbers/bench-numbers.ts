/** Numbers for the bench: bars, cord to cut and tolerances. */
import { choice as ownChoice, fixedOn } from './model-number.ts';

type Unit = 'in' | 'passes' | 'widths' | 'share';

const choice = fixedOn<Unit>(ownChoice);
/** Our choices, checked against a how-to's cord. */
const ofSum = fixedOn<Unit>({ kind: 'choice', source: 'cord-estimate' });

export const benchNumbers = {
  'hardware-off': ofSum(5, 'in', 'what buckles and bars take off each strand'),
  'turn-at-buckle': ofSum(0.6, 'in', 'cord in one turn around a buckle bar'),
  'tail-radius': ofSum(0.2, 'in', 'a tail goes twice around every strand of its piece, at this radius'),
  'cord-over': ofSum(0.15, 'share', 'extra body cord cut'),
  'least-tail': choice(8, 'in', 'shortest tail a needle can work'),
  'accent-passes': ofSum(9, 'passes', 'accent passes per inch of bar'),
  'accent-slack': ofSum(1.5, 'widths', 'accent cord per pass, over and under'),
  'frame-take-up': choice(0.5, 'in', 'a finished cinch draws up this much off the frame'),
  'end-bar-from': choice(1.5, 'in', 'buckle to end bar of a straight'),
  'end-bar': choice(1.25, 'in', 'end bar of a straight'),
  'center-bar': choice(1.75, 'in', 'center bar of a straight'),
  'weave-row': choice(1, 'in', 'weave row of a roper, and its center bar'),
  'first-row-from': choice(0.5, 'in', 'buckle to first weave row of a roper'),
  'row-gap': choice(2.5, 'in', 'most space between weave rows of a drawn-in part'),
  'profile-step': choice(2, 'in', 'spacing of width checks from the buckle'),
  'length-tolerance': choice(0.25, 'in', 'finished length, either way'),
  'width-tolerance': choice(0.25, 'in', 'width, either way'),
  'least-remnant': choice(120, 'in', 'shortest leftover kept on the shelf'),
  'bar-tolerance': choice(0.25, 'in', 'bar position, either way'),
} as const;

/** Value of one number. */
export const bench = (key: keyof typeof benchNumbers): number => benchNumbers[key].value;
