/** The whole of what the shop can say about one order. */
import { assumptionsOf, type Facts } from '../facts/facts.ts';
import { photoRemarks } from '../facts/photo-remarks.ts';
import { tapeRemarks } from '../facts/tape-remarks.ts';
import type { Assumption } from '../facts/estimate.ts';
import { runFor } from '../facts/length.ts';
import type { Shop, Style } from '../order/types.ts';
import type { Candidate } from '../fit/candidate.ts';
import type { CaseFacts, Judgement } from '../rules/rule.ts';
import { shelfOf } from '../stock/shelf.ts';
import { styleIds } from '../stock/styles.ts';
import { cautions } from '../sources/cautions.ts';
import type { Phrase } from '../units/phrase.ts';
import { asksFor, firstAskFor, type Ask } from './measure-next.ts';
import { bestOfEach } from './best.ts';
import { criteriaFor, type Criterion } from './criteria.ts';
import type { Finding, Judged } from './judge.ts';
import { rank, whyBefore } from './rank.ts';
import { passes, refusedOf, type Refused } from './refused.ts';
import { Trial } from './trial.ts';
import { wayOut, type WayOut } from './way-out.ts';

/** A spec of the short list: the best buckle and length for its style and strands. */
export interface RankedSpec extends Judged {
  readonly rank: number;
  /** Why it comes before the next one; undefined when there is no next. */
  readonly becauseOf: { readonly criterion: string; readonly words: Phrase } | undefined;
  /** Both even neighbours of its length, as far as the shop ties them, with the latigo run each leaves. */
  readonly evenLengths: readonly { readonly length: number; readonly run: number }[];
}

/** Candidates meet rules; what passes is ranked. Pure; never throws behind the door. */
export function adviceOn(plain: Facts, shop: Shop): Advice {
  const facts = caseFacts(plain, shop);
  return new Advice(facts, new Trial(facts), criteriaFor(facts));
}

/** Facts with the shop's shelf. Written out, as spreading them takes as long as finding them. */
function caseFacts(plain: Facts, shop: Shop): CaseFacts {
  const { order, model, girth, k, barrel, room, ring, photo, elbowLine, centreLine } = plain;
  const { lengthNeed, slipNeed, elbowStation, elbowHeight, floor, required, spread } = plain;
  const shelf = shelfOf(order, shop);
  return {
    order,
    model,
    girth,
    k,
    barrel,
    room,
    ring,
    photo,
    elbowLine,
    centreLine,
    lengthNeed,
    slipNeed,
    elbowStation,
    elbowHeight,
    floor,
    required,
    spread,
    shop,
    shelf,
  };
}

/** What can be said about one order; what not every reader wants is computed when it is read. */
export class Advice {
  readonly facts: CaseFacts;
  readonly cautions = cautions;
  readonly #trial: Trial;
  readonly #criteria: readonly Criterion[];
  #specs: readonly RankedSpec[] | undefined;
  #all: readonly Judged[] | undefined;
  #ask: readonly Ask[] | undefined;
  #refused: readonly Refused[] | undefined;

  constructor(facts: CaseFacts, trial: Trial, criteria: readonly Criterion[]) {
    this.facts = facts;
    this.#trial = trial;
    this.#criteria = criteria;
  }

  /** One spec for each style and strand count that passes, best first. */
  get specs(): readonly RankedSpec[] {
    return (this.#specs ??= this.#shortList());
  }

  #shortList(): RankedSpec[] {
    const { facts } = this;
    const criteria = this.#criteria;
    const best = bestOfEach(this.#trial, criteria);
    return best.map((entry, i) => new ShortListed(entry, i + 1, { next: best[i + 1], criteria, facts }));
  }

  /** The first of them: all that a row of many orders has room for. */
  get first(): RankedSpec | undefined {
    return this.specs[0];
  }

  /** All, in the order in which they were made. */
  get #judged(): readonly Judged[] {
    return (this.#all ??= this.#trial.all);
  }

  /** Why the first spec comes before this one; only for one that is not the first. */
  whyFirst(spec: RankedSpec): Phrase {
    const [first = spec] = this.specs;
    return whyBefore(first, spec, this.#criteria).words;
  }

  get assumptions(): readonly Assumption[] {
    return withLearned(assumptionsOf(this.facts), this.facts.shop);
  }

  /** Where tapes disagree, or a photo and a tape. */
  get remarks(): readonly Phrase[] {
    return [...tapeRemarks(this.facts), ...this.photoRemarks];
  }

  /** Of these what the photo says. */
  get photoRemarks(): readonly Phrase[] {
    return photoRemarks(this.facts);
  }

  /** Every candidate, passing ones best first, then the refused ones. */
  get every(): readonly Judged[] {
    const judged = this.#judged;
    return [...rank(judged.filter(passes), this.#criteria), ...judged.filter((entry) => !passes(entry))];
  }

  get refused(): readonly Refused[] {
    return (this.#refused ??= refusedOf(this.#judged));
  }

  /** The first of the refused, when nothing passes: a row of many orders has room for one. */
  get firstRefused(): Refused | undefined {
    const [first] = this.#judged;
    if (first === undefined || this.first !== undefined) return undefined;
    const { style, strands } = first.candidate;
    const like = this.#judged.filter(({ candidate: c }) => c.style === style && c.strands === strands);
    return refusedOf(like)[0];
  }

  /** Whether no buckle of the shop takes any strand count it ties: then nothing was tried. */
  get noBuckle(): boolean {
    return this.#trial.size === 0;
  }

  /** Styles that cannot be tied at all on this horse: there is no side left below the buckle. */
  get impossible(): readonly Style[] {
    const tied = new Set(this.#judged.map(({ candidate }) => candidate.style));
    return styleIds.filter((style) => !tied.has(style));
  }

  /** Only when nothing passes: how far back the ring would have to hang before something does. */
  get wayOut(): WayOut | undefined {
    return this.first !== undefined ? undefined : wayOut(this.facts);
  }

  /** What to measure first. */
  get firstAsk(): Pick<Ask, 'input' | 'how'> | undefined {
    return firstAskFor(this.facts, this.first);
  }

  /** What to measure next, most worth first. */
  get ask(): readonly Ask[] {
    return (this.#ask ??= asksFor(this.facts, this.first, this.facts.shop));
  }
}

/** The give of new cord is assumed, unless the shop's own outcomes stand behind it. */
function withLearned(assumptions: readonly Assumption[], { learned }: Shop): readonly Assumption[] {
  const from = learned?.stretch;
  if (from === undefined) return assumptions;
  const basis = `from ${String(from.outcomes)} outcomes of this shop until ${from.until}`;
  return assumptions.map((entry) =>
    entry.input === 'give of new cord' ? { ...entry, kind: 'computed', basis } : entry,
  );
}

interface Place {
  readonly next: Judged | undefined;
  readonly criteria: readonly Criterion[];
  readonly facts: CaseFacts;
}

class ShortListed implements RankedSpec {
  readonly candidate: Candidate;
  readonly rank: number;
  private readonly entry: Judged;
  private readonly place: Place;

  constructor(entry: Judged, rank: number, place: Place) {
    this.candidate = entry.candidate;
    this.rank = rank;
    this.entry = entry;
    this.place = place;
  }

  get findings(): readonly Finding[] {
    return this.entry.findings;
  }

  countOf(judgement: Judgement): number {
    return this.entry.countOf(judgement);
  }

  judgementOf(rule: string): Judgement | undefined {
    return this.entry.judgementOf(rule);
  }

  get becauseOf(): RankedSpec['becauseOf'] {
    const { next, criteria } = this.place;
    return next === undefined ? undefined : whyBefore(this.entry, next, criteria);
  }

  get evenLengths(): RankedSpec['evenLengths'] {
    return evenLengths(this.candidate, this.place.facts);
  }
}

function evenLengths(
  candidate: Candidate,
  { lengthNeed, shop }: CaseFacts,
): { length: number; run: number }[] {
  const below = 2 * Math.floor(lengthNeed.target.value / 2);
  const around =
    candidate.length % 2 === 0 ? [candidate.length - 2, candidate.length + 2] : [below, below + 2];
  const tied = around.filter((length) => length >= shop.lengths.min && length <= shop.lengths.max);
  return tied.map((length) => ({ length, run: runFor(length, lengthNeed) }));
}
