/** Forty rules, facts, criteria or keys: nothing overflows at 31. */
import { expect, test } from 'vitest';
import { judgeBy, type Judged } from '../../src/advice/judge.ts';
import { rank, whyBefore } from '../../src/advice/rank.ts';
import type { Candidate } from '../../src/cinch/candidate.ts';
import { modelNumbers } from '../../src/numbers/numbers.ts';
import { blockOf } from '../../src/order/key.ts';
import { freeText } from '../../src/order/leaves.ts';
import { rule, type CaseFacts } from '../../src/rules/rule.ts';
import { say } from '../../src/units/phrase.ts';

const forty = Array.from({ length: 40 }, (_, i) => i);

const fortyRules = forty.map((i) =>
  rule({
    id: `rule-${i}`,
    question: 'Is it another count?',
    reads: [],
    looks: ['strands'],
    evidence: [],
    can: ['good', 'refuse'],
    judge: (_, { strands }) => ({
      judgement: strands === i ? 'refuse' : 'good',
      reason: () => say`so it is`,
    }),
    examples: [],
    since: '0.1.0',
  }),
);

const laid = (strands: number) => ({ style: 'straight', strands, length: 30 }) as Candidate;
const judged = (strands: number): Judged => judgeBy(fortyRules, laid(strands), {} as CaseFacts);

test.each(forty)('rule number %i of forty counts', (i) => {
  const { findings, judgementOf } = judged(i);
  expect(findings.filter(({ judgement }) => judgement === 'refuse')).toMatchObject([{ rule: `rule-${i}` }]);
  expect(forty.filter((other) => judgementOf(`rule-${other}`) === 'refuse')).toEqual([i]);
});

test('forty facts are read', () => {
  const names = Object.keys(modelNumbers).slice(0, 40) as (keyof CaseFacts['model'])[];
  const { judge } = rule({
    id: 'sum',
    question: 'Is it their sum?',
    reads: names.map((name) => `model.${name}` as const),
    looks: ['strands'],
    evidence: [],
    can: ['good'],
    judge: ({ model }, { strands }) => ({
      judgement: 'good',
      margin: names.reduce((sum, name) => sum + model[name], strands),
      reason: () => say`so it is`,
    }),
    examples: [],
    since: '0.1.0',
  });
  const model = Object.fromEntries(names.map((name) => [name, 1])) as CaseFacts['model'];
  expect(judge({ model }, { strands: 17 }).margin).toBe(57);
});

test.each(forty)('criterion number %i of forty decides where those before it do not', (decides) => {
  const criteria = forty.map((i) => ({
    id: `criterion ${i}`,
    key: ({ candidate: { strands } }: Judged) => (i < decides ? 0 : i === decides ? -strands : strands),
    because: () => say`it is`,
  }));
  const [few, many] = [judged(41), judged(43)];
  expect(rank([few, many], criteria)).toEqual([many, few]);
  expect(whyBefore(many, few, criteria).criterion).toBe(`criterion ${decides}`);
});

test('each of forty keys is read, under its name inside the program', () => {
  const keys = Object.fromEntries(forty.map((i) => [`key-n${i}`, { read: freeText('a key') }]));
  const block = blockOf('a block', keys);
  const written = Object.fromEntries(forty.map((i) => [`key-n${i}`, String(i)]));
  expect(block.parse(written)).toEqual(Object.fromEntries(forty.map((i) => [`keyN${i}`, String(i)])));
  expect(block.safeParse({ ...written, 'key-n40': '40' }).success).toBe(false);
});
