/** `size` for scripts: one result per order; as a table, one row per spec. */
import type { Advice, RankedSpec } from '../advice/advice.ts';
import type { Ask } from '../advice/measure-next.ts';
import type { Simulated } from '../advice/simulate.ts';
import type { OtherStyle } from '../advice/straight-or-roper.ts';
import type { Shop } from '../order/types.ts';
import { jsonText, rounded, roundedChance } from '../pages/json.ts';
import type { ReportOptions } from '../pages/page.ts';
import { phraseText } from '../units/text.ts';
import { standingBy } from '../words/about-check.ts';
import { impossibleText, refusedText } from '../words/about-rest.ts';
import { becauseOnly } from '../words/about-specs.ts';
import type { Name } from '../words/names.ts';
import type { SizeResult } from '../words/types.ts';
import { firstRefusal, lengthBasis, verdictOf } from '../work/row.ts';
import {
  assumptionValue,
  candidateValue,
  clearanceValue,
  failedRow,
  failedValue,
  findingValue,
  lessThanGood,
  remarksValue,
  standingValue,
  phraseValue,
} from './shared-values.ts';
import { tableCsv, type Values } from './table.ts';
import type { WhatIf } from './side-by-side-sheet.ts';

/** How many specs, and whether with every finding. */
export type Depth = Pick<ReportOptions, 'top' | 'all' | 'why'>;

const schema = 'cinchwright/size/1';

/** `{ schema, results }`. */
export const sizeJson = (results: readonly SizeResult[], depth: Depth): string =>
  jsonText({ schema, results: results.map((result) => sizeValue(result, depth)) });

/** `whatIf` is null for the original order. */
export const whatIfJson = (answers: readonly WhatIf[], depth: Depth): string =>
  jsonText({
    schema,
    results: answers.map(({ whatIf = null, result }) => ({ whatIf, ...sizeValue(result, depth) })),
  });

function sizeValue(result: SizeResult, depth: Depth): Values {
  if (!result.ok) {
    const { order, file, error } = failedValue(result);
    return { order, file, verdict: 'faulty', error };
  }
  const { advice, simulated, wants } = result;
  const { facts, specs } = advice;
  return {
    ...headValue(result),
    assumptions: advice.assumptions.map(assumptionValue),
    ...learnedValue(facts.shop),
    room: { inches: rounded(facts.room.value), sd: rounded(facts.room.sd), basis: facts.room.basis },
    // Only for a sore or cinchy horse, or a close groove.
    ...(advice.welfare.length === 0 ? {} : { welfare: advice.welfare.map(phraseValue) }),
    passing: specs.filter(({ findings }) => standingBy(findings) === 'passes').length,
    specs: listed(specs, depth).map((spec, i) => specValue(spec, simulated?.[i], depth)),
    otherStyles: advice.otherStyles.map(otherStyleValue),
    refused: refusedValue(advice),
    ask: advice.ask.map(askValue),
    cautions: [...advice.cautions],
    // Only when nothing passes.
    ...(specs.length > 0 ? {} : { wayOut: wayOutValue(advice) }),
    ...remarksValue(advice),
    // Only with a wish.
    ...(wants === undefined ? {} : { wants: standingValue(wants) }),
  };
}

function headValue({ file, advice }: SizeResult & { ok: true }): Values {
  const { facts, first } = advice;
  const reason = first === undefined ? firstRefusal(advice) : undefined;
  return {
    order: facts.order.order,
    file,
    verdict: verdictOf(first),
    reason: reason === undefined ? null : phraseText(reason, 'in'),
    lengthBasis: lengthBasis(facts.lengthNeed.measured),
  };
}

const listed = (specs: readonly RankedSpec[], { top, all }: Depth): readonly RankedSpec[] =>
  all ? specs : specs.slice(0, top);

/** Only when numbers were learned. */
const learnedValue = ({ learned }: Shop): Values =>
  learned === undefined ? {} : { learned: Object.entries(learned).map(([key, from]) => ({ key, ...from })) };

function wayOutValue({ wayOut }: Advice): Values | null {
  if (wayOut === undefined) return null;
  const { style, strands, clearance } = wayOut.first.candidate;
  return { further: rounded(wayOut.further), style, strands, clearance: clearanceValue(clearance) };
}

/** The best of each other style, and why it is not first. */
const otherStyleValue = ({ style, spec, why }: OtherStyle): Values => ({
  style,
  rank: spec?.rank ?? null,
  strands: spec?.candidate.strands ?? null,
  chance: spec === undefined ? null : roundedChance(spec.candidate.clearance.chance),
  text: phraseValue(why),
});

function specValue(spec: RankedSpec, simulated: Simulated | undefined, { why }: Depth): Values {
  const { rank, candidate, becauseOf, findings, evenLengths } = spec;
  return {
    rank,
    standing: standingBy(findings),
    ...candidateValue(candidate),
    ...(simulated === undefined ? {} : { simulated: simulatedValue(simulated) }),
    becauseOf:
      becauseOf === undefined ? null : { criterion: becauseOf.criterion, text: becauseOnly(spec, 'in') },
    findings: (why ? findings : findings.filter(lessThanGood)).map(findingValue),
    latigoRun: { inches: rounded(candidate.run), sd: rounded(candidate.runSd) },
    evenLengths: evenLengths.map(({ length, run }) => ({
      length: rounded(length),
      latigoRun: { inches: rounded(run) },
    })),
  };
}

const simulatedValue = ({ mean, sd, chance, draws, seed }: Simulated): Values => ({
  inches: rounded(mean),
  sd: rounded(sd),
  chance: rounded(chance),
  draws,
  seed,
});

/** No strands for a style we can't tie at all. */
const refusedValue = (advice: Advice): Values[] => [
  ...advice.refused.map((entry) => ({
    style: entry.style,
    strands: entry.strands,
    rule: entry.rule,
    text: refusedText(entry, 'in'),
    tried: entry.tried,
  })),
  ...advice.impossible.map((style) => ({
    style,
    strands: null,
    rule: null,
    text: impossibleText(style, advice),
    tried: 0,
  })),
];

const askValue = (ask: Ask): Values => ({
  input: ask.input,
  how: ask.how,
  beforeCutting: ask.beforeCutting,
  sdNow: rounded(ask.sdNow),
  sdThen: rounded(ask.sdThen),
  chanceNow: roundedChance(ask.chanceNow),
  chanceThen: roundedChance(ask.chanceThen),
  couldEarn: ask.couldEarn ?? null,
});

export const sizeColumns: readonly Name[] = [
  'order',
  'file',
  'verdict',
  'rank',
  'standing',
  'style',
  'strands',
  'layers',
  'width',
  'buckleWidth',
  'flareStart',
  'length',
  'lengthBasis',
  'buckle',
  'clearance',
  'clearanceSd',
  'chance',
  'latigoRun',
  'becauseOf',
  'findings',
  'reason',
  'problem',
];

/** The table. */
export const sizeCsv = (results: readonly SizeResult[], depth: Depth): string =>
  tableCsv(
    sizeColumns,
    results.flatMap((result) => rowsOf(result, depth)),
  );

/** `whatIf` is empty for the original order. */
export const whatIfCsv = (answers: readonly WhatIf[], depth: Depth): string =>
  tableCsv(
    ['whatIf', ...sizeColumns],
    answers.flatMap(({ whatIf, result }) => rowsOf(result, depth).map((row) => ({ whatIf, ...row }))),
  );

/** An order without specs gets one row with the reason. */
function rowsOf(result: SizeResult, depth: Depth): Values[] {
  if (!result.ok) return [{ ...failedRow(result), verdict: 'faulty' }];
  const head = headValue(result);
  const specs = listed(result.advice.specs, depth).map((spec) => ({
    ...head,
    ...specValue(spec, undefined, depth),
    findings: spec.findings
      .filter(lessThanGood)
      .map(({ rule, judgement }) => `${rule} ${judgement}`)
      .join('; '),
  }));
  return specs.length > 0 ? specs : [head];
}
