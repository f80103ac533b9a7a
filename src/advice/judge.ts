/** A candidate meets the rules: how many verdicts of each kind, and every verdict with its reason when it is read. */
import { axesOf, BUCKLE, LENGTH, STRANDS, STYLE } from '../fit/axes.ts';
import type { Candidate } from '../fit/candidate.ts';
import type { LaidCandidate } from '../fit/lay.ts';
import { rules } from '../rules/registry.ts';
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
  /** One for each rule, in the registry's order, with reasons: judged anew when read, since rules are pure. */
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

function groupRules(facts: CaseFacts): Group[] {
  const byAxes = new Map<number, AnyRule[]>();
  for (const rule of rules) {
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
  return looks.reduce((sum, part) => (still.includes(part) ? sum : sum | axesOf[part]), 0);
}

/*
 * A tally is one whole number with five bits for each judgement, so that adding tallies adds their counts. Hundreds of
 * candidates each keep one: as objects they cost more to collect than to judge.
 */
const MASK = 31;
/** No count of verdicts reaches this. */
export const MOST_RULES = MASK + 1;
const unitOf: Readonly<Record<Judgement, number>> = {
  refuse: 1,
  poor: 1 << 5,
  'cannot-tell': 1 << 10,
  acceptable: 1 << 15,
  good: 1 << 20,
  'not-applicable': 1 << 25,
};

/** Judges the candidates of one order. */
export class Judge {
  readonly #facts: CaseFacts;
  readonly #sizes: Sizes;
  readonly #tables: readonly Table[];
  /** Place in `judgements` of one rule's verdict, by the rule's id. */
  readonly #ofRule = new Map<string, Table>();

  /**
   * A tally is reused among candidates that agree on all that its rules look at: most rules see a few lengths or
   * buckles, not hundreds of candidates.
   * @param sizes how many different choices the candidates have; at least as many as there are
   */
  constructor(facts: CaseFacts, sizes: Sizes) {
    this.#facts = facts;
    this.#sizes = sizes;
    const alone = groupRules(facts).map(
      ({ axes, rules }) => new Table({ axes, read: tallyOf(rules, facts) }, sizes),
    );
    const within = (axes: number): Table[] => alone.filter((table) => (table.axes & ~axes) === 0);
    const joined = (axes: number, tables: Table[]): Table =>
      new Table({ axes, read: (candidate) => sumOf(tables, candidate) }, sizes);
    const make = within(STYLE | STRANDS | BUCKLE);
    const hang = within(BUCKLE | LENGTH).filter((table) => !make.includes(table));
    const rest = alone.filter((table) => !make.includes(table) && !hang.includes(table));
    // Two tallies cover most rules, each kept as a whole; the few rules that look at more stand alone.
    this.#tables = [joined(STYLE | STRANDS | BUCKLE, make), joined(BUCKLE | LENGTH, hang), ...rest];
  }

  /** How many verdicts of each kind, packed. */
  tallyOf(candidate: LaidCandidate): number {
    return sumOf(this.#tables, candidate);
  }

  /** The candidate with its verdicts; `tally` is what `tallyOf` said of it. */
  judged(candidate: LaidCandidate, tally = this.tallyOf(candidate)): Judged {
    return new JudgedCandidate(candidate, tally, this);
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
  const unable = (members.length - able.length) * unitOf['cannot-tell'];
  return (candidate) => {
    let tally = unable;
    for (let i = 0; i < able.length; i++) {
      const rule = able[i] as AnyRule;
      const { judgement } = rule.judge(facts, candidate);
      const elsewhere = rule.ownCriterion === true && judgement === 'acceptable';
      tally += unitOf[elsewhere ? 'good' : judgement];
    }
    return tally;
  };
}

/** How many verdicts of a kind a tally counts. */
export const countIn = (tally: number, judgement: Judgement): number => (tally / unitOf[judgement]) & MASK;

class JudgedCandidate implements Judged {
  readonly candidate: LaidCandidate;
  private readonly tally: number;
  private readonly judge: Judge;

  constructor(candidate: LaidCandidate, tally: number, judge: Judge) {
    this.candidate = candidate;
    this.tally = tally;
    this.judge = judge;
  }

  get findings(): readonly Finding[] {
    return this.judge.findingsOf(this.candidate);
  }

  countOf(judgement: Judgement): number {
    return countIn(this.tally, judgement);
  }

  judgementOf(id: string): Judgement | undefined {
    return this.judge.judgementOf(id, this.candidate);
  }
}

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
