/** The rules as a table for a spreadsheet: one row a rule. */
import type { AnyRule } from '../rules/rule.ts';
import { basisText, evidenceText, mayRefuse } from '../words/about-rules.ts';
import { csvText } from '../pages/csv.ts';

interface Column {
  readonly name: string;
  readonly about: string;
  readonly of: (rule: AnyRule) => string;
}

/** Columns in order, each with what it holds. */
export const rulesColumns: readonly Column[] = [
  { name: 'rule', about: 'the rule', of: ({ id }) => id },
  { name: 'question', about: 'what the bench would ask', of: ({ question }) => question },
  { name: 'may_refuse', about: 'yes or no', of: (rule) => (mayRefuse(rule) ? 'yes' : 'no') },
  { name: 'can', about: 'what it can say', of: ({ can }) => can.join(' ') },
  { name: 'basis', about: 'kinds of evidence', of: basisText },
  { name: 'evidence', about: 'the evidence', of: ({ evidence }) => evidence.map(evidenceText).join('; ') },
  { name: 'since', about: 'first version that has it', of: ({ since }) => since },
];

/** The table with its head. */
export const rulesCsv = (rules: readonly AnyRule[]): string =>
  csvText([
    rulesColumns.map(({ name }) => name),
    ...rules.map((rule) => rulesColumns.map(({ of }) => of(rule))),
  ]);
