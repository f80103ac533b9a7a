/** What each check looks at. */
import type { AnyRule } from '../rules/rule.ts';
import { canText, evidenceText, firstKeys, mayRefuse } from '../words/about-rules.ts';
import { counterSheet, paragraph, under, type Block, type Sheet } from '../pages/sheet.ts';
import { judgementWords } from '../words/words.ts';

/** Those that can rule a cinch out come first. */
export function rulesSheet(rules: readonly AnyRule[]): Sheet {
  const list = (some: readonly AnyRule[]): Block[] => [
    { kind: 'list', items: some.map(({ id, question }) => `${id}: ${question}`) },
  ];
  return counterSheet({
    title: 'Checks',
    lead: 'what every cinch is judged by. All about one: cinchwright rules elbow-clearance.',
    blocks: [
      ...under('May rule a cinch out', list(rules.filter(mayRefuse))),
      ...under('Only grade it', list(rules.filter((rule) => !mayRefuse(rule)))),
    ],
    cautions: [],
    foot: [],
  });
}

/** One check in full. */
export const ruleSheet = (rule: AnyRule): Sheet =>
  counterSheet({
    title: rule.id,
    lead: rule.question,
    blocks: [
      paragraph(`It may say ${canText(rule)}.`),
      ...under('Why we believe it', [{ kind: 'list', items: rule.evidence.map(evidenceText) }]),
      ...under('What it looks at', [
        paragraph(`Of the order: ${keyWords(rule.reads)}. Of the cinch: ${keyWords(rule.looks)}.`),
      ]),
      ...under(
        'Examples',
        rule.examples.map(({ shows, gives }): Block => ({
          kind: 'list',
          items: [`${judgementWords[gives].word}: ${shows}`],
          mark: judgementWords[gives].sign,
        })),
      ),
    ],
    cautions: [],
    foot: [],
  });

/** "buckle above elbow". */
function keyWords(paths: readonly string[]): string {
  const word = (key: string): string =>
    key === 'k'
      ? 'size factor'
      : key === 'model'
        ? "the model's numbers"
        : key.replace(/[A-Z]/g, (letter) => ` ${letter.toLowerCase()}`);
  return paths.length === 0 ? 'nothing' : firstKeys(paths).map(word).join(', ');
}
