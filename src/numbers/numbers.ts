/** Every number of the model; a shop file may change any of them. */

import { choice, n, practice, published, type ModelNumber } from './model-number.ts';
import { photoNumbers } from './photo-numbers.ts';

/** Keys of `model:` in a shop file. */
export const modelNumbers = {
  'average-girth': n(72, 'in', [60, 84])('heart girth of the average horse', choice),
  'elbow-room': n(4, 'in*k', [2, 8])('girth groove to back of elbow, not taped: about a hand', practice),
  'elbow-room-sd': n(0.5, 'in', [0.1, 2])('its spread', choice),
  'elbow-room-taped-sd': n(0.25, 'in', [0.05, 1])('spread of a taped elbow room', choice),
  'armpit-station': n(3, 'in*k', [1, 6])('chest midline to armpit, along the skin', choice),
  'elbow-station': n(7, 'in*k', [4, 12])('chest midline to point of elbow, along the skin', choice),
  'opening-above': n(
    0.1,
    'in/in',
    [0, 3],
  )('widening of the room above the point of the elbow; the upper arm is nearly upright', choice),
  'opening-above-sd': n(0.15, 'in/in', [0, 1])('its spread', choice),
  'opening-below': n(1, 'in/in', [0, 3])('widening of the room below the armpit', choice),
  'ring-behind-elbow': n(
    2,
    'in*k',
    [0, 5],
  )('back of elbow to ring at full position; near what the trade says', choice),
  'ring-behind-elbow-sd': n(
    0.4,
    'in',
    [0, 2],
  )('spread of where the saddle sits, unless a photo shows it', choice),
  'bar-span': n(
    12,
    'in',
    [8, 18],
  )('fork center to cantle front, not measured; practice shows 12 to 16, and trees do not grow', choice),
  'named-position-sd': n(1, 'in', [0.25, 3])("spread of a set-back known by the position's name", choice),
  'measured-position-sd': n(0.25, 'in', [0.05, 1])('spread of a measured set-back', choice),
  'drop-ring': n(14, 'in*k', [8, 24])('spine to ring along the skin: ring rigging', choice),
  'drop-flat-plate': n(14.5, 'in*k', [8, 24])('spine to ring along the skin: flat plate', choice),
  'drop-in-skirt': n(16, 'in*k', [8, 24])('spine to ring along the skin: in-skirt', choice),
  'drop-dropped': n(17, 'in*k', [8, 24])('spine to ring along the skin: dropped', choice),
  'drop-sd': n(1.5, 'in', [0.25, 4])('spread of a drop not measured', choice),
  'drop-measured-sd': n(0.5, 'in', [0.1, 2])('spread of a measured drop', choice),
  'ring-to-ring-sd': n(0.5, 'in', [0.1, 2])('spread of a taped ring to ring', choice),
  'girth-taped-sd': n(0.5, 'in', [0.1, 3])('spread of a taped heart girth', choice),
  'ratio-slab-sided': n(0.62, 'ratio', [0.5, 1])('barrel width over depth: slab-sided', choice),
  'ratio-average': n(0.7, 'ratio', [0.5, 1])('barrel width over depth: average', choice),
  'ratio-round': n(0.78, 'ratio', [0.5, 1])('barrel width over depth: round', choice),
  'ratio-sd': n(0.07, 'ratio', [0.01, 0.2])('its spread, as in one open set of human bodies', choice),
  'ratio-from-depth-sd': n(
    0.15,
    'ratio',
    [0.03, 0.4],
  )('spread of a ratio from girth and depth: weak evidence', choice),
  'round-push': n(0.4, 'in*k', [0, 2])('forward push of round ribs at the buckle', choice),
  'push-sd': n(0.2, 'in', [0, 1])('its spread', choice),
  'strand-pitch': n(0.25, 'in', [0.15, 0.4])('width of one 8-ply strand; two make half an inch', practice),
  'strand-pitch-sd': n(0.015, 'in', [0, 0.05])("its spread: published 0.235, the trade's 0.25", choice),
  'pinch-pitch': n(
    0.2,
    'in',
    [0.1, 0.35],
  )('width of one strand where a weave pinches, strung single', choice),
  'pinch-pitch-double': n(0.145, 'in', [0.05, 0.35])('the same, strung double', choice),
  'bar-pitch-double': n(
    0.125,
    'in',
    [0.05, 0.4],
  )('width of one strand at the buckle bar, strung double', choice),
  'bar-spread': n(
    2,
    'in',
    [0.5, 6],
  )('a straight spreads from buckle bar to full width over this length', choice),
  'flare-length': n(3, 'in', [1, 8])('a roper widens over this length', choice),
  'high-flare-start': n(3, 'in', [1, 8])('a high flare starts this far below the buckle', choice),
  'weave-step': n(2, 'in', [1, 4])('a low flare starts at least this far below a high one', choice),
  'required-clearance': n(1.25, 'in*k', [0.5, 4])('elbow clearance wanted', choice),
  'floor-clearance': n(1, 'in*k', [0.25, 4])('ruled out with less elbow clearance', choice),
  'muscle-wanted': n(
    0.5,
    'in*k',
    [0, 4],
  )('clearance wanted against muscle: buckle, and strands above the elbow', choice),
  'muscle-floor': n(0, 'in*k', [-1, 4])('ruled out with less there', choice),
  'special-buckle-width': n(7, 'in', [5, 12])('this wide at the buckle, it needs a special buckle', practice),
  'buckle-above-elbow-floor': n(
    3,
    'in*k',
    [0, 8],
  )("least height of the buckle's low edge above the point of the elbow", choice),
  'buckle-above-elbow-target': n(4, 'in*k', [0, 10])('the height to aim for', choice),
  'run-target': n(
    6,
    'in',
    [2, 10],
  )('latigo run to aim for, each side; grows with the horse within the accepted range', choice),
  'run-low': n(4, 'in', [1, 10])('shortest latigo run accepted', choice),
  'run-high': n(8, 'in', [3, 14])('longest latigo run accepted', choice),
  'run-least': n(3, 'in', [0, 8])('ruled out with a shorter latigo run', choice),
  'run-most': n(10, 'in', [4, 20])('ruled out with a longer latigo run', choice),
  stretch: n(1, 'in', [0, 2])('stretch in a new mohair cinch', practice),
  'length-disagreement': n(2, 'in', [0.5, 6])('a length this far off the rule of thumb is reported', choice),
  tension: n(28.66, 'lbf', [5, 100])('usual girth tension on racehorses, 13 kgf', published('girth-tension')),
  'slant-fine': n(1, 'in*k', [0, 4])('ring this far off plumb over the groove is fine', choice),
  'slant-mention': n(2.5, 'in*k', [0, 6])('ring this far off plumb is mentioned', choice),
  'slant-warn': n(4, 'in*k', [0, 8])('ring farther off plumb than this: no cinch fixes it', choice),
  'chance-good': n(0.8, 'chance', [0.5, 0.999])('clearance is good from this chance up', choice),
  'chance-acceptable': n(0.6, 'chance', [0.5, 0.999])('clearance is fair from this chance up', choice),
  'chance-sore': n(0.9, 'chance', [0.5, 0.999])('good on a sore horse from this chance up', choice),
  'chance-most': n(
    0.95,
    'chance',
    [0.5, 0.999],
  )('highest chance we state until outcomes prove better', choice),
  'roper-fewest': n(19, 'strands', [11, 31])('fewest strands of a roper', practice),
  'straight-most': n(25, 'strands', [11, 31])('most strands of a straight', practice),
  ...photoNumbers,
} as const satisfies Record<string, ModelNumber>;

export type ModelKey = keyof typeof modelNumbers;

/** The numbers with a shop's changes applied. */
export type Model = Readonly<Record<ModelKey, number>>;

export const defaultModel: Model = Object.freeze(
  Object.fromEntries(Object.entries(modelNumbers).map(([key, entry]) => [key, entry.value])),
) as Model;
