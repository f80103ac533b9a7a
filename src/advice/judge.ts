/** A candidate meets the rules: how many verdicts of each kind, and every verdict with its reason when it is read. */
import { axesOf, BUCKLE, LENGTH, STRANDS, STYLE } from '../fit/axes.ts';
import type { Candidate } from '../fit/candidate.ts';
import type { Buckle } from '../order/types.ts';
import { rules } from '../rules/registry.ts';
import type { AnyRule, CaseFacts, Judgement, Verdict } from '../rules/rule.ts';
import { styles } from '../stock/styles.ts';
import { say } from '../units/phrase.ts';

export interface Finding extends Verdict {
  readonly rule: string;
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
const BITS = 5;
const shiftOf: Readonly<Record<Judgement, number>> = {
  refuse: 0,
  poor: BITS,
  'cannot-tell': 2 * BITS,
  acceptable: 3 * BITS,
  good: 4 * BITS,
  'not-applicable': 5 * BITS,
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
    const buckle = place(buckles, candidate.buckle) * 16384;
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
  for (const rule of members) tally += 2 ** shiftOf[verdict(rule, facts, candidate).judgement];
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
    return rules.map((rule) => ({ rule: rule.id, ...verdict(rule, this.#facts, this.candidate) }));
  }

  countOf(judgement: Judgement): number {
    return (this.#tally >>> shiftOf[judgement]) & (2 ** BITS - 1);
  }

  judgementOf(id: string): Judgement | undefined {
    const rule = rules.find((entry) => entry.id === id);
    return rule === undefined ? undefined : verdict(rule, this.#facts, this.candidate).judgement;
  }
}

/** A missing fact gives cannot-tell without asking the rule. */
function verdict(rule: AnyRule, facts: CaseFacts, candidate: Candidate): Verdict {
  for (const key of rule.reads) {
    if ((facts[key] as unknown) === undefined)
      return { judgement: 'cannot-tell', reason: say`${key} is not known` };
  }
  return rule.judge(facts, candidate);
}
