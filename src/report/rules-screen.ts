/** What cinches are judged by: the list, or all about each rule handed over when `why` is asked. */
import type { AnyRule } from '../rules/rule.ts';
import { canText, evidenceText, mayRefuse } from './about-rules.ts';
import { heading, item, markOf, pageFor, pageText, sentence, title, type Page } from './page.ts';
import type { ReportOptions } from './types.ts';
import { judgementWords } from './words.ts';

/** The list of rules; with `why` everything about each of them. */
export function rulesScreen(
  rules: readonly AnyRule[],
  options: Pick<ReportOptions, 'color' | 'units' | 'width' | 'why'>,
): string {
  const page = pageFor(options);
  if (options.why)
    return pageText(rules.flatMap((rule, i) => [...(i === 0 ? [] : ['']), ...inFull(rule, page)]));
  const hard = rules.filter(mayRefuse);
  const soft = rules.filter((rule) => !mayRefuse(rule));
  const lines = [...part('May refuse a cinch', hard, page), ...part('Only grade it', soft, page)];
  return pageText(lines[0] === '' ? lines.slice(1) : lines);
}

function part(name: string, rules: readonly AnyRule[], page: Page): string[] {
  if (rules.length === 0) return [];
  return [
    ...heading(page, name),
    ...rules.flatMap((rule) => [
      ...item(page, rule.question, { lead: `  ${rule.id}: `, paint: page.pen.strong, rest: 6 }),
      ...sentence(page, `Says ${canText(rule)}.`, 6),
      ...rule.evidence.flatMap((evidence) =>
        item(page, evidenceText(evidence), { ...fromMark, paint: page.pen.quiet }),
      ),
    ]),
  ];
}

const fromMark = { lead: '      Basis: ', rest: 8 };

function inFull(rule: AnyRule, page: Page): string[] {
  return [
    ...title(page, rule.id),
    ...sentence(page, rule.question),
    ...sentence(page, mayRefuse(rule) ? 'It may refuse a cinch.' : 'It only grades, it never refuses.'),
    ...heading(page, 'Why it is believed'),
    ...rule.evidence.flatMap((evidence) => item(page, evidenceText(evidence))),
    ...heading(page, 'What it looks at'),
    ...sentence(page, readsText(rule), 2),
    ...heading(page, 'Examples'),
    ...rule.examples.flatMap(({ shows, gives }) =>
      item(page, `${judgementWords[gives].word}: ${shows}`, markOf(gives, page, 2)),
    ),
    ...['', ...sentence(page, `Since version ${rule.since}.`)],
  ];
}

function readsText({ reads, looks }: AnyRule): string {
  const facts = reads.length === 0 ? 'nothing' : reads.map(keyWords).join(', ');
  const parts = looks.length === 0 ? 'nothing' : looks.map(keyWords).join(', ');
  return `Of the order: ${facts}. Of the cinch: ${parts}.`;
}

/** Keys of the facts as words: "buckle above elbow". */
const keyWords = (key: string): string =>
  key === 'k'
    ? 'size factor'
    : key === 'model'
      ? "the model's numbers"
      : key.replace(/[A-Z]/g, (letter) => ` ${letter.toLowerCase()}`);
