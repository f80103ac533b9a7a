/** A candidate meets the rules: how many verdicts of each kind, and every verdict with its reason when it is read. */
import { axesOf, BUCKLE, LENGTH, STRANDS, STYLE } from '../fit/axes.ts';
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
  /** How many rules came to this judgement. */
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

/**
 * A judge for the candidates of one order. A tally is reused among candidates that agree on all that its rules look
 * at: most rules see a few lengths or buckles, not hundreds of candidates.
 */
export function judgeFor(facts: CaseFacts): Judge {
  const known = groups.map(() => new Map<number, number>());
  const buckles = new Map<Buckle, number>();
  const lengths = new Map<number, number>();
  return (candidate) => {
    const style = styles[candidate.style].effort;
    const strands = candidate.strands * 4;
    const length = place(lengths, candidate.length) * 1024;
    const buckle = place(buckles, candidate.buckle) * 65536;
    let tally = 0;
    for (let g = 0; g < groups.length; g++) {
      const { axes, rules: members } = groups[g] as Group;
      const cache = known[g] as Map<number, number>;
      const key =
        (axes & STYLE ? style : 0) +
        (axes & STRANDS ? strands : 0) +
        (axes & LENGTH ? length : 0) +
        (axes & BUCKLE ? buckle : 0);
      let part = cache.get(key);
      if (part === undefined) cache.set(key, (part = tallyOf(members, facts, candidate)));
      tally += part;
    }
    return new JudgedCandidate(candidate, tally, facts);
  };
}

function place<K>(places: Map<K, number>, key: K): number {
  const known = places.get(key);
  if (known !== undefined) return known;
  places.set(key, places.size);
  return places.size - 1;
}

function tallyOf(members: readonly AnyRule[], facts: CaseFacts, candidate: Candidate): number {
  let tally = 0;
  for (const rule of members) tally += unitOf[verdict(rule, facts, candidate).judgement];
  return tally;
}

class JudgedCandidate implements Judged {
  readonly candidate: Candidate;
  readonly #tally: number;
  readonly #facts: CaseFacts;

  constructor(candidate: Candidate, tally: number, facts: CaseFacts) {
    this.candidate = candidate;
    this.#tally = tally;
    this.#facts = facts;
  }

  get findings(): readonly Finding[] {
    return rules.map((rule) => {
      const { judgement, reason, margin } = verdict(rule, this.#facts, this.candidate);
      return { rule: rule.id, judgement, reason: reason(), margin };
    });
  }

  countOf(judgement: Judgement): number {
    return Math.floor(this.#tally / unitOf[judgement]) & MASK;
  }

  judgementOf(id: string): Judgement | undefined {
    const rule = rules.find((entry) => entry.id === id);
    return rule === undefined ? undefined : verdict(rule, this.#facts, this.candidate).judgement;
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
