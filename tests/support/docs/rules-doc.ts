/** docs/rules.md: every rule with its question, what it may say, what it reads, why it is believed and its examples. */
import { canText, evidenceText, mayRefuse } from '../../../src/report/about-rules.ts';
import { document, escaped, list, table } from '../../../src/report/markdown.ts';
import { judgementWords } from '../../../src/report/words.ts';
import type { AnyRule } from '../../../src/rules/rule.ts';
import { rules } from '../../../src/rules/registry.ts';

/** Text of docs/rules.md. */
export const rulesDoc = (): string =>
  document([
    '# Rules',
    'What a cinch is judged by, in the order in which the rules are asked. The rules marked so may refuse a cinch; the others only grade it. There is no total score: ranking compares grades one criterion after the other.',
    'A fact that is missing gives "cannot tell", which never counts as good. Every example here is run as a test.',
    table(
      ['Rule', 'Question', 'May refuse'],
      rules.map((rule) => [
        `[${rule.id}](#${rule.id})`,
        escaped(rule.question),
        mayRefuse(rule) ? 'yes' : 'no',
      ]),
    ),
    ...rules.flatMap(blocksOf),
  ]);

const blocksOf = (rule: AnyRule): string[] => [
  `## ${rule.id}`,
  `**${escaped(rule.question)}**`,
  list([
    `Can say: ${canText(rule)}.`,
    `Reads of the order: ${names(rule.reads)}.`,
    `Looks at of the cinch: ${names(rule.looks)}.`,
    `Since version ${rule.since}.`,
  ]),
  'Why it is believed:',
  list(rule.evidence.map((evidence) => `${escaped(evidenceText(evidence))} (\`${evidence.source}\`)`)),
  table(
    ['Example', 'It says'],
    rule.examples.map(({ shows, gives }) => [escaped(shows), judgementWords[gives].word]),
  ),
];

const names = (keys: readonly string[]): string =>
  keys.length === 0 ? 'nothing' : keys.map((key) => `\`${key}\``).join(', ');
