/** The verdicts of all rules on all candidates of an order, counted: each rule is asked as seldom as its verdict can differ. */
import { axesOfParts } from '../fit/axes.ts';
import type { LaidCandidate } from '../fit/lay.ts';
import { rules } from '../rules/registry.ts';
import type { AnyRule, CaseFacts } from '../rules/rule.ts';
import { ofShop } from './of-shop.ts';
import { isWithin, MAKE, type Field, type Part } from './parts.ts';
import { Sums } from './sums.ts';
import { firstMissing, unitOf, untold } from './verdict.ts';

/** Rules whose verdict depends on the same choices of the tier. */
interface Group {
  readonly axes: number;
  readonly able: readonly AnyRule[];
  /** How many miss a fact, and so say the same of every candidate. */
  readonly unable: number;
}

/** Choices of the tier that decide a rule's verdict, these facts given. */
export function axesOfRule(rule: AnyRule, facts: CaseFacts): number {
  if (firstMissing(rule.reads, facts) !== undefined) return 0;
  const still = rule.idle?.(facts) ?? [];
  return axesOfParts(still.length === 0 ? rule.looks : rule.looks.filter((part) => !still.includes(part)));
}

/** Rules that look at the shop alone say the same of its makes in every order. */
const isFixed = ({ reads, looks, idle }: AnyRule): boolean =>
  idle === undefined &&
  reads.every((fact) => fact === 'shop' || fact === 'model') &&
  isWithin(axesOfParts(looks), MAKE);
const fixedRules = rules.filter(isFixed);
const otherRules = rules.filter((rule) => !isFixed(rule));

// Most orders know the same facts, so that their rules fall into the same groups.
const grouped = new Map<string, readonly Group[]>();

function groupsFor(facts: CaseFacts): readonly Group[] {
  let key = '';
  for (let i = 0; i < otherRules.length; i++) {
    const rule = otherRules[i] as AnyRule;
    if (firstMissing(rule.reads, facts) !== undefined) key += `-${String(i)}`;
    else if (rule.idle !== undefined) key += `+${String(axesOfRule(rule, facts))}`;
  }
  let groups = grouped.get(key);
  if (groups === undefined) grouped.set(key, (groups = groupRules(otherRules, facts)));
  return groups;
}

function groupRules(some: readonly AnyRule[], facts: CaseFacts): Group[] {
  const byAxes = new Map<number, { able: AnyRule[]; unable: number }>();
  for (const rule of some) {
    const axes = axesOfRule(rule, facts);
    let group = byAxes.get(axes);
    if (group === undefined) byAxes.set(axes, (group = { able: [], unable: 0 }));
    if (firstMissing(rule.reads, facts) === undefined) group.able.push(rule);
    else group.unable += 1;
  }
  return [...byAxes].map(([axes, group]) => ({ axes, ...group }));
}

/** The tally of a group's rules. */
class GroupTally implements Part {
  readonly axes: number;
  readonly #rules: readonly AnyRule[];
  readonly #facts: CaseFacts;
  readonly #untold: number;

  constructor({ axes, able, unable }: Group, facts: CaseFacts) {
    this.axes = axes;
    this.#rules = able;
    this.#facts = facts;
    this.#untold = untold(unable);
  }

  read(candidate: LaidCandidate): number {
    let tally = this.#untold;
    for (let i = 0; i < this.#rules.length; i++) {
      const rule = this.#rules[i] as AnyRule;
      tally += unitOf(rule, rule.judge(this.#facts, candidate).judgement);
    }
    return tally;
  }
}

/** What the fixed rules say of each make; kept as long as the shop. */
export function fixedTallies(field: Field): Float64Array {
  const { facts, tied, makes } = field;
  const kept = ofShop(tied, facts.model);
  if (kept.tallies === undefined) {
    const sums = new Sums();
    sums.restart(field);
    for (const group of groupRules(fixedRules, facts)) sums.add(new GroupTally(group, facts), field);
    kept.tallies = sums.ofMakes.slice(0, makes.length);
  }
  return kept.tallies;
}

/** What all other rules say of a candidate. */
export const tallyParts = (facts: CaseFacts): Part[] =>
  groupsFor(facts).map((group) => new GroupTally(group, facts));
