/** Everything the shop can say about one order. */
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

export interface RankedSpec extends Judged {
  readonly rank: number;
  /** Undefined for the last. */
  readonly becauseOf: { readonly criterion: string; readonly words: Phrase } | undefined;
  /** Even lengths around its own, with latigo runs. */
  readonly evenLengths: readonly { readonly length: number; readonly run: number }[];
}

/** Ranks what a maker would tie. Never throws for a checked order. */
export const adviceOn = (facts: Facts, shop: Shop): Advice => new Advice(caseFactsOf(facts, shop));

/** Costly parts are computed on demand. */
export class Advice {
  readonly facts: CaseFacts;
  readonly cautions = cautions;
  /** What passes, one per style and strand count, best first. */
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

  /** Why the first comes before this one. */
  firstBefore(spec: RankedSpec): { criterion: string; words: Phrase } {
    return whyBefore(this.first ?? spec, spec, this.#criteria);
  }

  get otherStyles(): readonly OtherStyle[] {
    return otherStyles(this);
  }

  /** What comes before any cinch; empty for a sound horse. */
  get welfare(): readonly Phrase[] {
    return welfareOf(this.facts);
  }

  /** Broken skin must heal before riding. */
  get mustHeal(): boolean {
    return mustHeal(this.facts);
  }

  get assumptions(): readonly Assumption[] {
    return assumptionsOf(this.facts, this.facts.shop.learned?.stretch);
  }

  /** Where tapes, or photo and tape, disagree. */
  get remarks(): readonly Phrase[] {
    return [...tapeRemarks(this.facts), ...this.photoRemarks];
  }

  get photoRemarks(): readonly Phrase[] {
    return photoRemarks(this.facts);
  }

  /** What passes, best first, then the rest as tied anyway. */
  get every(): readonly Judged[] {
    const failed = this.#tied.flatMap((tied) => (tied.made === undefined ? [tied.ways()[0]] : []));
    return [...this.specs, ...failed.filter((judged) => judged !== undefined)];
  }

  get refused(): readonly Refused[] {
    return (this.#refused ??= this.#tied.flatMap(refusedOf));
  }

  /** When nothing passes. */
  get firstRefused(): Refused | undefined {
    return this.first === undefined ? this.refused[0] : undefined;
  }

  /** No buckle takes any count the shop ties. */
  get noBuckle(): boolean {
    return !this.#tied.some(({ hasBuckle }) => hasBuckle);
  }

  /** Styles without room below the buckle. */
  get impossible(): readonly Style[] {
    const tied = new Set(
      [...this.specs.map(({ candidate }) => candidate), ...this.refused].map(({ style }) => style),
    );
    return styleIds.filter((style) => !tied.has(style));
  }

  /** A ring farther back would not help. */
  get closeGroove(): boolean {
    return hasCloseGroove(this.facts);
  }

  /** How far back the ring must hang, unless that drags the saddle. */
  get wayOut(): WayOut | undefined {
    return this.first !== undefined || this.closeGroove ? undefined : wayOut(this.facts);
  }

  get firstAsk(): Pick<Ask, 'input' | 'how'> | undefined {
    return firstAskFor(this.facts, this.first);
  }

  /** Most useful first. */
  get ask(): readonly Ask[] {
    return (this.#ask ??= asksFor(this.facts, this.specs));
  }
}
