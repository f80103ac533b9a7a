/** `size` for scripts: one result an order in input order, lengths in inches. */
import type { Advice, RankedSpec } from '../advice/advice.ts';
import type { Ask } from '../advice/measure-next.ts';
import type { Checked } from '../advice/check.ts';
import type { Finding } from '../advice/judge.ts';
import type { Simulated } from '../advice/simulate.ts';
import type { OtherStyle } from '../advice/straight-or-roper.ts';
import type { Assumption } from '../horse/estimate.ts';
import type { Candidate, Clearance } from '../cinch/candidate.ts';
import type { Problem } from '../yaml/problem.ts';
import { becauseOnly } from '../words/about-specs.ts';
import { impossibleText, refusedText } from '../words/about-rest.ts';
import { jsonText, rounded, roundedChance } from '../pages/json.ts';
import { phraseText } from '../units/text.ts';
import type { SizeResult } from '../words/types.ts';

export const sizeSchema = 'cinchwright/size/1';

/** Whole document: `{ schema, results }`. */
export const sizeJson = (results: readonly SizeResult[]): string =>
  jsonText({ schema: sizeSchema, results: results.map(sizeValue) });

/** One result, for one a line as well. */
export function sizeValue(result: SizeResult): Record<string, unknown> {
  if (!result.ok) return failedValue(result);
  const { file, advice, simulated, wants } = result;
  const { room, order } = advice.facts;
  return {
    order: order.order,
    file,
    assumptions: advice.assumptions.map(assumptionValue),
    ...(advice.facts.shop.learned === undefined ? {} : { learned: advice.facts.shop.learned }),
    room: { inches: rounded(room.value), sd: rounded(room.sd), basis: room.basis },
    // Only there when the horse is sore, girthy, or has a groove close behind the elbow: what comes before any cinch.
    ...(advice.welfare.length === 0
      ? {}
      : { welfare: advice.welfare.map((each) => phraseText(each, 'in', 'decimals')) }),
    specs: advice.specs.map((spec, i) => specValue(spec, simulated?.[i])),
    otherStyles: advice.otherStyles.map(otherStyleValue),
    refused: refusedValue(advice),
    ask: advice.ask.map(askValue),
    cautions: [...advice.cautions],
    // Only there when nothing passes: how far back the ring would have to hang before something does.
    ...(advice.specs.length > 0 ? {} : { wayOut: wayOutValue(advice) }),
    ...remarksValue(advice),
    // Only there when the order says what the customer wants.
    ...(wants === undefined ? {} : { wants: wantsValue(wants) }),
  };
}

/** Only there when the order has a photo, or its tapes disagree: where. */
export const remarksValue = ({ facts, remarks }: Advice): { remarks?: string[] } =>
  facts.photo === undefined && remarks.length === 0
    ? {}
    : { remarks: remarks.map((one) => phraseText(one, 'in', 'decimals')) };

/** A failed order: which, from where, and every problem. */
export function failedValue({ order, file, problems }: SizeResult & { ok: false }): {
  order: string | null;
  file: string;
  error: { problems: Problem[] };
} {
  return { order: order ?? null, file, error: { problems: problems.map((problem) => ({ ...problem })) } };
}

function wayOutValue({ wayOut }: Advice): Record<string, unknown> | null {
  if (wayOut === undefined) return null;
  const { style, strands, clearance } = wayOut.first.candidate;
  return { further: rounded(wayOut.further), style, strands, clearance: clearanceValue(clearance) };
}

/** Straight or roper: what a style that is not first would be here, and why it is not. */
const otherStyleValue = ({ style, spec, why }: OtherStyle): Record<string, unknown> => ({
  style,
  rank: spec?.rank ?? null,
  strands: spec?.candidate.strands ?? null,
  chance: spec === undefined ? null : roundedChance(spec.candidate.clearance.chance),
  text: phraseText(why, 'in', 'decimals'),
});

/** One input, with its spread and where it came from. */
export const assumptionValue = ({
  input,
  value,
  unit,
  basis,
  sd,
  kind,
}: Assumption): Record<string, unknown> => ({
  input,
  value: rounded(value),
  unit,
  basis,
  sd: rounded(sd),
  kind,
});

function specValue(spec: RankedSpec, simulated: Simulated | undefined): Record<string, unknown> {
  const { rank, candidate, becauseOf, findings, evenLengths } = spec;
  const drawn = simulated === undefined ? undefined : simulatedValue(simulated);
  return {
    rank,
    ...candidateValue(candidate),
    ...(drawn === undefined ? {} : { simulated: drawn }),
    becauseOf:
      becauseOf === undefined ? null : { criterion: becauseOf.criterion, text: becauseOnly(spec, 'in') },
    findings: findings.map(findingValue),
    run: { inches: rounded(candidate.run), sd: rounded(candidate.runSd) },
    evenLengths: evenLengths.map(({ length, run }) => ({ length: rounded(length), run: rounded(run) })),
  };
}

/** A cinch as numbers: what is tied, and how it clears the elbow. */
export function candidateValue(candidate: Candidate): Record<string, unknown> {
  const { style, strands, layers, width, buckleWidth, flareStart, length, buckle, clearance } = candidate;
  return {
    style,
    strands,
    layers,
    width: rounded(width),
    buckleWidth: rounded(buckleWidth),
    flareStart: flareStart === undefined ? null : rounded(flareStart),
    length: rounded(length),
    buckle: buckle.id,
    clearance: clearanceValue(clearance),
  };
}

const clearanceValue = ({
  inches,
  sd,
  floor,
  chance,
  station,
  where,
}: Clearance): Record<string, unknown> => ({
  inches: rounded(inches),
  sd: rounded(sd),
  floor: rounded(floor),
  chance: roundedChance(chance),
  station: rounded(station),
  where,
});

/** One verdict; `margin` is null where the rule has none. */
export const findingValue = ({ rule, judgement, margin, reason }: Finding): Record<string, unknown> => ({
  rule,
  judgement,
  margin: margin === undefined ? null : rounded(margin),
  text: phraseText(reason, 'in', 'decimals'),
});

const simulatedValue = ({ mean, sd, chance, draws, seed }: Simulated): Record<string, unknown> => ({
  inches: rounded(mean),
  sd: rounded(sd),
  chance: rounded(chance),
  draws,
  seed,
});

/** Style and strand counts that will not do; a style that cannot be tied at all has no strands. */
const refusedValue = (advice: Advice): Record<string, unknown>[] => [
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

const askValue = (ask: Ask): Record<string, unknown> => ({
  input: ask.input,
  how: ask.how,
  beforeCutting: ask.beforeCutting,
  sdNow: rounded(ask.sdNow),
  sdThen: rounded(ask.sdThen),
  chanceNow: roundedChance(ask.chanceNow),
  chanceThen: roundedChance(ask.chanceThen),
  couldEarn: ask.couldEarn ?? null,
});

/** What the customer asked for, and how it stands. */
export const wantsValue = ({
  judged,
  passes,
  filled,
  cannot,
  nearest,
}: Checked): Record<string, unknown> => ({
  passes,
  filled: filled.map(({ part, taken }) => ({ part, taken })),
  cannot: cannot === undefined ? null : phraseText(cannot, 'in', 'decimals'),
  spec: judged === undefined ? null : candidateValue(judged.candidate),
  nearestRank: nearest?.rank ?? null,
});
