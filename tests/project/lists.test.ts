/** The list of rules is complete; every rule keeps to its examples, judgements and evidence. */
import { describe, expect, test } from 'vitest';
import { judgements, type AnyRule, type CaseFacts, type Evidence } from '../../src/rules/rule.ts';
import { rules } from '../../src/rules/registry.ts';
import { filesBelow } from '../support/source-tree.ts';
import { casesFor } from '../support/random-cases.ts';
import type { Candidate } from '../../src/cinch/candidate.ts';

const notRules = ['rule', 'registry', 'paths'];
const files = filesBelow('src/rules')
  .map((file) => file.slice('src/rules/'.length, -'.ts'.length))
  .filter((name) => !notRules.includes(name));

/** By design, all others only grade. */
const mayRefuse = [
  'elbow-clearance',
  'buckle-height',
  'latigo-run',
  'buckle-strands',
  'strand-range',
  'stock',
];

/** Without other evidence: the shop itself says what it has. */
const refuseOnTheShopsWord = ['stock'];

describe('the registry', () => {
  test('holds every rule file, once', () => {
    const listed = rules.map(({ id }) => id).sort();
    expect(listed, 'the list in src/rules/registry.ts').toEqual([...files].sort());
  });

  test.each(files)('%s exports the rule of that name and no other', async (name) => {
    const module = (await import(`../../src/rules/${name}.ts`)) as Record<string, unknown>;
    // Ranking asks some rules for bounds: those are functions.
    const exported = Object.values(module).filter((each) => typeof each === 'object') as AnyRule[];
    expect(exported.map(({ id }) => id)).toEqual([name]);
    expect(rules).toContain(exported[0]);
  });
});

const weak = (evidence: Evidence): boolean =>
  evidence.basis === 'choice' || (evidence.basis === 'practice' && evidence.agreement === 'disputed');

describe('refusing', () => {
  const refusing = rules.filter(({ can }) => can.includes('refuse')).map(({ id }) => id);

  test('only the rules that may refuse do', () => {
    expect(refusing.sort(), 'mayRefuse in this file').toEqual([...mayRefuse].sort());
  });

  test('a rule that rests only on disputed practice or our own choice may not', () => {
    const shaky = rules.filter(({ evidence }) => evidence.every(weak)).map(({ id }) => id);
    expect(shaky.filter((id) => refusing.includes(id))).toEqual(refuseOnTheShopsWord);
  });
});

describe.each(rules.map((rule) => [rule.id, rule] as const))('%s', (_, rule) => {
  test('says what it asks, since when, and why it is believed', () => {
    expect(rule.question).toMatch(/^[A-Z].+\?$/);
    expect(rule.since).toMatch(/^\d+\.\d+\.\d+$/);
    expect(rule.evidence.length).toBeGreaterThan(0);
    for (const evidence of rule.evidence) {
      if (evidence.basis === 'practice' && evidence.agreement === 'disputed')
        expect(evidence.dissent, 'a dispute has two sides').toBeTruthy();
    }
  });

  test('can say what its examples show, and no more', () => {
    const shown = judgements.filter((judgement) => rule.examples.some(({ gives }) => gives === judgement));
    const can = judgements.filter((judgement) => rule.can.includes(judgement));
    expect(can, '"can" of the rule against what its examples give').toEqual(shown);
    expect(new Set(rule.can).size).toBe(rule.can.length);
  });

  test.each(rule.examples.map((example) => [example.shows, example] as const))(
    'example: %s',
    (shows, { facts, candidate, gives }) => {
      const [seen, laid] = [facts as CaseFacts, candidate as Candidate];
      const { judgement, reason } = rule.judge(seen, laid);
      expect(judgement).toBe(gives);
      expect(shows.length).toBeGreaterThan(4);
      expect(reason(seen, laid).words.join('').trim()).not.toBe('');
    },
  );
});

function only<T extends object>(whole: T, paths: readonly string[]): T {
  const seen: Record<string, unknown> = {};
  for (const path of paths) {
    const keys = path.replace('?', '').split('.');
    const last = keys.pop() ?? '';
    const at = keys.reduce<Record<string, unknown>>(
      (here, key) => (here[key] ??= {}) as Record<string, unknown>,
      seen,
    );
    at[last] = [...keys, last].reduce<unknown>((here, key) => (here as Record<string, unknown>)[key], whole);
  }
  return seen as T;
}

/** No buckle of the invented shop takes that many strands in one layer. */
const unheard: Readonly<Record<string, readonly string[]>> = { layers: ['poor'] };

describe('on horses and cinches drawn at random', () => {
  const cases = casesFor({ seed: 2417, horses: 25, cinches: 40 });

  test.each(rules.map((rule) => [rule.id, rule] as const))('%s keeps to what it can say', (_, rule) => {
    const said = new Set<string>();
    for (const { facts, candidate } of cases) {
      const { judgement, reason, margin } = rule.judge(facts, candidate);
      said.add(judgement);
      expect(rule.can).toContain(judgement);
      expect(Number.isNaN(margin ?? 0)).toBe(false);
      expect(
        reason(facts, candidate).values.every(
          (part) => typeof part === 'string' || Number.isFinite(part.value),
        ),
      ).toBe(true);
      // A rule must see only what it says it reads: the rest may be missing.
      const narrow = rule.judge(only(facts, rule.reads), only(candidate, rule.looks));
      expect([narrow.judgement, narrow.margin]).toEqual([judgement, margin]);
    }
    // Never seen means never tried: the draws miss what it reads.
    const silent = rule.can.filter((judgement) => !said.has(judgement));
    expect(silent, 'draw what the rule reads in tests/support/random-cases.ts').toEqual(
      unheard[rule.id] ?? [],
    );
  });
});
