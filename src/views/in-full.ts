/** What `--why` adds: every check, what we went by, and the working. */
import type { Advice } from '../advice/advice.ts';
import type { Finding } from '../advice/judge.ts';
import { workingOf } from '../horse/facts.ts';
import type { Block } from '../pages/sheet.ts';
import type { Units } from '../units/text.ts';
import { assumptionText } from '../words/about-rest.ts';
import { findingText, marginText } from '../words/about-specs.ts';
import { judgementWords } from '../words/words.ts';

/** One line per check, after its sign. */
export const checkBlocks = (findings: readonly Finding[], units: Units): Block[] =>
  findings.map((finding) => ({
    kind: 'list',
    items: [checkText(finding, units)],
    mark: judgementWords[finding.judgement].sign,
  }));

function checkText(finding: Finding, units: Units): string {
  const margin = marginText(finding, units);
  return `${findingText(finding, units, 'decimals')}${margin === undefined ? '' : ` Margin ${margin}.`}`;
}

/** Every input, then the working. */
export const restsOnBlocks = ({ assumptions, facts }: Advice, units: Units): Block[] => [
  { kind: 'heading', text: 'What we went by' },
  { kind: 'list', items: assumptions.map((entry) => `${assumptionText(entry, units)}.`) },
  { kind: 'heading', text: 'Working, in inches' },
  {
    kind: 'list',
    items: workingOf(facts).map(({ symbol, sum, result }) => `${symbol} = ${sum} = ${result}`),
  },
];
