/** A cinch somebody wants or rides in, judged on one screen: how it stands, why, what would pass instead. */
import type { Advice } from '../advice/advice.ts';
import type { Checked } from '../advice/check.ts';
import type { Judgement } from '../rules/rule.ts';
import { listed } from '../units/phrase.ts';
import {
  askedText,
  bestText,
  causeTexts,
  findingsOf,
  nearestPassText,
  nothingPassesText,
  openOf,
  standingOf,
  standingText,
  whichText,
  type Standing,
} from './about-check.ts';
import { findingText, marginText, nearestText, roughlyJudged, toTell } from './about-specs.ts';
import { cautionLines, headLines, leadIn, unreadLines } from './heads.ts';
import { heading, item, markOf, pageFor, pageText, sentence, type Page } from './page.ts';
import { capital } from './text.ts';
import type { CheckResult, ReportOptions } from './types.ts';
import { judgementWords, ruleName } from './words.ts';

/** All orders one under the other; the cautions once, at the end. */
export function checkScreen(results: readonly CheckResult[], options: ReportOptions): string {
  const page = pageFor(options);
  const blocks = results.map((result) => {
    if (!result.ok) return unreadLines(result, page);
    const { checked, advice } = result;
    const none = sentence(
      page,
      'Nothing to check: the order says neither what is wanted nor what is ridden in.',
    );
    const lines = checked.flatMap((entry) => checkedLines(entry, { advice, options, page }));
    return [...headLines(advice, page), ...(checked.length === 0 ? ['', ...none] : lines)];
  });
  const lines = blocks.flatMap((block, i) => (i === 0 ? block : ['', '', ...block]));
  return pageText([...lines, ...cautionLines(results, page)]);
}

interface Scene {
  readonly advice: Advice;
  readonly options: ReportOptions;
  readonly page: Page;
}

const standingSign: Readonly<Record<Standing, Judgement>> = {
  passes: 'good',
  refused: 'refuse',
  'not sure': 'cannot-tell',
};

function checkedLines(checked: Checked, { advice, options, page }: Scene): string[] {
  const { judged } = checked;
  const standing = standingOf(checked);
  const sign = openOf(checked).length > 0 ? 'cannot-tell' : standingSign[standing];
  const mark = {
    lead: `${judgementWords[sign].sign} ${standing.toUpperCase()}: `,
    paint: (text: string) => page.pen.strong(page.pen.judged(sign, text)),
    rest: 2,
  };
  const nearest = nearestPassText(checked, advice, page.units);
  const best = bestText(checked, advice, page.units);
  const nothing = nothingPassesText(checked, advice);
  return [
    ...heading(page, whichText(checked)),
    ...sentence(page, `${capital(askedText(checked, page.units))}.`, 2),
    ...item(page, `${standingText(checked, advice.facts, page)}.`, mark),
    ...(judged === undefined ? [] : sentence(page, nearestText(judged.candidate.clearance, page.units), 2)),
    ...(nearest === undefined ? [] : ['', ...leadIn(page, 'Nearest that passes:', nearest)]),
    ...(nothing === undefined ? [] : ['', ...sentence(page, nothing)]),
    ...(best === undefined ? [] : leadIn(page, 'Best for this pair:', best)),
    ...causeLines(checked, page),
    ...findingLines(checked, { advice, options, page }),
  ];
}

function causeLines(checked: Checked, page: Page): string[] {
  const causes = causeTexts(checked, page.units);
  if (causes.length === 0) return [];
  return [...heading(page, 'Likely causes of the trouble'), ...causes.flatMap((text) => item(page, text))];
}

/** What is not good in full, what is good in a line; with `why` everything in full. */
function findingLines(checked: Checked, { advice: { facts }, options: { why }, page }: Scene): string[] {
  if (checked.judged === undefined) return [];
  const findings = findingsOf(checked);
  const full = why ? findings : toTell({ findings }, facts);
  const lines = full.flatMap((finding) => {
    const margin = why ? marginText(finding, page.units) : undefined;
    const text = `${findingText(finding, page.units)}${margin === undefined ? '' : ` Margin ${margin}.`}`;
    return item(page, capital(text), markOf(finding.judgement, page, 2));
  });
  const rest = why ? [] : (['good', 'not-applicable'] as const);
  for (const judgement of rest) {
    const names = findings.filter((f) => f.judgement === judgement).map(({ rule }) => ruleName(rule));
    if (names.length === 0) continue;
    const text = `${judgement === 'good' ? 'Good on' : 'Does not apply:'} ${listed(names)}.`;
    lines.push(...item(page, text, markOf(judgement, page, 2)));
  }
  const rough = roughlyJudged(facts);
  if (rough !== undefined) lines.push(...item(page, rough, markOf('cannot-tell', page, 2)));
  return [...heading(page, 'Rule by rule'), ...lines];
}
