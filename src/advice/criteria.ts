/** What makes one spec come before another: named criteria, one after the other, never added up. */
import { axesOfParts } from '../fit/axes.ts';
import type { Candidate } from '../fit/candidate.ts';
import { rules } from '../rules/registry.ts';
import type { CaseFacts, Judgement } from '../rules/rule.ts';
import { fullWidth, pinchedWidth } from '../stock/outline.ts';
import { styles } from '../stock/styles.ts';
import { area, chance, count, dist, len, say, type Phrase } from '../units/phrase.ts';
import type { Judged } from './judge.ts';

export interface Criterion {
  readonly id: string;
  /** Set when the key is how many rules came to this judgement. */
  readonly counts: Judgement | undefined;
  /** The parts of a candidate that the key follows from, and the rule whose judgement it follows from. */
  readonly looks: readonly (keyof Candidate)[];
  readonly rule: string | undefined;
  /** The choices of the tier behind these parts. */
  readonly axes: number;
  /** Set when the key says the same of what a shop ties in every order. */
  readonly ofShop: boolean;
  /** Set when keys are whole numbers of this range. */
  readonly whole: readonly [least: number, most: number] | undefined;
  /** Smaller comes first. */
  readonly key: (judged: Judged) => number;
  /** Why `a` comes before `b`. */
  readonly because: (a: Judged, b: Judged) => Phrase;
}

type Entry = Pick<Criterion, 'id' | 'key' | 'because'> & Partial<Criterion>;

// Of one shape whatever it says: criteria are read thousands of times an order.
function criterion({ id, counts, looks = [], rule, ofShop = false, whole, key, because }: Entry): Criterion {
  return { id, counts, looks, rule, axes: axesOfParts(looks), ofShop, whole, key, because };
}

/** Widths closer than two 8-ply cords are called equal; so are chances within 5 %. */
const HALF_INCH = 0.5;
const FIVE_PERCENT = 0.05;
/** Surer than this buys nothing that width would not buy better: else the narrowest always came first. */
const SURE_ENOUGH = 0.9;
/** A step is not to be missed by a rounding error. */
const SLACK = 1e-9;

/** Rules that give `judged` this judgement and the other not: what both share does not tell them apart. */
const named = (judged: Judged, other: Judged, judgement: 'poor' | 'acceptable' | 'cannot-tell'): string =>
  judged.findings
    .filter((finding) => finding.judgement === judgement && other.judgementOf(finding.rule) !== judgement)
    .map((finding) => finding.rule.replaceAll('-', ' '))
    .join(', ');

const fewest = (judgement: 'poor' | 'acceptable' | 'cannot-tell'): Criterion => {
  const words =
    judgement === 'cannot-tell'
      ? 'more that nobody can tell'
      : judgement === 'poor'
        ? 'poor'
        : 'only acceptable';
  return criterion({
    id: `fewest ${judgement}`,
    counts: judgement,
    whole: [0, rules.length],
    key: (judged) => judged.countOf(judgement),
    because: (a, b) => say`the other is ${words} on: ${named(b, a, judgement)}`,
  });
};

const fewestPoor = fewest('poor');
const fewestUnknown = fewest('cannot-tell');
const fewestAcceptable = fewest('acceptable');

/** No other merit makes up for an elbow that is less than good. */
const elbowFirst = ({ model }: CaseFacts): Criterion =>
  criterion({
    id: 'good at the elbow',
    looks: ['clearance'],
    whole: [0, 2],
    key: ({ candidate: { clearance } }) =>
      clearance.chance >= model['chance-good'] ? 0 : clearance.chance >= model['chance-acceptable'] ? 1 : 2,
    because: (a, b) =>
      say`surer to clear the elbow: ${chance(a.candidate.clearance.chance)} against ${chance(b.candidate.clearance.chance)}`,
  });

const gripFirst = criterion({
  id: 'holds the saddle',
  looks: ['style'],
  ofShop: true,
  key: ({ candidate }) => (candidate.style === 'high-flare' ? 0 : 1),
  because: () => say`a fan high on the side holds a saddle that slips`,
});

/** Contact areas closer than this are called equal. */
const AREA_STEP = 10;

const mostWidth = ({ shop: { strands }, model }: CaseFacts): number =>
  Math.max(fullWidth(strands.max, model), pinchedWidth(strands.max, model));

const tens = (area: number): number => Math.floor(area / AREA_STEP + SLACK);

const mostAgainstSides = (facts: CaseFacts): Criterion => {
  const longest = facts.shop.lengths.max + facts.lengthNeed.stretch;
  return criterion({
    id: 'more against the sides',
    looks: ['gripArea'],
    // The longest and widest, all of it against the sides.
    whole: [-tens(longest * mostWidth(facts)), 0],
    key: ({ candidate }) => -tens(candidate.gripArea),
    because: (a, b) =>
      say`more of it lies against the sides: ${area(a.candidate.gripArea)} against ${area(b.candidate.gripArea)}`,
  });
};

const steps = (chance: number): number => Math.floor(Math.min(SURE_ENOUGH, chance) / FIVE_PERCENT + SLACK);

const surest = criterion({
  id: 'surest at the elbow',
  looks: ['clearance'],
  whole: [-steps(1), 0],
  key: ({ candidate }) => -steps(candidate.clearance.chance),
  because: (a, b) =>
    say`surer to clear the elbow: ${chance(a.candidate.clearance.chance)} against ${chance(b.candidate.clearance.chance)}`,
});

/** A frame that keeps twice the required clearance is clear enough; a smaller one would only take a narrower cinch. */
const clearOfBuckle = ({ required }: CaseFacts): Criterion =>
  criterion({
    id: 'buckle clear of the elbow',
    looks: ['buckleClearance', 'buckle'],
    key: ({ candidate }) => (candidate.buckleClearance >= 2 * required ? 0 : candidate.buckle.frameWidth),
    because: (a, b) =>
      say`its buckle keeps further from the elbow: ${dist(a.candidate.buckleClearance)} against ${dist(b.candidate.buckleClearance)}`,
  });

const strongEnough = criterion({
  id: 'enough cords to rope from',
  rule: 'roping-strength',
  whole: [0, 1],
  key: (judged) => (judged.judgementOf('roping-strength') === 'good' ? 0 : 1),
  because: (a, b) =>
    say`more cords to rope from: ${count(a.candidate.strands)} strands against ${count(b.candidate.strands)}`,
});

const smallestBuckle = criterion({
  id: 'smaller buckle',
  looks: ['buckle'],
  ofShop: true,
  key: ({ candidate }) => candidate.buckle.frameWidth,
  because: (a, b) => say`a smaller buckle: ${a.candidate.buckle.id} against ${b.candidate.buckle.id}`,
});

const halfInches = (width: number): number => Math.floor(width / HALF_INCH + SLACK);

const widest = (facts: CaseFacts): Criterion =>
  criterion({
    id: 'wider behind the elbow',
    looks: ['elbowWidth'],
    whole: [-halfInches(mostWidth(facts)), 0],
    key: ({ candidate }) => -halfInches(candidate.elbowWidth),
    because: (a, b) =>
      say`wider behind the elbow, which spreads the pressure: ${len(a.candidate.elbowWidth)} against ${len(b.candidate.elbowWidth)}`,
  });

const plainNeed = criterion({
  id: 'a plain cinch for a plain need',
  looks: ['style'],
  ofShop: true,
  key: ({ candidate }) => (styles[candidate.style].effort === 0 ? 0 : 1),
  because: () => say`nothing about this pair asks for a roper`,
});

const onTheShelf = criterion({
  id: 'on the shelf',
  rule: 'stock',
  whole: [0, 1],
  key: (judged) => (judged.judgementOf('stock') === 'good' ? 0 : 1),
  because: () => say`all of it is on the shelf`,
});

const simplest = criterion({
  id: 'simpler to tie',
  looks: ['style', 'layers'],
  ofShop: true,
  key: ({ candidate }) => 10 * styles[candidate.style].effort + candidate.layers,
  because: (a, b) =>
    a.candidate.style === b.candidate.style
      ? say`simpler to tie: a single layer`
      : say`simpler to tie: ${styles[a.candidate.style].name} against ${styles[b.candidate.style].name}`,
});

const nearestRun = (facts: CaseFacts): Criterion =>
  criterion({
    id: 'latigo nearest the target',
    looks: ['run'],
    // Within a quarter of an inch is the same: nobody ties a latigo finer.
    key: ({ candidate }) => Math.round(4 * Math.abs(candidate.run - facts.lengthNeed.runTarget)),
    because: (a, b) =>
      say`its latigo run is nearer the target: ${dist(a.candidate.run)} against ${dist(b.candidate.run)}`,
  });

const nearestThumb = ({ lengthNeed }: CaseFacts): Criterion =>
  criterion({
    id: 'length nearer the rule of thumb',
    looks: ['length'],
    key: ({ candidate }) => Math.abs(candidate.length - lengthNeed.crossCheck),
    because: (a, b) =>
      say`its length is nearer the rule of thumb: ${len(a.candidate.length)} against ${len(b.candidate.length)}`,
  });

const widestFine = criterion({
  id: 'wider',
  looks: ['width'],
  ofShop: true,
  key: ({ candidate }) => -candidate.width,
  because: (a, b) => say`wider: ${len(a.candidate.width)} against ${len(b.candidate.width)}`,
});

/** Which criteria decide for this order, in which order: by its use and the trouble reported. */
export function criteriaFor(facts: CaseFacts): readonly Criterion[] {
  const { trouble } = facts.order.horse;
  const asked: Criterion[] = [];
  const plain = facts.slipNeed.level === 0 && trouble.length === 0 && facts.order.use !== 'roping';
  if (facts.order.use === 'roping') asked.push(strongEnough);
  if (facts.slipNeed.level >= 2) asked.push(gripFirst, mostAgainstSides(facts));
  if (trouble.includes('elbow-gall') || trouble.includes('girthy')) asked.push(surest);
  if (trouble.includes('buckle-rub')) asked.push(clearOfBuckle(facts));
  if (plain) asked.push(plainNeed);
  return [
    fewestPoor,
    fewestUnknown,
    elbowFirst(facts),
    ...asked,
    fewestAcceptable,
    // One saddle, one length: it is settled before the widths, which it hardly touches.
    nearestRun(facts),
    nearestThumb(facts),
    widest(facts),
    onTheShelf,
    simplest,
    widestFine,
    smallestBuckle,
  ];
}
