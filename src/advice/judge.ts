/** A candidate meets the rules: how many verdicts of each kind, and every verdict with its reason when it is read. */
import { axesOf, BODY, BUCKLE, CLEARANCE, LENGTH, STRANDS, STYLE } from '../fit/axes.ts';
import type { Candidate } from '../fit/candidate.ts';
import type { LaidCandidate } from '../fit/lay.ts';
import { rules } from '../rules/registry.ts';
import type { AnyRule, CaseFacts, Judgement, Verdict } from '../rules/rule.ts';
import { styleIds } from '../stock/styles.ts';
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
export type Judge = (candidate: LaidCandidate) => Judged;

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
const UNKNOWN = -1;
const unitOf: Readonly<Record<Judgement, number>> = {
  refuse: 1,
  poor: 1 << 5,
  'cannot-tell': 1 << 10,
  acceptable: 1 << 15,
  good: 1 << 20,
  'not-applicable': 1 << 25,
};

/** Tally of some rules on a candidate. */
type Tally = (candidate: LaidCandidate) => number;

/**
 * A judge for the candidates of one order. A tally is reused among candidates that agree on all that its rules look
 * at: most rules see a few lengths or buckles, not hundreds of candidates.
 */
export function judgeFor(facts: CaseFacts): Judge {
  const alone = groups.map(({ axes, rules }) => ({ axes, tally: tallyOf(rules, facts) }));
  const within = (axes: number): Part[] => alone.filter((part) => (part.axes & ~axes) === 0);
  const make = within(STYLE | STRANDS | BUCKLE);
  const hang = within(BUCKLE | LENGTH).filter((part) => !make.includes(part));
  const rest = alone.filter((part) => !make.includes(part) && !hang.includes(part));
  // Two tallies cover most rules, each kept as a whole; the few rules that look at more stand alone.
  const buckles = facts.shop.buckles.length + 1;
  const keep = (part: Part): Tally => remembered(part, buckles);
  const tally = sumOf([
    keep({ axes: STYLE | STRANDS | BUCKLE, tally: sumOf(make.map(keep)) }),
    keep({ axes: BUCKLE | LENGTH, tally: sumOf(hang.map(keep)) }),
    ...rest.map(keep),
  ]);
  return (candidate) => new JudgedCandidate(candidate, tally(candidate), facts);
}

interface Part {
  readonly axes: number;
  readonly tally: Tally;
}

const sumOf =
  (parts: readonly Tally[]): Tally =>
  (candidate) => {
    let sum = 0;
    for (let i = 0; i < parts.length; i++) sum += (parts[i] as Tally)(candidate);
    return sum;
  };

/** How many numbers each choice may have, with room to spare. */
const MOST_STRAND_COUNTS = 24;
const MOST_LENGTHS = 12;
const MOST_BODIES = 256;
/** A table larger than this costs more to make than it saves. */
const LARGEST = 4096;

/** The same tally for candidates that agree on the axes: a table of tallies, addressed by the numbers of their choices. */
function remembered({ axes, tally }: Part, buckles: number): Tally {
  let size = 1;
  const stride = (axis: number, most: number): number => {
    if ((axes & axis) === 0) return 0;
    size *= most;
    return size / most;
  };
  const style = stride(STYLE, styleIds.length);
  const strands = stride(STRANDS, MOST_STRAND_COUNTS);
  const length = stride(LENGTH, MOST_LENGTHS);
  const buckle = stride(BUCKLE, buckles);
  const body = stride(BODY, MOST_BODIES);
  const clearance = stride(CLEARANCE, MOST_BODIES);
  if (size > LARGEST) return tally;
  const known = new Array<number>(size).fill(UNKNOWN);
  return (c) => {
    const key =
      c.styleNo * style +
      c.strandsNo * strands +
      c.buckleNo * buckle +
      c.lengthNo * length +
      c.bodyNo * body +
      c.clearanceNo * clearance;
    const seen = known[key];
    if (seen !== undefined && seen !== UNKNOWN) return seen;
    const found = tally(c);
    if (key < size) known[key] = found;
    return found;
  };
}

/** Tally of a group's rules; those that miss a fact cannot tell, whatever the candidate. */
function tallyOf(members: readonly AnyRule[], facts: CaseFacts): Tally {
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
