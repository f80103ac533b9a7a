/** Judges a wanted or current cinch, and finds the smallest change that passes. */
import type { Candidate, Spec } from '../cinch/candidate.ts';
import { lay } from '../cinch/lay.ts';
import { sideOf } from '../cinch/side.ts';
import type { Buckle, CinchAsked, Shop } from '../order/types.ts';
import type { CaseFacts } from '../rules/rule.ts';
import { bySize, layersOn, strandsAway } from '../cinch/buckles.ts';
import { nearestWord } from '../units/nearest.ts';
import { say, type Phrase } from '../units/phrase.ts';
import type { Advice, RankedSpec } from './advice.ts';
import { overBuckles, type Tried } from './any-buckle.ts';
import { causesOf, causesUnlaid, type Cause } from './causes.ts';
import { judge, passes, type Judged } from './judge.ts';
import { evenLength } from '../rules/usual-length.ts';

export type CheckedWhich = 'wants' | 'current' | 'command line';
export type CinchPart = 'style' | 'strands' | 'buckle' | 'length';

export interface Checked {
  readonly which: CheckedWhich;
  readonly asked: CinchAsked;
  /** Parts the command line left to the order. */
  readonly kept?: readonly CinchPart[] | undefined;
  /** Undefined when it does not fit; `cannot` says why. */
  readonly judged: Judged | undefined;
  readonly cannot: Phrase | undefined;
  /** Parts we filled in. */
  readonly filled: readonly {
    readonly part: CinchPart;
    readonly taken: string | number;
  }[];
  readonly passes: boolean;
  /** Undefined when it passes or nothing does. */
  readonly nearest: RankedSpec | undefined;
  /** For the current cinch. */
  readonly causes: readonly Cause[];
}

/** An unknown buckle is ruled out, not thrown. */
export function checkCinch(asked: CinchAsked, which: CheckedWhich, advice: Advice): Checked {
  const { facts } = advice;
  const { spec: usual, cannot, like } = specOf(asked, advice);
  const { spec, judged } = layAndJudge(usual, { asked, which, facts });
  const pass = judged !== undefined && passes(judged);
  const near = spec ?? like;
  return {
    which,
    asked,
    judged,
    filled: spec === undefined ? [] : filledIn(asked, spec),
    passes: pass,
    cannot:
      judged === undefined
        ? (cannot ?? say`at that length there is no room below the buckle for a low flare`)
        : undefined,
    nearest: pass || near === undefined ? undefined : nearestPassing(near, worthOffering(advice.specs)),
    causes:
      which !== 'current' ? [] : judged === undefined ? causesUnlaid(facts) : causesOf(judged, facts, asked),
  };
}

interface Asking {
  readonly asked: CinchAsked;
  readonly which: CheckedWhich;
  readonly facts: CaseFacts;
}

/** Tries every buckle when the current one is not named. */
function layAndJudge(spec: Spec | undefined, { asked, which, facts }: Asking): Partial<Tried> {
  if (spec === undefined) return {};
  const side = sideOf(facts);
  const judged = (each: Spec): Judged | undefined => {
    const candidate = lay(each, side);
    return candidate === undefined ? undefined : judge(candidate, facts);
  };
  if (which === 'current' && asked.buckle === undefined) return overBuckles(spec, facts.shop.buckles, judged);
  return { spec, judged: judged(spec) };
}

interface Filled {
  readonly like?: Spec | undefined;
  readonly spec: Spec | undefined;
  readonly cannot: Phrase | undefined;
}

/** Fills in from the best spec that agrees, else the shop file. */
function specOf(named: CinchAsked, advice: Advice): Filled {
  const { shop } = advice.facts;
  const asked = withStyle(named);
  const agrees = ({ style, strands }: Candidate): boolean =>
    (asked.style ?? style) === style && (asked.strands ?? strands) === strands;
  const like = advice.specs.find(({ candidate }) => agrees(candidate))?.candidate;
  const strands = asked.strands ?? like?.strands;
  if (strands === undefined) return cannotBe(say`no strand count given`);
  const { buckle: id } = asked;
  const buckle = buckleFor(id, { strands, like, shop });
  if (buckle === undefined) {
    const { spec } = specOf({ ...asked, buckle: undefined }, advice);
    return { ...cannotBe(noSuchBuckle(id ?? '', shop)), like: spec };
  }
  const style = asked.style ?? like?.style ?? 'straight';
  const length = asked.length ?? usualLength(like ?? advice.specs[0]?.candidate, advice);
  const spec = { style, strands, buckle, length, layers: layersOn(buckle, strands) ?? 0 } as const;
  return { spec, cannot: undefined };
}

/** Takes an unnamed style as straight, nearest the elbow, so a guess cannot pass. */
const withStyle = (asked: CinchAsked): CinchAsked =>
  asked.style === undefined && asked.strands !== undefined ? { ...asked, style: 'straight' } : asked;

function filledIn(asked: CinchAsked, { style, strands, buckle, length }: Spec): Checked['filled'] {
  const taken = { style, strands, buckle: buckle.id, length };
  return parts.flatMap((part) => (asked[part] === undefined ? [{ part, taken: taken[part] }] : []));
}

function noSuchBuckle(id: string, { buckles }: Shop): Phrase {
  const near = nearestWord(
    id,
    buckles.map((buckle) => buckle.id),
  );
  return near === undefined
    ? say`the shop file has no buckle called ${id}`
    : say`the shop file has no buckle called ${id}; did you mean ${near}?`;
}

const cannotBe = (cannot: Phrase): Filled => ({ spec: undefined, cannot });

const parts = ['style', 'strands', 'buckle', 'length'] as const;

interface BuckleScene {
  readonly strands: number;
  readonly like: Candidate | undefined;
  readonly shop: Shop;
}

/** The named buckle, else the matching spec's, else the smallest that comes closest. */
function buckleFor(id: string | undefined, { strands, like, shop }: BuckleScene): Buckle | undefined {
  if (id !== undefined) return shop.buckles.find((buckle) => buckle.id === id);
  if (like !== undefined) return like.buckle;
  const sorted = [...shop.buckles].sort(bySize);
  const away = (buckle: Buckle): number => strandsAway(buckle, strands);
  return sorted.reduce<Buckle | undefined>(
    (best, buckle) => (best === undefined || away(buckle) < away(best) ? buckle : best),
    undefined,
  );
}

/** The matching spec's, else the even length nearest the target. */
const usualLength = (like: Candidate | undefined, { facts: { lengthNeed, shop } }: Advice): number =>
  like?.length ?? Math.min(shop.lengths.max, Math.max(shop.lengths.min, evenLength(lengthNeed.target.value)));

/** Specs poor at the elbow only when all are. */
function worthOffering(specs: readonly RankedSpec[]): readonly RankedSpec[] {
  const better = specs.filter((spec) => spec.judgementOf('elbow-clearance') !== 'poor');
  return better.length > 0 ? better : specs;
}

/** Same style first, then nearest in strands, then best ranked. */
function nearestPassing(spec: Spec, specs: readonly RankedSpec[]): RankedSpec | undefined {
  const away = ({ candidate }: RankedSpec): number =>
    (candidate.style === spec.style ? 0 : 1000) + Math.abs(candidate.strands - spec.strands);
  return [...specs].sort((a, b) => away(a) - away(b))[0];
}
