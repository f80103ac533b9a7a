/** The rules as a document: docs/rules.md is generated from the registry by this. */
import type { AnyRule } from '../rules/rule.ts';
import { evidenceText, mayRefuse } from './about-rules.ts';
import { document, escaped, list, table } from './markdown.ts';
import { judgementWords } from './words.ts';

/** A table of all rules, then a section for each with its evidence and examples. */
export const rulesMarkdown = (rules: readonly AnyRule[]): string =>
  document([
    '# Rules',
    'What a cinch is judged by, in the order in which the rules are asked. Only the rules marked so may refuse a cinch; the others grade it. There is no total score.',
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
  `${escaped(rule.question)} Since ${rule.since}.`,
  list(rule.evidence.map((evidence) => escaped(evidenceText(evidence)))),
  table(
    ['Says', 'Example'],
    rule.examples.map(({ shows, gives }) => [judgementWords[gives].word, escaped(shows)]),
  ),
];
