/** What to click on a photo, and how to find it. */

export type PointId =
  | 'from'
  | 'to'
  | 'corner-1'
  | 'corner-2'
  | 'corner-3'
  | 'corner-4'
  | 'plumb-top'
  | 'plumb-bottom'
  | 'ring'
  | 'elbow'
  | 'girth-groove'
  | 'spine'
  | 'underline'
  | 'fork'
  | 'cantle';

export type StepId = 'measure' | PointId | 'distance' | 'done';

export type ReferenceKind = 'stick' | 'sheet';

export interface Step {
  readonly id: StepId;
  readonly title: string;
  /** Where it is. */
  readonly text: string;
  /** In the list and beside the mark. */
  readonly name: string;
  readonly optional?: true;
  /** What a needed mark is for. */
  readonly gives?: string;
}

const stick: readonly Step[] = [
  {
    id: 'from',
    name: 'measure, one end',
    gives: 'the scale',
    title: 'One end of the measure',
    text: 'Click the very end of the stick or tape, or the first of two marks a known distance apart.',
  },
  {
    id: 'to',
    name: 'measure, other end',
    gives: 'the scale',
    title: 'The other end of the measure',
    text: 'Click the other end, or the second mark. The farther apart, the surer the scale.',
  },
];

const corner = (nth: 1 | 2 | 3 | 4, place: string): Step => ({
  id: `corner-${nth}`,
  name: `sheet, ${place}`,
  gives: 'the scale',
  title: `Corner of the sheet: ${place}`,
  text: `Click the ${place} corner as you see it. The four go clockwise.`,
});

const sheet: readonly Step[] = [
  corner(1, 'top left'),
  corner(2, 'top right'),
  corner(3, 'bottom right'),
  corner(4, 'bottom left'),
];

const horse: readonly Step[] = [
  {
    id: 'plumb-top',
    name: 'plumb line, top',
    title: 'A plumb line: its top',
    text: 'A hanging string, or the upright edge of a door or post: click it high up. It shows how far the camera was tilted; skip it if there is none.',
    optional: true,
  },
  {
    id: 'plumb-bottom',
    name: 'plumb line, bottom',
    title: 'A plumb line: its bottom',
    text: 'Click the same string or edge as low down as you can see it.',
    optional: true,
  },
  {
    id: 'ring',
    name: 'ring',
    gives: 'where the cinch hangs',
    title: 'Rigging ring',
    text: 'Click the middle of the front rigging ring, or of the slot in a flat plate, where the latigo hangs.',
  },
  {
    id: 'elbow',
    name: 'elbow',
    gives: 'the room',
    title: 'Back of the elbow',
    text: 'Find the point of the elbow at the top of the near foreleg: click its rear edge.',
  },
  {
    id: 'girth-groove',
    name: 'girth groove',
    gives: 'the room',
    title: 'Girth groove',
    text: 'Click the underline where the barrel is narrowest behind the elbow: a cinch settles there by itself.',
  },
  {
    id: 'spine',
    name: 'top line',
    title: 'Top line above the groove',
    text: 'Go straight up from the groove: click the top of the back there. It helps find the depth of the barrel; skip it if the saddle hides it.',
    optional: true,
  },
  {
    id: 'underline',
    name: 'underline',
    title: 'Underline of the chest',
    text: 'Click the lowest edge of the chest straight below the last point. Skip it if the groove is marked there already.',
    optional: true,
  },
  {
    id: 'fork',
    name: 'fork',
    title: 'Front of the fork',
    text: 'Click the front edge of the saddle tree below the horn, where bars and fork meet. It helps find the set-back; skip it if it is hidden.',
    optional: true,
  },
  {
    id: 'cantle',
    name: 'cantle',
    title: 'Front of the cantle',
    text: 'Click where the seat meets the front of the cantle. With the fork it gives the bar span; skip it if it is hidden.',
    optional: true,
  },
];

const measure: Step = {
  id: 'measure',
  name: 'size of the measure',
  title: 'What in the photo has a known length?',
  text: 'A stick or tape held level against the barrel near the girth is best. A flat sheet there also works.',
};

const distance: Step = {
  id: 'distance',
  name: 'camera distance',
  title: 'How far away was the camera?',
  text: 'From lens to horse, paced or guessed. Things nearer the camera look larger; this tells how much. Skip it if you do not know.',
  optional: true,
};

const done: Step = {
  id: 'done',
  name: 'finish',
  title: 'Put the block in the order',
  text: 'Copy the block below into the order file, and keep the photo next to that file. You can still drag the marks.',
};

/** In order. */
export const stepsFor = (kind: ReferenceKind): readonly Step[] => [
  measure,
  ...(kind === 'stick' ? stick : sheet),
  ...horse,
  distance,
  done,
];

/** Whether it is a mark. */
export const isPoint = (id: StepId): id is PointId => id !== 'measure' && id !== 'distance' && id !== 'done';
