/** docs/rules.md: every rule, and what it says of its examples. */
import { document, escaped, list } from '../../../src/pages/markdown.ts';
import { mayRefuse } from '../../../src/words/about-rules.ts';
import { judgementWords } from '../../../src/words/words.ts';
import { rules } from '../../../src/rules/registry.ts';
import type { AnyRule, Evidence } from '../../../src/rules/rule.ts';

export const rulesDoc = (): string =>
  document([
    '# Rules',
    'Rules judge a cinch in this order. Those marked may rule it out; the others only grade it. No score adds them up. A missing fact gives "cannot tell", which never counts as good. A rule rests on settled practice unless it says otherwise. Tests run the examples; `cinchwright rules ID` tells more.',
    ...rules.map(
      (rule) =>
        `**${rule.id}**${mayRefuse(rule) ? ' (may rule out)' : ''}: ${escaped(rule.question)}${basis(rule)}\n\n${examples(rule)}`,
    ),
  ]);

/** Common trade practice needs none. */
function basis({ evidence }: AnyRule): string {
  const text = evidence.map(evidenceText).join('; ');
  return text === 'settled practice' ? '' : ` From ${text}.`;
}

function evidenceText(evidence: Evidence): string {
  const source = ['common-practice', 'engineering-choice'].includes(evidence.source)
    ? ''
    : ` \`${evidence.source}\``;
  switch (evidence.basis) {
    case 'published':
      return `published${source}`;
    case 'practice':
      return `${evidence.agreement} practice${source}${evidence.dissent === undefined ? '' : ` (${escaped(evidence.dissent)})`}`;
    case 'choice':
      return `our own choice${source} (${escaped(evidence.why)})`;
  }
}

const examples = (rule: AnyRule): string =>
  list(
    rule.can.map((judgement) => {
      const shown = rule.examples.filter(({ gives }) => gives === judgement);
      return `${judgementWords[judgement].word}: ${shown.map(({ shows }) => escaped(shows)).join('; ')}`;
    }),
  );
