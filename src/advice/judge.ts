/** A candidate meets the rules: how many verdicts of each kind, and every verdict with its reason when it is read. */
import { ALL, axesOf, BUCKLE, LENGTH, STRANDS, STYLE } from '../fit/axes.ts';
import type { Candidate } from '../fit/candidate.ts';
import type { Buckle } from '../order/types.ts';
import { rules } from '../rules/registry.ts';
import type { AnyRule, CaseFacts, Judgement, Verdict } from '../rules/rule.ts';
import { styles } from '../stock/styles.ts';
import { say, type Phrase } from '../units/phrase.ts';

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

/** Judges candidates of one order. */
export type Judge = (candidate: Candidate) => Judged;

/** Rules whose verdict depends on the same choices of the tier. */
interface Group {
  readonly axes: number;
  readonly rules: readonly AnyRule[];
}

const byId = new Map(rules.map((rule) => [rule.id, rule]));
const groups: readonly Group[] = groupRules();

function groupRules(): Group[] {
  const byAxes = new Map<number, AnyRule[]>();
  for (const rule of rules) {
    const axes = rule.looks.reduce((sum, part) => sum | axesOf[part], 0);
    const others = byAxes.get(axes);
    if (others === undefined) byAxes.set(axes, [rule]);
    else others.push(rule);
  }
  return [...byAxes].map(([axes, members]) => ({ axes, rules: members }));
}

/*
 * A tally is one whole number with five bits for each judgement, so that adding tallies adds their counts. Hundreds of
 * candidates each keep one: as objects they cost more to collect than to judge.
 */
const MASK = 31;
const unitOf: Readonly<Record<Judgement, number>> = {
  refuse: 1,
  poor: 1 << 5,
  'cannot-tell': 1 << 10,
  acceptable: 1 << 15,
  good: 1 << 20,
  'not-applicable': 1 << 25,
};

/** Tally of some rules on a candidate. */
type Tally = (candidate: Candidate) => number;

/**
 * A judge for the candidates of one order. A tally is reused among candidates that agree on all that its rules look
 * at: most rules see a few lengths or buckles, not hundreds of candidates.
 */
export function judgeFor(facts: CaseFacts): Judge {
  const numberOf = numbering();
  const alone = groups.map((group) => ({ axes: group.axes, tally: tallyOf(group, facts) }));
  const within = (axes: number): Tally =>
    sumOf(alone.filter((part) => (part.axes & ~axes) === 0).map(cached));
  function cached({ axes, tally }: { axes: number; tally: Tally }): Tally {
    return remembered(tally, (candidate) => numberOf(candidate, axes));
  }
  // Two tallies cover most rules, each kept as a whole; the few rules that look at more stand alone.
  const byMake = STYLE | STRANDS | BUCKLE;
  const byHang = BUCKLE | LENGTH;
  const rest = alone.filter(({ axes }) => (axes & ~byMake) !== 0 && (axes & ~byHang) !== 0);
  const onlyHang = alone.filter(({ axes }) => (axes & ~byMake) !== 0 && (axes & ~byHang) === 0);
  const makeTally = cached({ axes: byMake, tally: within(byMake) });
  const hangTally = cached({ axes: byHang, tally: sumOf(onlyHang.map(cached)) });
  const restTally = sumOf(rest.map((part) => (part.axes === ALL ? part.tally : cached(part))));
  return (candidate) =>
    new JudgedCandidate(candidate, makeTally(candidate) + hangTally(candidate) + restTally(candidate), facts);
}

const sumOf =
  (parts: readonly Tally[]): Tally =>
  (candidate) => {
    let sum = 0;
    for (let i = 0; i < parts.length; i++) sum += (parts[i] as Tally)(candidate);
    return sum;
  };

function remembered(tally: Tally, keyOf: (candidate: Candidate) => number): Tally {
  const known = new Map<number, number>();
  return (candidate) => {
    const key = keyOf(candidate);
    let value = known.get(key);
    if (value === undefined) known.set(key, (value = tally(candidate)));
    return value;
  };
}

/** Gives each candidate a number for any set of axes: equal numbers, equal choices on those axes. */
function numbering(): (candidate: Candidate, axes: number) => number {
  const buckles = new Map<Buckle, number>();
  const lengths = new Map<number, number>();
  return ({ style, strands, buckle, length }, axes) =>
    (axes & STYLE ? styles[style].effort : 0) +
    (axes & STRANDS ? strands * 4 : 0) +
    (axes & LENGTH ? place(lengths, length) * 1024 : 0) +
    (axes & BUCKLE ? place(buckles, buckle) * 65536 : 0);
}

function place<K>(places: Map<K, number>, key: K): number {
  const known = places.get(key);
  if (known !== undefined) return known;
  places.set(key, places.size);
  return places.size - 1;
}

/** Tally of a group's rules; those that miss a fact cannot tell, whatever the candidate. */
function tallyOf(group: Group, facts: CaseFacts): Tally {
  const able = group.rules.filter(({ reads }) => firstMissing(reads, facts) === undefined);
  const unable = (group.rules.length - able.length) * unitOf['cannot-tell'];
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

class JudgedCandidate implements Judged {
  declare readonly candidate: Candidate;
  declare private readonly tally: number;
  declare private readonly facts: CaseFacts;

  constructor(candidate: Candidate, tally: number, facts: CaseFacts) {
    this.candidate = candidate;
    this.tally = tally;
    this.facts = facts;
  }

  get findings(): readonly Finding[] {
    return rules.map((rule) => {
      const { judgement, reason, margin } = verdict(rule, this.facts, this.candidate);
      return { rule: rule.id, judgement, reason: reason(), margin };
    });
  }

  countOf(judgement: Judgement): number {
    return Math.floor(this.tally / unitOf[judgement]) & MASK;
  }

  judgementOf(id: string): Judgement | undefined {
    const rule = byId.get(id);
    return rule === undefined ? undefined : verdict(rule, this.facts, this.candidate).judgement;
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
