/** `size` at the counter: the answer first, then what else would do, then what to measure. */
import type { Advice, RankedSpec } from '../advice/advice.ts';
import type { Finding } from '../advice/judge.ts';
import { workingOf } from '../horse/facts.ts';
import { ownNumbers } from '../words/about-order.ts';
import { assumptionText } from '../words/about-rest.ts';
import {
  becauseText,
  findingText,
  latigoText,
  marginText,
  nearestText,
  simulatedText,
  toTell,
} from '../words/about-specs.ts';
import type { Judgement } from '../rules/rule.ts';
import { notCutText, cinchText, clearText, orderName, shortCaution } from '../words/counter-words.ts';
import { everyBlocks } from './every-table.ts';
import { insteadRows, straightOrRoper, styleRows } from '../words/instead-words.ts';
import { likelyCauses, wishText } from '../words/wish-words.ts';
import { measureBlocks, tapedText } from '../words/measure-words.ts';
import { nothingBlocks, TIE_NOTHING } from '../words/nothing-words.ts';
import { withoutEmpty, type Block, type Sheet } from '../pages/sheet.ts';
import { capital, phraseText, type Units } from '../units/text.ts';
import type { ReportOptions } from '../pages/page.ts';
import type { SizeResult } from '../words/types.ts';
import { judgementWords, specName } from '../words/words.ts';

type Sized = SizeResult & { readonly ok: true };
type Asked = Pick<ReportOptions, 'units' | 'top' | 'why' | 'all'>;

/** The sheet of one order. */
export function sizeSheet(result: Sized, options: Asked): Sheet {
  const { advice } = result;
  const { first } = advice;
  const { units } = options;
  return {
    title: orderName(advice.facts.order),
    lead: leadText(advice, units),
    shop: '',
    about: [],
    notice: undefined,
    blocks: withoutEmpty([
      ...beforeBlocks(result, units),
      ...(first === undefined ? nothingBlocks(advice, units) : answerBlocks(result, first, options)),
      ...(options.all ? everyBlocks(advice, units) : []),
      ...(options.why ? whyBlocks(result, options) : []),
    ]),
    rules: [],
    cautions: advice.cautions,
    foot: [moreText(advice, options), shortCaution].filter((line) => line !== ''),
  };
}

/** A sore comes before everything; then that nothing will do, or that nothing may be cut; then what to tie. */
function leadText(advice: Advice, units: Units): string {
  const [welfare] = advice.welfare;
  if (welfare !== undefined) return phraseText(welfare, units);
  return advice.first === undefined ? TIE_NOTHING : answerText(advice, advice.first, units);
}

/** What to tie; where ring to ring is not taped, that nothing may be cut stands before it. */
function answerText(advice: Advice, { candidate }: RankedSpec, units: Units): string {
  const { lengthNeed, model } = advice.facts;
  const cinch = cinchText(candidate, { advice, units });
  const unsure = candidate.clearance.likely < model['chance-acceptable'];
  const tie = `${advice.mustHeal ? 'once healed, ' : ''}${unsure ? 'the best we can tie is' : 'tie'} ${cinch}.`;
  const parts = [...(lengthNeed.measured ? [] : [notCutText(advice)]), ...(unsure ? ['NOT SURE.'] : [])];
  return [...parts, parts.length === 0 ? tie : capital(tie)].join(' ');
}

/** What comes before the answer where a sore or a close groove leads. */
function beforeBlocks({ advice }: Sized, units: Units): Block[] {
  const { welfare, first } = advice;
  if (welfare.length === 0) return [];
  const rest = welfare.slice(1).map((phrase) => phraseText(phrase, units));
  const answer = first === undefined ? TIE_NOTHING : capital(answerText(advice, first, units));
  return [
    ...[...rest, ...likelyCauses(advice, units)].map((text): Block => ({ kind: 'text', text })),
    { kind: 'text', text: answer, tone: 'strong', apart: true },
  ];
}

function answerBlocks(result: Sized, first: RankedSpec, options: Asked): Block[] {
  const { advice, wants, simulated } = result;
  const { units, top } = options;
  const drawn = simulated?.[0];
  const told = toTell(first, advice.facts);
  // A long form never fits one screen: there nothing is left out.
  const spare = options.why || options.all ? {} : ({ spare: true } as const);
  return [
    { kind: 'text', text: clearText(first.candidate, { advice, units }) },
    { kind: 'text', text: drawn === undefined ? '' : simulatedText(drawn, units) },
    { kind: 'text', text: wants === undefined ? '' : wishText(wants, advice, units) },
    ...advice.remarks.map((remark): Block => ({ kind: 'text', text: phraseText(remark, units) })),
    {
      kind: 'table',
      columns: [{ head: 'Instead', least: 13 }, { head: 'Chance', align: 'right' }, { head: '' }],
      rows: insteadRows(advice, { units, top }),
      noted: true,
      apart: true,
    },
    { kind: 'text', text: straightOrRoper(advice), ...spare },
    {
      kind: 'table',
      columns: [{ head: '', least: 13 }, { head: '', align: 'right', least: 6 }, { head: '' }],
      rows: styleRows(advice, units),
      noted: true,
      ...spare,
    },
    ...measureBlocks(advice, units),
    { kind: 'text', text: lesserText(told, units, { poor: 'Poor', 'cannot-tell': 'Not judged' }) },
    { kind: 'text', text: lesserText(told, units, { acceptable: 'Fair' }), ...spare },
    { kind: 'text', text: tapedText(advice, units), ...spare },
    { kind: 'text', text: ownNumbers(advice.facts) ?? '' },
  ];
}

/** The elbow's chance and the stock stand in the answer itself; the pressure index only compares. */
const toldAbove: ReadonlySet<string> = new Set(['elbow-clearance', 'pressure-index', 'layers']);

/** What is less than good about the first: "Poor: ...", "Fair: ...", "Not judged: ...". */
function lesserText(
  findings: readonly Finding[],
  units: Units,
  leads: Partial<Record<Judgement, string>>,
): string {
  const of = ([judgement, lead]: [string, string]): string[] => {
    const found = findings.filter((entry) => entry.judgement === judgement && !toldAbove.has(entry.rule));
    const reasons = new Set(found.map(({ reason }) => phraseText(reason, units)));
    return reasons.size === 0 ? [] : [`${lead}: ${[...reasons].join('; ')}.`];
  };
  return Object.entries(leads).flatMap(of).join(' ');
}

/** The long form: every check of every spec shown, what it rests on, and the working. */
function whyBlocks({ advice }: Sized, { units, top }: Asked): Block[] {
  const working = workingOf(advice.facts).map(({ symbol, sum, result }) => `${symbol} = ${sum} = ${result}`);
  const shown = advice.specs.slice(0, Math.max(1, top));
  return [
    ...shown.flatMap((spec) => checkBlocks(spec, units)),
    ...(shown.length === 0 ? [] : [{ kind: 'text', text: latigoText(shown, units) } as const]),
    { kind: 'heading', text: 'What we went by' },
    { kind: 'list', items: advice.assumptions.map((entry) => `${assumptionText(entry, units)}.`) },
    { kind: 'heading', text: 'Working, in inches' },
    { kind: 'list', items: working },
  ];
}

function checkBlocks(spec: RankedSpec, units: Units): Block[] {
  const text = (finding: Finding): string => {
    const margin = marginText(finding, units);
    return `${findingText(finding, units, 'decimals')}${margin === undefined ? '' : ` Margin ${margin}.`}`;
  };
  return [
    { kind: 'heading', text: `Every check: no. ${String(spec.rank)}, ${specName(spec.candidate)}` },
    { kind: 'text', text: becauseText(spec, units) ?? 'Last of those that pass.' },
    { kind: 'text', text: nearestText(spec.candidate.clearance, units) },
    ...spec.findings.map((finding): Block => ({
      kind: 'list',
      items: [text(finding)],
      mark: judgementWords[finding.judgement].sign,
    })),
  ];
}

function moreText(advice: Advice, { why, all }: Asked): string {
  const { order } = advice.facts;
  const { specs, facts } = advice;
  // What is likelier to touch than not is not sure, and never counted among what passes.
  const count = specs.filter(
    ({ candidate: c }) => c.clearance.likely >= facts.model['chance-acceptable'],
  ).length;
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
