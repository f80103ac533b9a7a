/** `size` as a document that a shop can paste: heading, table, lists, cautions. */
import type { RankedSpec } from '../advice/advice.ts';
import type { Candidate } from '../fit/candidate.ts';
import type { Facts } from '../facts/facts.ts';
import type { Simulated } from '../advice/simulate.ts';
import { aboutTexts, ownNumbers } from './about-order.ts';
import { assumptionText, measureTexts, refusedTexts } from './about-rest.ts';
import { riddenText, wantsText } from './about-check.ts';
import { otherStyleTexts, straightOrRoper, welfareTexts } from './about-styles.ts';
import { wayOutText } from './about-way-out.ts';
import {
  becauseText,
  latigoText,
  findingText,
  othersText,
  ownFindings,
  provisionalLength,
  sharedFindings,
  sharedText,
  simulatedText,
  toTell,
  widerText,
} from './about-specs.ts';
import { document, escaped, list, section, table, unread } from './markdown.ts';
import { capital, chanceText, quantityText, type Units } from './text.ts';
import type { ReportOptions, SizeResult } from './types.ts';
import { buckleText, layersText, orderTitle, pinchedText, styleName } from './words.ts';

type Sized = SizeResult & { readonly ok: true };

/** One section an order; the cautions once, at the end. */
export function sizeMarkdown(
  results: readonly SizeResult[],
  options: Pick<ReportOptions, 'units' | 'top'>,
): string {
  const blocks = results.flatMap((result) => (result.ok ? orderBlocks(result, options) : [unread(result)]));
  const cautions = new Set(results.flatMap((result) => (result.ok ? result.advice.cautions : [])));
  return document([...blocks, ...section('## Keep in mind', list([...cautions].map(escaped)))]);
}

function orderBlocks(
  { advice, wants, simulated }: Sized,
  { units, top }: Pick<ReportOptions, 'units' | 'top'>,
): string[] {
  const { facts } = advice;
  const shown = advice.specs.slice(0, Math.max(1, top));
  const own = ownNumbers(facts);
  const worst = sharedFindings(shown, facts, units).filter(({ judgement }) => judgement === 'poor');
  const provisional = facts.lengthNeed.measured ? '' : `**${provisionalLength}**`;
  const others = othersText(advice, shown.length);
  const further = [others, widerText(advice, shown.length, units)].filter((text) => text !== undefined);
  return [
    `# ${escaped(orderTitle(facts.order))}`,
    ...welfareTexts(advice, units).map((text) => `**${escaped(text)}**`),
    list(aboutTexts(advice, units).map(escaped)),
    own === undefined ? '' : escaped(own),
    shown.length === 0 ? '**Nothing the shop can tie passes for this pair.**' : '',
    escaped(wayOutText(advice, units) ?? ''),
    escaped(riddenText(facts, units) ?? ''),
    wants === undefined ? '' : escaped(wantsText(wants, advice, { units })),
    list(worst.map((finding) => escaped(sharedText(finding, shown.length, units)))),
    ...(shown.length === 0 ? [] : section('## To tie, best first', specTable(shown, advice.facts, units))),
    list(
      shown.map((spec) => {
        const own = ownFindings(toTell(spec, facts), worst, units);
        return specText(
          spec,
          [
            ...own.map((finding) => capital(findingText(finding, units))),
            ...drawnText(simulated?.[spec.rank - 1], units),
          ],
          units,
        );
      }),
    ),
    shown.length === 0 ? '' : escaped(latigoText(shown, units)),
    shown.length === 0 ? '' : provisional,
    ...further.map(escaped),
    ...section(`## ${straightOrRoper(advice)}`, list(otherStyleTexts(advice, units).map(escaped))),
    ...section('## Will not do', list(refusedTexts(advice, units).map((text) => escaped(`${text}.`)))),
    ...section(
      '## Measure next, and what it gains if the tape reads what was assumed',
      list(measureTexts(advice, units).map(escaped)),
    ),
    ...section(
      '## What this rests on',
      list(advice.assumptions.map((entry) => escaped(`${assumptionText(entry, units)}.`))),
    ),
  ];
}

function specTable(
  specs: readonly RankedSpec[],
  { floor, order }: Pick<Facts, 'floor' | 'order'>,
  units: Units,
): string {
  const head = [
    'No.',
    'Style',
    'Strands',
    'Width',
    'Length',
    'Buckle',
    'Layers',
    'Clears the elbow by',
    `Sure of ${quantityText({ value: floor, as: 'fine-length' }, units)}, standing square`,
  ];
  const rows = specs.map(({ rank, candidate: c }) => [
    String(rank),
    styleName(c.style),
    String(c.strands),
    widthText(c, units),
    quantityText({ value: c.length, as: 'length' }, units),
    buckleText(c.buckle, order.quantity),
    layersText(c.layers),
    quantityText({ value: c.clearance.inches, as: 'fine-length' }, units),
    chanceText(c.clearance.chance),
  ]);
  return table(
    head,
    rows.map((row) => row.map(escaped)),
  );
}

function widthText(candidate: Candidate, units: Units): string {
  const pinched = pinchedText(candidate, units);
  const wide = quantityText({ value: candidate.width, as: 'length' }, units);
  return pinched === '' ? wide : `${wide}, ${pinched}`;
}

const drawnText = (drawn: Simulated | undefined, units: Units): string[] =>
  drawn === undefined ? [] : [simulatedText(drawn, units)];

/** Why it stands there, what is not good about it, and what else there is to say. */
function specText(spec: RankedSpec, more: readonly string[], units: Units): string {
  const parts = [becauseText(spec, units) ?? 'Last of those that pass.', ...more];
  return `No. ${String(spec.rank)}: ${escaped(parts.join(' '))}`;
}
