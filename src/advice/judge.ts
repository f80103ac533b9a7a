/** A candidate meets the rules: how many verdicts of each kind, and every verdict with its reason when it is read. */
import { axesOf, BUCKLE, LENGTH, STRANDS, STYLE } from '../fit/axes.ts';
import type { Candidate } from '../fit/candidate.ts';
import type { LaidCandidate } from '../fit/lay.ts';
import { rules } from '../rules/registry.ts';
import type { Model } from '../sources/numbers.ts';
import type { TiedList } from '../stock/tied.ts';
import { judgements, type AnyRule, type CaseFacts, type Judgement, type Verdict } from '../rules/rule.ts';
import { say, type Phrase } from '../units/phrase.ts';
import { sumOf, Table, type Reading, type Sizes } from './table.ts';

export interface Finding {
  readonly rule: string;
  readonly judgement: Judgement;
  readonly reason: Phrase;
  readonly margin?: number | undefined;
}

export interface Judged {
  readonly candidate: Candidate;
  /** One for each rule, in the registry's order, with reasons. */
  readonly findings: readonly Finding[];
  /** How many rules came to this judgement, as ranking counts them: see `ownCriterion`. */
  readonly countOf: (judgement: Judgement) => number;
  /** Judgement of one rule. */
  readonly judgementOf: (rule: string) => Judgement | undefined;
}

/** Rules whose verdict depends on the same choices of the tier. */
interface Group {
  readonly axes: number;
  readonly rules: readonly AnyRule[];
}

const byId = new Map(rules.map((rule) => [rule.id, rule]));

/** What is tied, and where it hangs. */
const MAKE = STYLE | STRANDS | BUCKLE;
const HANG = BUCKLE | LENGTH;

const isWithin = (axes: number, others: number): boolean => (axes & ~others) === 0;

function groupRules(some: readonly AnyRule[], facts: CaseFacts): Group[] {
  const byAxes = new Map<number, AnyRule[]>();
  for (const rule of some) {
    const axes = axesOfRule(rule, facts);
    const others = byAxes.get(axes);
    if (others === undefined) byAxes.set(axes, [rule]);
    else others.push(rule);
  }
  return [...byAxes].map(([axes, members]) => ({ axes, rules: members }));
}

/** A rule that misses a fact says the same of every candidate. */
function axesOfRule({ looks, reads, idle }: AnyRule, facts: CaseFacts): number {
  if (firstMissing(reads, facts) !== undefined) return 0;
  const still = idle?.(facts) ?? [];
  return axesOfParts(still.length === 0 ? looks : looks.filter((part) => !still.includes(part)));
}

const axesOfParts = (parts: readonly (keyof Candidate)[]): number =>
  parts.reduce((sum, part) => sum | axesOf[part], 0);

/*
 * A tally is one whole number with five bits for each judgement, so that adding tallies adds their counts. Hundreds of
 * candidates each keep one: as objects they cost more to collect than to judge.
 */
const MASK = 31;
const placeOf: Readonly<Record<Judgement, number>> = {
  refuse: 0,
  poor: 5,
  'cannot-tell': 10,
  acceptable: 15,
  good: 20,
  'not-applicable': 25,
};
const unitOf = (judgement: Judgement): number => 1 << placeOf[judgement];

/** Rules that look at the shop alone say the same of its candidates in every order. */
const fixedRules = rules.filter(
  ({ reads, looks, idle }) =>
    idle === undefined &&
    reads.every((fact) => fact === 'shop' || fact === 'model') &&
    isWithin(axesOfParts(looks), MAKE),
);
const otherRules = rules.filter((rule) => !fixedRules.includes(rule));

// A backlog asks the same shop again and again.
const fixed = new WeakMap<TiedList, { readonly model: Model; readonly table: Table }>();

/** What the fixed rules say of what a shop ties, as far as anyone asked; kept as long as the shop. */
function fixedTable({ shop, model }: CaseFacts, sizes: Sizes, list: TiedList): Table {
  const known = fixed.get(list);
  if (known?.model === model) return known.table;
  // These rules read no more of the facts than this.
  const facts = { shop, model } as CaseFacts;
  const table = new Table({ axes: MAKE, read: tallyOf(fixedRules, facts) }, sizes);
  fixed.set(list, { model, table });
  return table;
}

/** Judges the candidates of one order. */
export class Judge {
  readonly #facts: CaseFacts;
  readonly #sizes: Sizes;
  readonly #make: readonly Table[];
  readonly #hang: readonly Table[];
  readonly #rest: readonly Table[];
  /** Place in `judgements` of one rule's verdict, by the rule's id. */
  readonly #ofRule = new Map<string, Table>();

  /**
   * A tally is reused among candidates that agree on all that its rules look at: most rules see a few lengths or
   * buckles, not hundreds of candidates.
   * @param sizes how many different choices the candidates have; at least as many as there are
   * @param list what the shop ties, where candidates have its numbers
   */
  constructor(facts: CaseFacts, sizes: Sizes, list?: TiedList) {
    this.#facts = facts;
    this.#sizes = sizes;
    const alone = groupRules(list === undefined ? rules : otherRules, facts).map(
      ({ axes, rules }) => new Table({ axes, read: tallyOf(rules, facts) }, sizes),
    );
    const make = alone.filter(({ axes }) => isWithin(axes, MAKE));
    const hang = alone.filter(({ axes }) => isWithin(axes, HANG) && !isWithin(axes, MAKE));
    const rest = alone.filter(({ axes }) => !isWithin(axes, MAKE) && !isWithin(axes, HANG));
    if (list !== undefined) make.push(fixedTable(facts, sizes, list));
    this.#make = make;
    this.#hang = hang;
    this.#rest = rest;
  }

  /** How many verdicts of each kind, packed. */
  tallyOf(candidate: LaidCandidate): number {
    return this.ofMake(candidate) + this.ofHang(candidate) + this.ofRest(candidate);
  }

  /** Of rules that look only at the style, the strands and the buckle. */
  ofMake(candidate: LaidCandidate): number {
    return sumOf(this.#make, candidate);
  }

  /** Of rules that look at the buckle and the length. */
  ofHang(candidate: LaidCandidate): number {
    return sumOf(this.#hang, candidate);
  }

  /** Of all others, most of which look at where the cords lie. */
  ofRest(candidate: LaidCandidate): number {
    return sumOf(this.#rest, candidate);
  }

  /** The candidate with its verdicts. */
  judged(candidate: LaidCandidate): Judged {
    return {
      candidate,
      findings: this.findingsOf(candidate),
      countOf: (judgement) => countIn(this.tallyOf(candidate), judgement),
      judgementOf: (rule) => this.judgementOf(rule, candidate),
    };
  }

  findingsOf(candidate: LaidCandidate): Finding[] {
    return rules.map((rule) => {
      const { judgement, reason, margin } = verdict(rule, this.#facts, candidate);
      return { rule: rule.id, judgement, reason: reason(this.#facts, candidate), margin };
    });
  }

  judgementOf(id: string, candidate: LaidCandidate): Judgement | undefined {
    let table = this.#ofRule.get(id);
    if (table === undefined) {
      const rule = byId.get(id);
      if (rule === undefined) return undefined;
      const read: Reading = (c) => judgements.indexOf(verdict(rule, this.#facts, c).judgement);
      this.#ofRule.set(id, (table = new Table({ axes: axesOfRule(rule, this.#facts), read }, this.#sizes)));
    }
    return judgements[table.read(candidate)];
  }
}

/** Tally of a group's rules; those that miss a fact cannot tell, whatever the candidate. */
function tallyOf(members: readonly AnyRule[], facts: CaseFacts): Reading {
  const able = members.filter(({ reads }) => firstMissing(reads, facts) === undefined);
  const unable = (members.length - able.length) * unitOf('cannot-tell');
  return (candidate) => {
    let tally = unable;
    for (let i = 0; i < able.length; i++) {
      const rule = able[i] as AnyRule;
      const { judgement } = rule.judge(facts, candidate);
      const elsewhere = rule.ownCriterion === true && judgement === 'acceptable';
      tally += unitOf(elsewhere ? 'good' : judgement);
    }
    return tally;
  };
}

/** How many verdicts of a kind a tally counts. */
export const countIn = (tally: number, judgement: Judgement): number => (tally >> placeOf[judgement]) & MASK;

/** Whether any verdict of a tally is a refusal. */
export const refuses = (tally: number): boolean => countIn(tally, 'refuse') > 0;

/** A missing fact gives cannot-tell without asking the rule. */
function verdict(rule: AnyRule, facts: CaseFacts, candidate: Candidate): Verdict {
  const missing = firstMissing(rule.reads, facts);
  if (missing === undefined) return rule.judge(facts, candidate);
  return { judgement: 'cannot-tell', reason: () => say`${missing} is not known` };
}

function firstMissing(reads: readonly (keyof CaseFacts)[], facts: CaseFacts): keyof CaseFacts | undefined {
  for (let i = 0; i < reads.length; i++) {
    const key = reads[i] as keyof CaseFacts;
    if ((facts[key] as unknown) === undefined) return key;
  }
  return undefined;
}
