/** `check` as a document that a shop can paste. */
import type { Advice } from '../advice/advice.ts';
import type { Checked } from '../advice/check.ts';
import type { Finding } from '../advice/judge.ts';
import {
  askedText,
  bestText,
  causeTexts,
  findingsOf,
  nearestPassText,
  nothingPassesText,
  standingOf,
  standingText,
  whichText,
} from './about-check.ts';
import { aboutTexts } from './about-order.ts';
import { marginText, nearestText, roughlyJudged } from './about-specs.ts';
import { document, escaped, list, section, table, unread } from './markdown.ts';
import { capital, phraseText, type Units } from './text.ts';
import type { CheckResult, ReportOptions } from './types.ts';
import { judgementWords, orderTitle, ruleName } from './words.ts';

type Read = CheckResult & { readonly ok: true };

/** One section an order; the cautions once, at the end. */
export function checkMarkdown(
  results: readonly CheckResult[],
  { units }: Pick<ReportOptions, 'units'>,
): string {
  const blocks = results.flatMap((result) => (result.ok ? orderBlocks(result, units) : [unread(result)]));
  const cautions = new Set(results.flatMap((result) => (result.ok ? result.advice.cautions : [])));
  return document([...blocks, ...section('## Keep in mind', list([...cautions].map(escaped)))]);
}

function orderBlocks({ advice, checked }: Read, units: Units): string[] {
  const { facts } = advice;
  return [
    `# ${escaped(orderTitle(facts.order))}`,
    list(aboutTexts(advice, units).map(escaped)),
    checked.length === 0
      ? 'Nothing to check: the order says neither what is wanted nor what is ridden in.'
      : '',
    ...checked.flatMap((entry) => checkedBlocks(entry, advice, units)),
  ];
}

function checkedBlocks(checked: Checked, advice: Advice, units: Units): string[] {
  const { judged } = checked;
  const { facts } = advice;
  const best = bestText(checked, advice, units);
  const nearest = nearestPassText(checked, advice, units);
  return [
    `## ${whichText(checked)}`,
    escaped(`${capital(askedText(checked, units))}.`),
    `**${capital(standingOf(checked))}**: ${escaped(`${standingText(checked, facts, { units })}.`)}`,
    judged === undefined ? '' : escaped(nearestText(judged.candidate.clearance, units)),
    nearest === undefined ? '' : `**Nearest that passes**: ${escaped(nearest)}`,
    escaped(nothingPassesText(checked, advice) ?? ''),
    best === undefined ? '' : `**Best for this pair**: ${escaped(best)}`,
    ...section('### Likely causes of the trouble', list(causeTexts(checked, units).map(escaped))),
    judged === undefined ? '' : findingTable(findingsOf(checked), units),
    judged === undefined ? '' : (roughlyJudged(facts) ?? ''),
  ];
}

function findingTable(findings: readonly Finding[], units: Units): string {
  const rows = findings.map((finding) => [
    ruleName(finding.rule),
    judgementWords[finding.judgement].word,
    phraseText(finding.reason, units),
    marginText(finding, units) ?? '',
  ]);
  return table(
    ['Rule', 'Says', 'Because', 'Margin'],
    rows.map((row) => row.map(escaped)),
  );
}
