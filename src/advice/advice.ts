/** The whole of what the shop can say about one order. */
import type { Assumption } from '../horse/estimate.ts';
import { assumptionsOf, type Facts } from '../horse/facts.ts';
import { evenNeighbors } from '../horse/length.ts';
import { photoRemarks } from '../horse/photo-remarks.ts';
import { tapeRemarks } from '../horse/tape-remarks.ts';
import type { Shop, Style } from '../order/types.ts';
import type { CaseFacts } from '../rules/rule.ts';
import { cautions } from '../numbers/cautions.ts';
import { styleIds } from '../cinch/styles.ts';
import type { Phrase } from '../units/phrase.ts';
import { criteriaFor, type Criterion } from './criteria.ts';
import { caseFactsOf } from './current.ts';
import type { Judged } from './judge.ts';
import { make, type Tied } from './make.ts';
import { asksFor, firstAskFor, type Ask } from './measure-next.ts';
import { rank, whyBefore } from './rank.ts';
import { refusedOf, type Refused } from './refused.ts';
import { otherStyles, type OtherStyle } from './straight-or-roper.ts';
import { wayOut, type WayOut } from './way-out.ts';
import { hasCloseGroove, mustHeal, welfareOf } from './welfare.ts';

/** A spec of the short list: a style and strand count as the maker would tie it. */
export interface RankedSpec extends Judged {
  readonly rank: number;
  /** Why it comes before the next one; undefined when there is no next. */
  readonly becauseOf: { readonly criterion: string; readonly words: Phrase } | undefined;
  /** Both even neighbors of its length, as far as the shop ties them, with the latigo run each leaves. */
  readonly evenLengths: readonly { readonly length: number; readonly run: number }[];
}

/** Two plain steps: make each style and strand count as a maker would, then rank what passes. Pure; never throws behind the door. */
export const adviceOn = (facts: Facts, shop: Shop): Advice => new Advice(caseFactsOf(facts, shop));

/** What can be said about one order; what not every reader wants is computed when it is read. */
export class Advice {
  readonly facts: CaseFacts;
  readonly cautions = cautions;
  /** One spec for each style and strand count that passes, best first. */
  readonly specs: readonly RankedSpec[];
  readonly #tied: readonly Tied[];
  readonly #criteria: readonly Criterion[];
  #ask: readonly Ask[] | undefined;
  #refused: readonly Refused[] | undefined;

  constructor(facts: CaseFacts) {
    this.facts = facts;
    this.#tied = make(facts);
    const made = this.#tied.flatMap(({ made }) => (made === undefined ? [] : [made]));
    this.#criteria = criteriaFor(facts, made);
    const ranked = rank(made, this.#criteria);
    this.specs = ranked.map((entry, i) => this.#spec(entry, i + 1, ranked[i + 1]));
  }

  #spec(entry: Judged, rank: number, next: Judged | undefined): RankedSpec {
    const { facts } = this;
    const criteria = this.#criteria;
    return {
      rank,
      candidate: entry.candidate,
      judgementOf: entry.judgementOf,
      get findings() {
        return entry.findings;
      },
      get becauseOf() {
        return next === undefined ? undefined : whyBefore(entry, next, criteria);
      },
      get evenLengths() {
        return evenNeighbors(entry.candidate.length, facts.lengthNeed, facts.shop.lengths);
      },
    };
  }

  get first(): RankedSpec | undefined {
    return this.specs[0];
  }

  /** The criterion by which the first spec comes before this one, and why; only for one that is not the first. */
  firstBefore(spec: RankedSpec): { criterion: string; words: Phrase } {
    return whyBefore(this.first ?? spec, spec, this.#criteria);
  }

  /** Straight or roper? What each style not chosen would be here, and why it is not first. */
  get otherStyles(): readonly OtherStyle[] {
    return otherStyles(this);
  }

  /** What must be said before any cinch is; empty for a sound horse. */
  get welfare(): readonly Phrase[] {
    return welfareOf(this.facts);
  }

  /** Whether skin is hurt and must heal before any riding. */
  get mustHeal(): boolean {
    return mustHeal(this.facts);
  }

  get assumptions(): readonly Assumption[] {
    return assumptionsOf(this.facts, this.facts.shop.learned?.stretch);
  }

  /** Where tapes disagree, or a photo and a tape. */
  get remarks(): readonly Phrase[] {
    return [...tapeRemarks(this.facts), ...this.photoRemarks];
  }

  /** Of these what the photo says. */
  get photoRemarks(): readonly Phrase[] {
    return photoRemarks(this.facts);
  }

  /** Every style and strand count: those that pass best first, then each other one as it would be tied all the same. */
  get every(): readonly Judged[] {
    const failed = this.#tied.flatMap((tied) => (tied.made === undefined ? [tied.ways()[0]] : []));
    return [...this.specs, ...failed.filter((judged) => judged !== undefined)];
  }

  get refused(): readonly Refused[] {
    return (this.#refused ??= this.#tied.flatMap(refusedOf));
  }

  /** The first of the refused, when nothing passes: a row of many orders has room for one. */
  get firstRefused(): Refused | undefined {
    return this.first === undefined ? this.refused[0] : undefined;
  }

  /** Whether no buckle of the shop takes any strand count it ties: then nothing was tried. */
  get noBuckle(): boolean {
    return !this.#tied.some(({ hasBuckle }) => hasBuckle);
  }

  /** Styles that cannot be tied at all on this horse: there is no side left below the buckle. */
  get impossible(): readonly Style[] {
    const tied = new Set(
      [...this.specs.map(({ candidate }) => candidate), ...this.refused].map(({ style }) => style),
    );
    return styleIds.filter((style) => !tied.has(style));
  }

  /** Whether the groove lies so close behind the elbow, or the saddle creeps so, that a ring further back is no remedy. */
  get closeGroove(): boolean {
    return hasCloseGroove(this.facts);
  }

  /** Only when nothing passes, and not where that would drag the saddle on: how far back the ring would have to hang. */
  get wayOut(): WayOut | undefined {
    return this.first !== undefined || this.closeGroove ? undefined : wayOut(this.facts);
  }

  /** What to measure first. */
  get firstAsk(): Pick<Ask, 'input' | 'how'> | undefined {
    return firstAskFor(this.facts, this.first);
  }

  /** What to measure next, most worth first. */
  get ask(): readonly Ask[] {
    return (this.#ask ??= asksFor(this.facts, this.specs));
  }
}
