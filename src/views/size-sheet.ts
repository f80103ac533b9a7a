/** `size` at the counter: the answer, the alternatives, what to measure. */
import type { Advice, RankedSpec } from '../advice/advice.ts';
import { isUnsure, type Finding, type Judged } from '../advice/judge.ts';
import type { Facts } from '../horse/facts.ts';
import { shortCaution } from '../numbers/cautions.ts';
import type { ReportOptions } from '../pages/page.ts';
import {
  left,
  right,
  counterSheet,
  paragraph,
  withoutEmpty,
  type Block,
  type Sheet,
} from '../pages/sheet.ts';
import type { Judgement } from '../rules/rule.ts';
import { visible } from '../units/clean.ts';
import { gap } from '../units/phrase.ts';
import { formatLength } from '../units/print.ts';
import { capital, chanceText, phraseText, quantityText, type Units } from '../units/text.ts';
import { ownNumbers } from '../words/about-order.ts';
import {
  becauseText,
  latigoText,
  nearestText,
  reasonsUnder,
  simulatedText,
  toTell,
} from '../words/about-specs.ts';
import { cinchText, clearText, nearest, notCutText, orderName, shortStyle } from '../words/counter-words.ts';
import { insteadRows, straightOrRoper, styleRows } from '../words/instead-words.ts';
import { measureBlocks, tapedText } from '../words/measure-words.ts';
import { nothingBlocks, TIE_NOTHING } from '../words/nothing-words.ts';
import type { SizeResult } from '../words/types.ts';
import { likelyCauses, wishText } from '../words/wish-words.ts';
import { judgementWords, ruleName, specName } from '../words/words.ts';
import { checkBlocks, restsOnBlocks } from './in-full.ts';

type Sized = SizeResult & { readonly ok: true };
type Asked = Pick<ReportOptions, 'units' | 'top' | 'why' | 'all'>;

/** One order. */
export function sizeSheet(result: Sized, options: Asked): Sheet {
  const { advice } = result;
  const { first } = advice;
  const { units } = options;
  return counterSheet({
    title: orderName(advice.facts.order),
    lead: leadText(advice, units),
    blocks: withoutEmpty([
      ...beforeBlocks(result, units),
      ...(first === undefined ? nothingBlocks(advice, units) : answerBlocks(result, first, options)),
      ...(options.all ? everyBlocks(advice, units) : []),
      ...(options.why ? whyBlocks(advice, options) : []),
    ]),
    cautions: advice.cautions,
    foot: [moreText(advice, options), shortCaution].filter((line) => line !== ''),
  });
}

/** A sore comes before the answer. */
function leadText(advice: Advice, units: Units): string {
  const [welfare] = advice.welfare;
  if (welfare !== undefined) return phraseText(welfare, units);
  return advice.first === undefined ? TIE_NOTHING : answerText(advice, advice.first, units);
}

/** DO NOT CUT comes first while ring to ring is not taped. */
function answerText(advice: Advice, spec: RankedSpec, units: Units): string {
  const { lengthNeed } = advice.facts;
  const cinch = cinchText(spec.candidate, { advice, units });
  const unsure = isUnsure(spec);
  const tie = `${advice.mustHeal ? 'once healed, ' : ''}${unsure ? 'the best we can tie is' : 'tie'} ${cinch}.`;
  const parts = [...(lengthNeed.measured ? [] : [notCutText(advice)]), ...(unsure ? ['NOT SURE.'] : [])];
  return [...parts, parts.length === 0 ? tie : capital(tie)].join(' ');
}

/** The answer, where a sore or close groove took line 1. */
function beforeBlocks({ advice }: Sized, units: Units): Block[] {
  const { welfare, first } = advice;
  if (welfare.length === 0) return [];
  const rest = welfare.slice(1).map((phrase) => phraseText(phrase, units));
  const answer = first === undefined ? TIE_NOTHING : capital(answerText(advice, first, units));
  return [
    ...[...rest, ...likelyCauses(advice, units)].map(paragraph),
    { kind: 'text', text: answer, tone: 'strong', apart: true },
  ];
}

function answerBlocks(result: Sized, first: RankedSpec, options: Asked): Block[] {
  const { advice, wants, simulated } = result;
  const { units, top } = options;
  const drawn = simulated?.[0];
  const told = toTell(first, advice.facts);
  // The long form drops nothing.
  const spare = options.why || options.all ? {} : ({ spare: true } as const);
  return [
    paragraph(clearText(first.candidate, { advice, units })),
    paragraph(drawn === undefined ? '' : simulatedText(drawn, units)),
    paragraph(wants === undefined ? '' : wishText(wants, advice, units)),
    ...advice.remarks.map((remark) => paragraph(phraseText(remark, units))),
    {
      kind: 'table',
      columns: [{ head: 'Instead', least: 13 }, ...right('Chance'), ...left('')],
      rows: insteadRows(advice, { units, top }),
      noted: true,
      apart: true,
      ...spare,
    },
    paragraph(straightOrRoper(advice)),
    {
      kind: 'table',
      columns: [{ head: '', least: 13 }, { head: '', align: 'right', least: 6 }, { head: '' }],
      rows: styleRows(advice, units),
      noted: true,
      ...spare,
    },
    ...measureBlocks(advice, units),
    paragraph(lesserText(told, units, { poor: 'Poor', 'cannot-tell': 'Not judged' })),
    { kind: 'text', text: lesserText(told, units, { acceptable: 'Fair' }), ...spare },
    { kind: 'text', text: tapedText(advice, units), ...spare },
    paragraph(ownNumbers(advice.facts) ?? ''),
  ];
}

/** Already in the answer, or only for comparing. */
const toldAbove: ReadonlySet<string> = new Set(['elbow-clearance', 'pressure-index', 'layers']);

/** "Poor: ...", "Fair: ...", "Not judged: ...". */
function lesserText(
  findings: readonly Finding[],
  units: Units,
  leads: Partial<Record<Judgement, string>>,
): string {
  const told = findings.filter(({ rule }) => !toldAbove.has(rule));
  return Object.entries(leads)
    .flatMap(([wanted, lead]) =>
      reasonsUnder(
        lead,
        told.filter(({ judgement }) => judgement === wanted),
        units,
      ),
    )
    .join(' ');
}

function whyBlocks(advice: Advice, { units, top }: Asked): Block[] {
  const shown = advice.specs.slice(0, Math.max(1, top));
  return [
    ...shown.flatMap((spec) => [
      {
        kind: 'heading',
        text: `Every check: no. ${String(spec.rank)}, ${specName(spec.candidate)}`,
      } as const,
      paragraph(becauseText(spec, units) ?? 'Last of those that pass.'),
      paragraph(nearestText(spec.candidate.clearance, units)),
      ...checkBlocks(spec.findings, units),
    ]),
    ...(shown.length === 0 ? [] : [paragraph(latigoText(shown, units))]),
    ...restsOnBlocks(advice, units),
  ];
}

function moreText(advice: Advice, { why, all }: Asked): string {
  const { order } = advice.facts;
  // NOT SURE never counts as passing.
  const count = advice.specs.filter((spec) => !isUnsure(spec)).length;
  const more = [
    ...(why ? [] : ['--why (every check)']),
    ...(all ? [] : [count === 0 ? '--all (everything we tried)' : `--all (all ${String(count)} that pass)`]),
  ];
  const current = order.current !== undefined && order.horse.trouble.length > 0 ? 'Current cinch: check' : '';
  const message = current === '' && count > 0 ? 'Customer message: ask' : current;
  return [more.length === 0 ? '' : `More: ${more.join(', ')}.`, message]
    .filter((part) => part !== '')
    .join(' ');
}

/** Every cinch we tried, passing ones best first. */
const everyBlocks = ({ every, facts }: Pick<Advice, 'every' | 'facts'>, units: Units): Block[] => [
  { kind: 'heading', text: 'Everything we tried, passing ones first' },
  {
    kind: 'table',
    columns: [
      ...left('Style'),
      ...right('Strands', 'Wide', 'Long'),
      ...left('Buckle'),
      ...right('Clears', 'Chance'),
      ...left('Says'),
    ],
    rows: every.map((entry) => cells(entry, facts, units)),
    noted: true,
  },
  { kind: 'text', text: 'x ruled out, ! poor, ? cannot tell, ~ fair, + good.', tone: 'quiet' },
];

function cells(entry: Judged, facts: Facts, units: Units): string[] {
  const { style, strands, width, length, buckle, clearance } = entry.candidate;
  const { inches } = nearest(entry.candidate);
  const bare = (text: string): string => text.replace(/ (in|cm)$/, '');
  return [
    shortStyle(style),
    String(strands),
    bare(formatLength(width, units)),
    bare(formatLength(length, units)),
    visible(buckle.id),
    bare(quantityText(gap(inches), units)),
    chanceText(clearance.chance),
    saysText(entry, facts),
  ];
}

/** The first rule that rules it out, else its worst findings. */
function saysText(entry: Judged, facts: Facts): string {
  const [worst, ...rest] = toTell(entry, facts);
  if (worst === undefined) return '+';
  const { sign } = judgementWords[worst.judgement];
  const same = [worst, ...rest.filter(({ judgement }) => judgement === worst.judgement)];
  return `${sign} ${same.map(({ rule }) => ruleName(rule)).join(', ')}`;
}
