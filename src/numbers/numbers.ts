/** Every number the model uses that is neither arithmetic nor geometry: one entry each, with its basis; a shop may override any of them. */

import { choice, n, practice, published, type ModelNumber } from './model-number.ts';
import { photoNumbers } from './photo-numbers.ts';

/** The table. Keys are what the shop file's `model` block takes. */
export const modelNumbers = {
  'average-girth': n(
    72,
    'in',
    [60, 84],
  )('heart girth of the average horse, for which lengths marked k are given', choice),
  'elbow-room': n(
    4,
    'in*k',
    [2, 8],
  )('girth groove to the back of the elbow when nobody measured: about a hand', practice),
  'elbow-room-sd': n(0.5, 'in', [0.1, 2])('spread of that', choice),
  'elbow-room-taped-sd': n(0.25, 'in', [0.05, 1])('spread of a taped elbow room', choice),
  'armpit-station': n(3, 'in*k', [1, 6])('station of the armpit, from the chest midline up the skin', choice),
  'elbow-station': n(7, 'in*k', [4, 12])('station of the point of the elbow', choice),
  'opening-above': n(
    0.1,
    'in/in',
    [0, 3],
  )('how fast the room opens above the point of the elbow, where the upper arm is close to upright', choice),
  'opening-above-sd': n(0.15, 'in/in', [0, 1])('spread of that', choice),
  'opening-below': n(1, 'in/in', [0, 3])('how fast the room opens below the armpit', choice),
  'ring-behind-elbow': n(
    2,
    'in*k',
    [0, 5],
  )(
    'at full position the ring hangs this far behind the back of the elbow: our choice, near what the trade says',
    choice,
  ),
  'ring-behind-elbow-sd': n(
    0.4,
    'in',
    [0, 2],
  )('spread of where the saddle sits on the horse, unless a photo of the saddled horse shows it', choice),
  'bar-span': n(
    12,
    'in',
    [8, 18],
  )(
    'fork center to cantle front when nobody measured: our choice, practice shows 12 to 16; trees do not grow',
    choice,
  ),
  'named-position-sd': n(
    1,
    'in',
    [0.25, 3],
  )('spread of where the ring hangs when only the position has a name', choice),
  'measured-position-sd': n(0.25, 'in', [0.05, 1])('spread of a measured set-back', choice),
  'drop-ring': n(14, 'in*k', [8, 24])('spine to ring along the skin: ring rigging', choice),
  'drop-flat-plate': n(14.5, 'in*k', [8, 24])('spine to ring along the skin: flat plate', choice),
  'drop-in-skirt': n(16, 'in*k', [8, 24])('spine to ring along the skin: in-skirt', choice),
  'drop-dropped': n(17, 'in*k', [8, 24])('spine to ring along the skin: dropped', choice),
  'drop-sd': n(1.5, 'in', [0.25, 4])('spread of a drop nobody measured', choice),
  'drop-measured-sd': n(0.5, 'in', [0.1, 2])('spread of a measured drop', choice),
  'ring-to-ring-sd': n(0.5, 'in', [0.1, 2])('spread of the tape from ring to ring', choice),
  'girth-taped-sd': n(0.5, 'in', [0.1, 3])('spread of a taped heart girth', choice),
  'ratio-slab-sided': n(0.62, 'ratio', [0.5, 1])('barrel width over depth: slab-sided', choice),
  'ratio-average': n(0.7, 'ratio', [0.5, 1])('barrel width over depth: average', choice),
  'ratio-round': n(0.78, 'ratio', [0.5, 1])('barrel width over depth: round', choice),
  'ratio-sd': n(
    0.07,
    'ratio',
    [0.01, 0.2],
  )('spread of that ratio: the one open set of human bodies has 0.07', choice),
  'ratio-from-depth-sd': n(
    0.15,
    'ratio',
    [0.03, 0.4],
  )('spread of a ratio solved from girth and depth: weak evidence', choice),
  'round-push': n(0.4, 'in*k', [0, 2])('forward push of round ribs at the buckle', choice),
  'push-sd': n(0.2, 'in', [0, 1])('spread of that push', choice),
  'strand-pitch': n(
    0.25,
    'in',
    [0.15, 0.4],
  )('width of one 8-ply cord in the body: two add half an inch', practice),
  'strand-pitch-sd': n(
    0.015,
    'in',
    [0, 0.05],
  )("spread of the pitch: the published 0.235 against the trade's 0.25", choice),
  'pinch-pitch': n(0.2, 'in', [0.1, 0.35])('width of one cord where a weave pinches, single layer', choice),
  'pinch-pitch-double': n(0.145, 'in', [0.05, 0.35])('the same, double layer', choice),
  'bar-pitch-double': n(
    0.125,
    'in',
    [0.05, 0.4],
  )('width of one cord as it comes off the buckle bar, double layer', choice),
  'bar-spread': n(
    2,
    'in',
    [0.5, 6],
  )('cords that come off a narrow buckle bar spread to full width over this length', choice),
  'flare-length': n(3, 'in', [1, 8])('a roper widens over this length', choice),
  'high-flare-start': n(3, 'in', [1, 8])('a high flare starts this far below the buckle', choice),
  'weave-step': n(
    2,
    'in',
    [1, 4],
  )('the further weave of a low flare sits at least this far below a high one', choice),
  'required-clearance': n(1.25, 'in*k', [0.5, 4])('elbow clearance asked for', choice),
  'floor-clearance': n(1, 'in*k', [0.25, 4])('elbow clearance below which a spec is refused', choice),
  'muscle-wanted': n(
    0.5,
    'in*k',
    [0, 4],
  )('clearance wanted where the buckle, or cords above the elbow, lie against muscle', choice),
  'muscle-floor': n(0, 'in*k', [-1, 4])('clearance there below which a spec is refused', choice),
  'special-buckle-width': n(
    7,
    'in',
    [5, 12],
  )('a cinch this wide at the buckle needs a special buckle', practice),
  'buckle-above-elbow-floor': n(
    3,
    'in*k',
    [0, 8],
  )("least height of the buckle's low edge above the point of the elbow", choice),
  'buckle-above-elbow-target': n(
    4,
    'in*k',
    [0, 10],
  )("height of the buckle's low edge above the point of the elbow to aim for", choice),
  'run-target': n(
    6,
    'in',
    [2, 10],
  )('latigo run to aim for, each side (scaled by the horse, kept within the accepted band)', choice),
  'run-low': n(4, 'in', [1, 10])('shortest latigo run accepted', choice),
  'run-high': n(8, 'in', [3, 14])('longest latigo run accepted', choice),
  'run-least': n(3, 'in', [0, 8])('a shorter latigo run is refused', choice),
  'run-most': n(10, 'in', [4, 20])('a longer latigo run is refused', choice),
  stretch: n(1, 'in', [0, 2])('a new mohair cinch gives about this much', practice),
  'length-disagreement': n(2, 'in', [0.5, 6])('a cross-check further away than this is reported', choice),
  tension: n(28.66, 'lbf', [5, 100])('usual girth tension on racehorses, 13 kgf', published('girth-tension')),
  'slant-fine': n(1, 'in*k', [0, 4])('ring this far from plumb over the groove is fine', choice),
  'slant-mention': n(2.5, 'in*k', [0, 6])('ring up to this far from plumb is mentioned', choice),
  'slant-warn': n(4, 'in*k', [0, 8])('ring further than this from plumb: no cinch cures it', choice),
  'chance-good': n(
    0.8,
    'chance',
    [0.5, 0.999],
  )('chance of clearing the floor from which a clearance is good', choice),
  'chance-acceptable': n(
    0.6,
    'chance',
    [0.5, 0.999],
  )('chance of clearing the floor from which a clearance is acceptable', choice),
  'chance-sore': n(0.9, 'chance', [0.5, 0.999])('the same to be good on a sore horse', choice),
  'chance-most': n(
    0.95,
    'chance',
    [0.5, 0.999],
  )('no chance is told as more than this: the model is known no better until outcomes say so', choice),
  'roper-fewest': n(19, 'strands', [11, 31])('ropers are tied from this many strands up', practice),
  'straight-most': n(25, 'strands', [11, 31])('straights are never tied with more strands', practice),
  ...photoNumbers,
} as const satisfies Record<string, ModelNumber>;

export type ModelKey = keyof typeof modelNumbers;

/** The numbers in force: the table with a shop's overrides laid over it. */
export type Model = Readonly<Record<ModelKey, number>>;

/** The default numbers, before any override. */
export const defaultModel: Model = Object.freeze(
  Object.fromEntries(Object.entries(modelNumbers).map(([key, entry]) => [key, entry.value])),
) as Model;
