/** The names of tables for spreadsheets and of a backlog's columns, each with what it holds: JSON has the same, and no other for the same thing. */

/**
 * `in` inches, `n` a count, `chance` and `share` 0 to 1, `money` text with its decimals, `day` 2026-12-18, `yes` true or false (yes or no
 * in a table); without one it is text, or as what it holds says.
 */
export type NameUnit = '' | 'in' | 'n' | 'chance' | 'share' | 'minutes' | 'money' | 'day' | 'yes';

export interface Named {
  readonly unit: NameUnit;
  readonly about: string;
  /** Where JSON has it, if not under the name alone. */
  readonly path: readonly string[];
}

type Entry = readonly [unit: NameUnit, about: string, path?: string];

const entries = {
  list: ['', 'which list the row is of'],
  order: [
    '',
    'number or name of the order; in `materials` and `schedule` with its file where two have the same',
  ],
  customer: ['', 'name of the customer'],
  phone: ['', 'phone of the customer'],
  email: ['', 'mail of the customer'],
  horse: ['', 'name of the horse'],
  file: ['', 'the file it came from'],
  document: ['n', 'which order of that file, from 1'],
  line: ['n', 'line of that file, from 1: on which the order starts, or where the fault is'],
  due: ['day', 'day on which it is due'],
  quantity: ['n', 'how many'],
  verdict: [
    '',
    'sized: our pick is good at the elbow; tight: it is not good there; none fits: every spec is ruled out; faulty: the order could not be read',
  ],
  rigging: ['', 'where the ring hangs, as the order says it'],
  room: ['in', 'room behind the elbow', 'room.inches'],
  roomSd: ['in', 'its spread', 'room.sd'],
  whatIf: ['', 'the words that changed the order; empty for the order as it is'],
  which: ['', 'wants, current or command line'],
  rank: ['n', 'place in the order of merit, 1 is best'],
  standing: [
    '',
    'passes; not sure: chance under 0.6 at the elbow, or nobody can tell how it or the buckle fits; refused',
  ],
  style: ['', 'straight, high-flare or low-flare'],
  strands: ['n', 'body cords side by side'],
  layers: ['n', '1 single, 2 double'],
  width: ['in', 'width of the body at full spread'],
  buckleWidth: ['in', 'width of the body at the buckle'],
  flareStart: ['in', 'how far below the buckle a roper begins to widen; empty for a straight'],
  buckle: ['', 'the buckle by its name in the shop file'],
  length: [
    'in',
    'of a cinch finished, outside to outside of the hardware; of cord one piece, or all of the row together',
  ],
  lengthBasis: ['', 'taped: ring to ring was measured; provisional: do not cut until it is'],
  clearance: ['in', 'elbow clearance', 'clearance.inches'],
  clearanceSd: ['in', 'its spread', 'clearance.sd'],
  chance: ['chance', 'chance that the clearance is at least the floor', 'clearance.chance'],
  latigoRun: ['in', 'latigo left on each side', 'latigoRun.inches'],
  becauseOf: ['', 'why this spec comes before the next one', 'becauseOf.text'],
  findings: ['', 'rules that find it less than good, with the judgement'],
  ask: ['', 'what to measure next, and how'],
  rule: ['', 'the rule'],
  judgement: ['', 'good, acceptable, poor, refuse, not-applicable or cannot-tell'],
  margin: ['', 'how far from the nearest bound, in the unit of the thing judged'],
  text: ['', 'why, in words'],
  question: ['', 'what is asked, in words'],
  mayRefuse: ['yes', 'whether it can rule a cinch out'],
  can: ['', 'what it can say'],
  basis: ['', 'what it rests on'],
  evidence: ['', 'the evidence'],
  since: ['', 'first version that has it'],
  advice: ['', 'ask, instead (a photo, instead of what it shows) or leave (not worth asking)'],
  input: ['', 'what would be measured'],
  beforeCutting: ['yes', 'whether it must be known before cord is cut'],
  gain: ['chance', 'expected gain in the chance that the cinch tied clears and reaches', 'gain.mean'],
  gainStandardError: ['chance', 'its Monte Carlo standard error', 'gain.standardError'],
  changes: ['chance', 'chance that the answer changes what comes first or a verdict', 'changes.mean'],
  changesStandardError: ['chance', 'its Monte Carlo standard error', 'changes.standardError'],
  wider: ['chance', 'chance that what comes first then is wider', 'wider.mean'],
  how: ['', 'how to measure it'],
  safely: ['', 'how to stay safe'],
  picture: ['', 'the picture, as the order names it', 'picture.file'],
  measure: ['', 'which length the photo shows'],
  inches: ['in', 'how long it is'],
  sd: ['', 'its spread'],
  click: ['share', 'share of the square of the spread that is due to click', 'shares.click'],
  scale: ['share', 'due to scale', 'shares.scale'],
  depth: ['share', 'due to depth', 'shares.depth'],
  yaw: ['share', 'due to yaw', 'shares.yaw'],
  tilt: ['share', 'due to tilt', 'shares.tilt'],
  roll: ['share', 'due to roll', 'shares.roll'],
  color: ['', 'color of cord'],
  id: ['', 'hardware by its name in the shop file'],
  ply: ['n', '8 body cord, 2 accent cord'],
  lot: ['', 'dye lot; empty where it is not said or not yet bought'],
  origin: ['', 'remnant, shelf, bought or short'],
  putUp: ['in', 'length of the put-up a piece is cut from or that is bought', 'putUp.length'],
  copy: ['n', 'which of several put-ups that are alike'],
  count: ['n', 'pieces; in a quote as `per` says'],
  needed: ['n', 'pieces of hardware needed'],
  onHand: ['n', 'pieces of hardware on hand'],
  short: ['n', 'pieces short'],
  note: ['', 'what it is for, or why it is taken'],
  minutes: ['minutes', 'minutes of work'],
  bench: ['', 'the bench that does it'],
  startDay: ['day', 'day on which it starts'],
  endDay: ['day', 'day on which it is done'],
  promise: ['day', 'the due day when it is met, else the day on which it is done'],
  lateDays: ['n', 'working days after the due day'],
  shelf: ['', 'judgement of the rule stock: good when all of it is on the shelf'],
  column: ['n', 'column of that line, from 1'],
  key: ['', 'key of an order or shop file'],
  found: ['', 'what stands there'],
  expected: ['', 'what should stand there'],
  hint: ['', 'how to put it right'],
  reason: ['', 'why there is none'],
  sameNumberAs: ['', 'file and line of the first order with the same number, if this is a later one'],
  problem: ['', 'of a faulty order: line, column and key of the first fault, what stands there, what should'],
} as const satisfies Readonly<Record<string, Entry>>;

export type Name = keyof typeof entries;

const named = ([name, [unit, about, path = name]]: [string, Entry]): [string, Named] => [
  name,
  { unit, about, path: path.split('.') },
];

export const names = Object.fromEntries(Object.entries<Entry>(entries).map(named)) as Readonly<
  Record<Name, Named>
>;

/** "buckleWidth" -> "buckle width". */
export const inWords = (name: Name): string => name.replace(/[A-Z]/g, (letter) => ` ${letter.toLowerCase()}`);

/** "buckleWidth" -> "buckle_width_in", as a table for a spreadsheet has it. */
export const headOf = (name: Name): string =>
  inWords(name).replaceAll(' ', '_') + (names[name].unit === 'in' && name !== 'inches' ? '_in' : '');
