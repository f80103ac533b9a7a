/** `check` at the counter: how each cinch stands, why, and what would pass. */
import type { Advice, RankedSpec } from '../advice/advice.ts';
import type { Checked } from '../advice/check.ts';
import type { Finding } from '../advice/judge.ts';
import type { Candidate } from '../cinch/candidate.ts';
import { formatLength } from '../units/print.ts';
import { listed } from '../units/phrase.ts';
import {
  causeTexts,
  findingsOf,
  nearestOf,
  openOf,
  standingOf,
  type Standing,
} from '../words/about-check.ts';
import { ownNumbers } from '../words/about-order.ts';
import { nearestText, reasonsUnder, toTell } from '../words/about-specs.ts';
import { shortCaution } from '../numbers/cautions.ts';
import {
  aCinch,
  bucklesText,
  cinchText,
  oddsText,
  orderName,
  strungText,
  type Telling,
  notCutText,
  shortStyle,
} from '../words/counter-words.ts';
import { counterSheet, paragraph, withoutEmpty, type Block, type Sheet } from '../pages/sheet.ts';
import { capital, chanceText, phraseText, type Units } from '../units/text.ts';
import type { ReportOptions } from '../pages/page.ts';
import type { CheckResult } from '../words/types.ts';
import { namedText } from '../words/wish-words.ts';
import { checkBlocks, restsOnBlocks } from './in-full.ts';

type Read = CheckResult & { readonly ok: true };
type Asked = Pick<ReportOptions, 'units' | 'why'>;

/** The first cinch is on line 1, unless a sore is. */
export function checkSheet({ advice, checked }: Read, options: Asked): Sheet {
  const { units, why } = options;
  const [welfare, ...more] = advice.welfare.map((phrase) => phraseText(phrase, units));
  const [first, ...others] = checked.map((entry) => headText(entry, advice, units));
  const judged = first ?? 'nothing to check: the order names no cinch, wanted or current.';
  return counterSheet({
    title: orderName(advice.facts.order),
    lead: welfare ?? judged,
    blocks: withoutEmpty([
      ...[...more, ...(welfare === undefined ? [] : [capital(judged)])].map(paragraph),
      ...checked.flatMap((entry, i) => [
        ...(i === 0 ? [] : [{ ...paragraph(others[i - 1] ?? ''), apart: true } as const]),
        ...checkedBlocks(entry, advice, units),
      ]),
      ...advice.remarks.map((remark) => paragraph(phraseText(remark, units))),
      ...pickBlocks(checked, advice, units),
      paragraph(advice.facts.lengthNeed.measured || advice.first === undefined ? '' : notCutText(advice)),
      paragraph(ownNumbers(advice.facts) ?? ''),
      ...(why ? whyBlocks(checked, advice, units) : []),
    ]),
    cautions: advice.cautions,
    foot: [...(why ? [] : ['More: --why (every check).']), shortCaution],
  });
}

const whose: Readonly<Record<Checked['which'], string>> = {
  wants: 'Asked for',
  current: 'Current cinch',
  'command line': 'The cinch named',
};

const standingWords: Readonly<Record<Standing, string>> = {
  refused: 'RULED OUT',
  'not sure': 'NOT SURE',
  passes: 'PASSES',
};

/** "Current cinch (a straight, 19 strands): RULED OUT." */
function headText(checked: Checked, advice: Advice, units: Units): string {
  const { which, asked, filled, judged, kept = [] } = checked;
  const own = judged?.candidate;
  const named = namedText(asked, units) || 'nothing named';
  const taken =
    own === undefined || filled.length === 0
      ? ''
      : `; we filled in ${filledText(checked, own, { advice, units })}`;
  const odds =
    own === undefined || standingOf(checked) === 'refused'
      ? ''
      : ` The chance at the elbow is ${oddsText(own.clearance.chance)}.`;
  const rest = kept.length === 0 ? '' : ', the rest as in the order';
  return `${whose[which]}${rest} (${named}${taken}): ${standingWords[standingOf(checked)]}.${odds}`;
}

function filledText({ filled }: Checked, own: Candidate, { advice, units }: Telling): string {
  const words = {
    style: `a ${shortStyle(own.style)}`,
    strands: `${String(own.strands)} strands`,
    length: `${formatLength(own.length, units)} long`,
    buckle: bucklesText(own.buckle, advice.facts.shop, units),
  };
  return listed(filled.map(({ part }) => words[part]));
}

function checkedBlocks(checked: Checked, advice: Advice, units: Units): Block[] {
  const { judged, cannot } = checked;
  const told = toTell({ findings: findingsOf(checked) }, advice.facts);
  const ruled = told.filter(({ judgement }) => judgement === 'refuse');
  const reasons = judged === undefined && cannot !== undefined ? [cannot] : ruled.map(({ reason }) => reason);
  return [
    {
      kind: 'list',
      items: reasons.map((reason) => `${capital(phraseText(reason, units))}.`),
      mark: 'x',
    },
    paragraph(causeTexts(checked, units).join(' ')),
    paragraph(changeText(checked, advice, units)),
    { ...paragraph(lesserText(checked, told, units)), spare: true },
  ];
}

function lesserText(checked: Checked, told: readonly Finding[], units: Units): string {
  const only = (judgement: string): Finding[] => told.filter((finding) => finding.judgement === judgement);
  return [
    ...reasonsUnder('Poor', only('poor'), units),
    ...reasonsUnder('Fair', only('acceptable'), units),
    ...reasonsUnder('Not judged', openOf(checked), units),
  ].join(' ');
}

/** "Smallest change that passes: 8 in longer, on 3 in buckles." */
function changeText(checked: Checked, advice: Advice, units: Units): string {
  if (standingOf(checked) !== 'refused') return '';
  const nearest = nearestOf(checked);
  if (nearest === undefined) return 'No cinch we tie passes here: size says what comes closest.';
  const { candidate } = nearest;
  const own = checked.judged?.candidate;
  const changes =
    own === undefined
      ? cinchText(candidate, { advice, units })
      : changesText(own, candidate, { advice, units });
  return `Smallest change that passes: ${changes}. The chance at the elbow is ${oddsText(candidate.clearance.chance)}.`;
}

function changesText(from: Candidate, to: Candidate, { advice, units }: Telling): string {
  const strands = to.strands - from.strands;
  const longer = to.length - from.length;
  const parts = [
    from.style === to.style ? '' : aCinch(to),
    strands === 0 || from.style !== to.style
      ? ''
      : `${String(Math.abs(strands))} strands ${strands < 0 ? 'fewer' : 'more'}`,
    longer === 0 ? '' : `${formatLength(Math.abs(longer), units)} ${longer > 0 ? 'longer' : 'shorter'}`,
    from.buckle.id === to.buckle.id ? '' : `on ${bucklesText(to.buckle, advice.facts.shop, units)}`,
    from.layers === to.layers ? '' : strungText(to.layers),
  ];
  return parts.filter((part) => part !== '').join(', ');
}

/** Our pick, unless already shown. */
function pickBlocks(checked: readonly Checked[], advice: Advice, units: Units): Block[] {
  const { first } = advice;
  const shown = (spec: RankedSpec): boolean =>
    checked.some(
      (entry) => nearestOf(entry)?.rank === spec.rank || isSame(entry.judged?.candidate, spec.candidate),
    );
  if (first === undefined || shown(first)) return [];
  const chance = chanceText(first.candidate.clearance.chance);
  const pick = `Our pick${advice.mustHeal ? ', once healed' : ''} (${chance})`;
  return [{ ...paragraph(`${pick}: ${cinchText(first.candidate, { advice, units })}.`), apart: true }];
}

const isSame = (a: Candidate | undefined, b: Candidate): boolean =>
  a?.style === b.style &&
  a.strands === b.strands &&
  a.buckle.id === b.buckle.id &&
  Math.abs(a.length - b.length) < 0.5;

const whyBlocks = (checked: readonly Checked[], advice: Advice, units: Units): Block[] => [
  ...checked.flatMap((entry): Block[] =>
    entry.judged === undefined
      ? []
      : [
          { kind: 'heading', text: `Every check: ${whose[entry.which].toLowerCase()}` },
          paragraph(nearestText(entry.judged.candidate.clearance, units)),
          ...checkBlocks(findingsOf(entry), units),
        ],
  ),
  ...restsOnBlocks(advice, units),
];
