/** The answer at the counter: one order on about one screen, to be read aloud to the customer. */
import type { Advice, RankedSpec } from '../advice/advice.ts';
import type { Finding } from '../advice/judge.ts';
import { workingOf } from '../facts/facts.ts';
import type { Order } from '../order/types.ts';
import { assumedTexts, assumptionText, measuredText, measureTexts, refusedTexts } from './about-rest.ts';
import { riddenText, wantsText } from './about-check.ts';
import {
  becauseText,
  briefText,
  clearanceText,
  findingText,
  latigoText,
  marginText,
  nearestText,
  othersText,
  ownFindings,
  provisionalLength,
  sharedFindings,
  sharedText,
  simulatedText,
  sureOf,
  toTell,
  widerText,
} from './about-specs.ts';
import { cautionLines, hanging, headLines, leadIn, unreadLines } from './heads.ts';
import { bothEnds, heading, item, markOf, pageFor, pageText, sentence, type Page } from './page.ts';
import { otherStyleTexts, straightOrRoper } from './about-styles.ts';
import { wayOutText } from './about-way-out.ts';
import { capital } from './text.ts';
import type { ReportOptions, SizeResult } from './types.ts';
import { specName, tiedText } from './words.ts';

type Sized = SizeResult & { readonly ok: true };

/** All orders one under the other; the cautions once, at the end. A promise, since only `all` fetches the wide table. */
export async function sizeScreen(results: readonly SizeResult[], options: ReportOptions): Promise<string> {
  const page = pageFor(options);
  const everyTable = options.all ? (await import('./every-table.ts')).everyTable : undefined;
  const blocks = results.map((result) =>
    result.ok
      ? orderLines(result, options, { page, every: everyTable?.(result.advice, page) })
      : unreadLines(result, page),
  );
  const lines = blocks.flatMap((block, i) => (i === 0 ? block : ['', '', ...block]));
  return pageText([...lines, ...cautionLines(results, page)]);
}

function orderLines(
  result: Sized,
  options: ReportOptions,
  { page, every }: { page: Page; every: readonly string[] | undefined },
): string[] {
  const { advice } = result;
  return [
    ...headLines(advice, page),
    ...(advice.specs.length === 0 ? nothingLines(advice, page) : []),
    ...wantsLines(result, page),
    ...(advice.specs.length === 0 ? [] : specLines(result, options, page)),
    ...(every === undefined ? [] : [...heading(page, 'All that was tried, passing ones first'), ...every]),
    ...styleLines(advice, page),
    ...refusedLines(advice, page),
    ...measureLines(advice, page),
    ...(options.why ? inFull(advice, page) : assumedLines(advice, page)),
  ];
}

function wantsLines({ wants, advice }: Sized, page: Page): string[] {
  const texts = [
    riddenText(advice.facts, page.units),
    wants === undefined ? undefined : wantsText(wants, advice, page),
  ];
  return texts.flatMap((text) => (text === undefined ? [] : sentence(page, text, hanging)));
}

/** When nothing passes that is said first and plainly. */
const nothingLines = (advice: Advice, page: Page): string[] => [
  '',
  ...item(page, 'Nothing the shop can tie passes for this pair.', {
    lead: 'x ',
    paint: (text) => page.pen.judged('refuse', text),
  }),
  ...sentence(
    page,
    'What comes nearest stands below with what it fails on; measure again before anything is tied.',
  ),
  ...sentence(page, wayOutText(advice, page.units) ?? ''),
];

function specLines({ advice, simulated }: Sized, options: ReportOptions, page: Page): string[] {
  const shown = advice.specs.slice(0, Math.max(1, options.top));
  const lines = heading(page, `To tie, best first (${sureOf(advice.facts, page.units)})`);
  const common = options.why ? [] : sharedFindings(shown, advice.facts, page.units);
  const worst = common.filter(({ judgement }) => judgement === 'poor');
  lines.push(...sharedLines(worst, shown.length, page));
  for (const spec of shown) {
    lines.push(...cardHead(spec, advice.facts.order, page));
    const drawn = simulated?.[spec.rank - 1];
    if (drawn !== undefined) lines.push(...sentence(page, simulatedText(drawn, page.units), 5));
    lines.push(
      ...(options.why
        ? allFindings(spec, page)
        : findingLines(ownFindings(toTell(spec, advice.facts), common, page.units), page)),
    );
  }
  const lesser = common.filter((finding) => !worst.includes(finding));
  lines.push(...sharedLines(lesser, shown.length, page));
  lines.push(...sentence(page, latigoText(shown, page.units), { first: 2, rest: 4 }));
  if (!advice.facts.lengthNeed.measured) {
    const mark = markOf('poor', page, 2);
    lines.push(...item(page, provisionalLength, mark));
  }
  const others = othersText(advice, shown.length);
  const further = [others, widerText(advice, shown.length, page.units)].filter((text) => text !== undefined);
  return further.length === 0
    ? lines
    : [...lines, ...sentence(page, further.join(' '), { first: 2, rest: 4 })];
}

function cardHead(spec: RankedSpec, order: Order, page: Page): string[] {
  const { candidate, rank } = spec;
  const name = `${String(rank).padStart(3)}  ${specName(candidate)}`;
  const [first = '', ...more] = bothEnds(page, name, clearanceText(candidate.clearance, page.units));
  const because = becauseText(spec, page.units);
  return [
    first.replace(name, page.pen.strong(name)),
    ...more,
    ...sentence(page, `${capital(tiedText(candidate, order, page.units))}.`, 5),
    ...(because === undefined ? [] : sentence(page, because, 5)),
  ];
}

const findingLines = (findings: readonly Finding[], page: Page): string[] =>
  findings.flatMap((finding) => item(page, briefText(finding, page.units), markOf(finding.judgement, page)));

const sharedLines = (findings: readonly Finding[], count: number, page: Page): string[] =>
  findings.flatMap((finding) =>
    item(page, sharedText(finding, count, page.units), markOf(finding.judgement, page, 2)),
  );

/** The long form: every rule's word on it, with its margin, and where it comes nearest the elbow. */
function allFindings(spec: RankedSpec, page: Page): string[] {
  const lines = sentence(page, nearestText(spec.candidate.clearance, page.units), 5);
  for (const finding of spec.findings) {
    const margin = marginText(finding, page.units);
    const text = `${findingText(finding, page.units)}${margin === undefined ? '' : ` Margin ${margin}.`}`;
    lines.push(...item(page, text, markOf(finding.judgement, page)));
  }
  return lines;
}

const styleLines = (advice: Advice, page: Page): string[] => [
  ...heading(page, straightOrRoper(advice)),
  ...otherStyleTexts(advice, page.units).flatMap((text) => item(page, text)),
];

function refusedLines(advice: Advice, page: Page): string[] {
  const refused = refusedTexts(advice, page.units);
  if (refused.length === 0) return [];
  const mark = markOf('refuse', page, 2);
  return [...heading(page, 'Will not do'), ...refused.flatMap((text) => item(page, `${text}.`, mark))];
}

function measureLines(advice: Advice, page: Page): string[] {
  const texts = measureTexts(advice, page.units);
  if (texts.length === 0) return [];
  return [
    ...heading(page, 'Measure next, and what it gains if the tape reads what was assumed'),
    ...texts.flatMap((text) => item(page, text)),
  ];
}

function assumedLines({ assumptions }: Advice, page: Page): string[] {
  const measured = measuredText(assumptions, page.units);
  const lines = measured === undefined ? [] : [measured];
  return [
    '',
    ...[...lines, ...assumedTexts(assumptions, page.units)].flatMap((text) => {
      const lead = text.slice(0, text.indexOf(':') + 1);
      return leadIn(page, lead, text.slice(lead.length + 1));
    }),
  ];
}

function inFull({ assumptions, facts }: Advice, page: Page): string[] {
  const inputs = assumptions.flatMap((entry) => item(page, `${assumptionText(entry, page.units)}.`));
  const working = workingOf(facts).flatMap(({ symbol, sum, result }) =>
    item(page, `${symbol} = ${sum} = ${result}`),
  );
  return [
    ...heading(page, 'What this rests on'),
    ...inputs,
    ...heading(page, 'Working, in inches'),
    ...working,
  ];
}
