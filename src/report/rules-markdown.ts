/** The rules as a document of Markdown. */
import type { AnyRule } from '../rules/rule.ts';
import { canText, evidenceText, mayRefuse } from './about-rules.ts';
import { document, escaped, list, table } from './markdown.ts';
import { judgementWords } from './words.ts';

/** A table of the rules, then a section for each: what it may say, what it reads, why it is believed, examples. */
export const rulesMarkdown = (rules: readonly AnyRule[]): string =>
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
    ...rules.flatMap(ruleBlocks),
  ]);

const ruleBlocks = (rule: AnyRule): string[] => [
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

/** Names as the code has them: who reads this page may want to find them there. */
const names = (keys: readonly string[]): string =>
  keys.length === 0 ? 'nothing' : keys.map((key) => `\`${key}\``).join(', ');
