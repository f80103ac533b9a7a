/** Names of table columns and JSON keys, one per thing. */

/**
 * `in` inches, `n` count, `chance` and `share` 0 to 1, `money` exact decimals, `day` 2026-12-18, `yes` true or
 * false (yes or no in a table); empty is text.
 */
export type NameUnit = '' | 'in' | 'n' | 'chance' | 'share' | 'minutes' | 'money' | 'day' | 'yes';

export interface Named {
  readonly unit: NameUnit;
  /** Empty when the name says it. */
  readonly about: string;
  /** In JSON, if it differs from the name. */
  readonly path: readonly string[];
}

type Entry = readonly [unit: NameUnit, about: string, path?: string];

const entries = {
  list: ['', 'which list the row is of'],
  order: ['', 'number or name of the order'],
  customer: ['', 'name of the customer'],
  phone: ['', ''],
  email: ['', ''],
  horse: ['', 'name of the horse'],
  file: ['', 'the file it came from'],
  document: ['n', 'which order of that file, from 1'],
  line: ['n', 'line of that file, from 1; of an order its first'],
  due: ['day', 'day it is due'],
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
  rank: ['n', 'rank, 1 is best'],
  standing: [
    '',
    'passes; not sure: chance under 0.6 at the elbow, or we cannot tell how it or the buckle fits; refused',
  ],
  style: ['', 'straight, high-flare or low-flare'],
  strands: ['n', 'body strands side by side'],
  layers: ['n', '1 single, 2 double'],
  width: ['in', 'width of the body at full spread'],
  buckleWidth: ['in', 'width of the body at the buckle'],
  flareStart: ['in', 'how far below the buckle a roper begins to widen; empty for a straight'],
  buckle: ['', 'the buckle by its name in the shop file'],
  length: [
    'in',
    'finished length, outside to outside of the hardware; for cord, of everything the row counts',
  ],
  lengthBasis: ['', 'taped: ring to ring was measured; provisional: do not cut until it is'],
  clearance: ['in', 'elbow clearance, where it is least sure', 'clearance.inches'],
  clearanceSd: ['in', 'its spread', 'clearance.sd'],
  chance: ['chance', 'chance of at least the clearance it needs', 'clearance.chance'],
  latigoRun: ['in', 'ring-to-buckle gap on each side', 'latigoRun.inches'],
  becauseOf: ['', 'why this spec comes before the next one', 'becauseOf.text'],
  findings: ['', 'rules that find it less than good, with the judgement'],
  ask: ['', 'what to measure next, and how'],
  rule: ['', ''],
  judgement: ['', 'good, acceptable, poor, refuse, not-applicable or cannot-tell'],
  margin: ['', 'how far from the nearest bound, in the unit of the thing judged'],
  text: ['', ''],
  question: ['', ''],
  mayRefuse: ['yes', 'whether it can rule a cinch out'],
  can: ['', ''],
  basis: ['', 'on whose word, or how we know'],
  evidence: ['', ''],
  since: ['', ''],
  advice: ['', 'ask, instead (a photo, instead of what it shows) or leave (not worth asking)'],
  input: ['', 'what is measured, or could be'],
  beforeCutting: ['yes', 'whether it must be known before cord is cut'],
  gain: [
    'chance',
    'expected gain in the chance that the cinch clears the elbow at the right length',
    'gain.mean',
  ],
  gainStandardError: ['chance', '', 'gain.standardError'],
  changes: ['chance', 'chance that the answer changes our pick or a verdict', 'changes.mean'],
  changesStandardError: ['chance', '', 'changes.standardError'],
  wider: ['chance', 'chance that our pick is wider then', 'wider.mean'],
  how: ['', ''],
  safely: ['', ''],
  picture: ['', 'the picture, as the order names it', 'picture.file'],
  measure: ['', 'which length the photo shows'],
  inches: ['in', ''],
  sd: ['', ''],
  click: ['share', 'share of the variance from clicking', 'shares.click'],
  scale: ['share', 'the same from scale', 'shares.scale'],
  depth: ['share', 'the same from depth', 'shares.depth'],
  yaw: ['share', 'the same from yaw', 'shares.yaw'],
  tilt: ['share', 'the same from tilt', 'shares.tilt'],
  roll: ['share', 'the same from roll', 'shares.roll'],
  color: ['', ''],
  id: ['', 'hardware by its name in the shop file'],
  ply: ['n', '8 body cord, 2 accent cord'],
  lot: ['', 'dye lot; empty where not given or not yet bought'],
  origin: ['', 'remnant, shelf, bought or short'],
  putUp: [
    'in',
    'length of the spool or hank a piece is cut from, or of one to buy: in JSON `length` of `putUps` and `buy`',
  ],
  copy: ['n', 'which of several alike spools or hanks'],
  count: ['n', 'pieces; in a quote as `per` says'],
  needed: ['n', ''],
  onHand: ['n', ''],
  short: ['n', ''],
  note: ['', 'what it is for, or why it is taken'],
  minutes: ['minutes', ''],
  bench: ['', ''],
  startDay: ['day', ''],
  endDay: ['day', ''],
  promise: ['day', 'the due day if we make it, else the day it is done'],
  lateDays: ['n', 'working days after the due day'],
  shelf: ['', 'judgement of the rule stock: good when all of it is on the shelf'],
  day: ['day', 'day of the paper'],
  validUntil: ['day', ''],
  currency: ['', 'ISO 4217'],
  materialsCost: ['money', 'cord, buckles, and percents of them'],
  laborCost: ['money', ''],
  optionsCost: ['money', ''],
  rushCost: ['money', ''],
  subtotal: ['money', 'sum of the four before it; amounts are for all cinches of the order'],
  tax: ['money', 'all taxes'],
  total: ['money', 'with tax; empty while anything has no price'],
  deposit: ['money', ''],
  balance: ['money', 'total less deposit'],
  invoice: ['', 'number of the invoice; empty for a quote'],
  paid: ['money', 'what was paid'],
  amountDue: ['money', 'total less what was paid'],
  remarks: ['', 'where its measurements disagree: what to measure again'],
  welfare: ['', 'what comes before any cinch: a sore heals first, a vet or a saddle fitter is asked'],
  column: ['n', ''],
  key: ['', ''],
  found: ['', ''],
  expected: ['', ''],
  hint: ['', ''],
  reason: ['', 'why there is none'],
  sameNumberAs: ['', 'file and line of the first order with the same number, if this is a later one'],
  problem: [
    '',
    'of a faulty order: line, column and key of the first error, what we found, what we expected',
  ],
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

/** "buckleWidth" -> "buckle_width_in". */
export const headOf = (name: Name): string =>
  inWords(name).replaceAll(' ', '_') + (names[name].unit === 'in' && name !== 'inches' ? '_in' : '');
