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

/** Tally of some rules on a candidate whose choices are numbered. */
type Tally = (candidate: Candidate, choices: Choices) => number;

/** The tier's choices as small numbers: equal numbers, equal choices. */
interface Choices {
  style: number;
  strands: number;
  length: number;
  buckle: number;
}

/**
 * A judge for the candidates of one order. A tally is reused among candidates that agree on all that its rules look
 * at: most rules see a few lengths or buckles, not hundreds of candidates.
 */
export function judgeFor(facts: CaseFacts): Judge {
  const alone = groups.map((group) => ({ axes: group.axes, tally: tallyOf(group, facts) }));
  const within = (axes: number): Part[] => alone.filter((part) => (part.axes & ~axes) === 0);
  const byMake = STYLE | STRANDS | BUCKLE;
  const byHang = BUCKLE | LENGTH;
  const make = within(byMake);
  const hang = within(byHang).filter((part) => !make.includes(part));
  const rest = alone.filter((part) => !make.includes(part) && !hang.includes(part));
  // Two tallies cover most rules, each kept as a whole; the few rules that look at more stand alone.
  const tally = sumOf([
    remembered({ axes: byMake, tally: sumOf(make.map(remembered)) }),
    remembered({ axes: byHang, tally: sumOf(hang.map(remembered)) }),
    ...rest.map((part) => (part.axes === ALL ? part.tally : remembered(part))),
  ]);
  const choicesOf = numbering();
  return (candidate) => new JudgedCandidate(candidate, tally(candidate, choicesOf(candidate)), facts);
}

interface Part {
  readonly axes: number;
  readonly tally: Tally;
}

const sumOf =
  (parts: readonly Tally[]): Tally =>
  (candidate, choices) => {
    let sum = 0;
    for (let i = 0; i < parts.length; i++) sum += (parts[i] as Tally)(candidate, choices);
    return sum;
  };

/** The same tally for candidates that agree on the axes; the weights make one number of the choices that matter. */
function remembered({ axes, tally }: Part): Tally {
  const known = new Map<number, number>();
  const style = axes & STYLE ? 1 : 0;
  const strands = axes & STRANDS ? 4 : 0;
  const length = axes & LENGTH ? 1024 : 0;
  const buckle = axes & BUCKLE ? 65536 : 0;
  return (candidate, choices) => {
    const key =
      choices.style * style + choices.strands * strands + choices.length * length + choices.buckle * buckle;
    let value = known.get(key);
    if (value === undefined) known.set(key, (value = tally(candidate, choices)));
    return value;
  };
}

/** Numbers the choices of each candidate; the numbers are written over by the next one. */
function numbering(): (candidate: Candidate) => Choices {
  const buckles = new Map<Buckle, number>();
  const lengths = new Map<number, number>();
  const choices: Choices = { style: 0, strands: 0, length: 0, buckle: 0 };
  return ({ style, strands, buckle, length }) => {
    choices.style = styles[style].effort;
    choices.strands = strands;
    choices.length = place(lengths, length);
    choices.buckle = place(buckles, buckle);
    return choices;
  };
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
