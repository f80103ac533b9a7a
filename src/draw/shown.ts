/** What one panel shows: a cinch, and the words above it. */
import type { Advice, RankedSpec } from '../advice/advice.ts';
import type { Checked } from '../advice/check.ts';
import type { Judged } from '../advice/judge.ts';
import type { Candidate, Clearance } from '../cinch/candidate.ts';
import { askedText, findingsOf, standingOf } from '../words/about-check.ts';
import { isUnsure } from '../advice/judge.ts';
import { toTell } from '../words/about-specs.ts';
import { buckledText, nearest, oddsText, shortStyle, tooText, wideText } from '../words/counter-words.ts';
import { capital, phraseText, quantityText, type Units } from '../units/text.ts';
import { reasonsText } from '../words/wish-words.ts';
import { ruleName } from '../words/words.ts';
import { dist, gap, listed, overlap } from '../units/phrase.ts';
import { formatLength } from '../units/print.ts';

export interface Shown {
  readonly head: string;
  /** Its short name. */
  readonly tag: string;
  /** RULED OUT or NOT SURE. */
  readonly mark: string | undefined;
  readonly lines: readonly string[];
  /** undefined when it can't be laid on this horse. */
  readonly candidate: Candidate | undefined;
  /** The clearance in its words, when not the tightest. */
  readonly clearance?: Clearance;
}

/** A spec that passes. */
export function shownSpec(spec: RankedSpec, advice: Advice, units: Units): Shown {
  const { candidate, rank } = spec;
  const tag = `No. ${String(rank)}`;
  return {
    head: `${tag}: ${nameOf(candidate)}`,
    tag,
    mark: isUnsure(spec) ? 'NOT SURE' : undefined,
    lines: [
      tiedText(candidate, advice, units),
      ...clearLines(candidate, units),
      ...lesserLines(spec, advice),
    ],
    candidate,
  };
}

/** A wanted, current or named cinch. */
export function shownChecked(checked: Checked, advice: Advice, units: Units): Shown {
  const { which, filled, judged, cannot } = checked;
  const candidate = judged?.candidate;
  const standing = standingOf(checked);
  const why =
    judged === undefined
      ? [capital(cannot === undefined ? 'it cannot be tied here' : phraseText(cannot, units))]
      : standing === 'refused'
        ? [capital(reasonsText(checked, units))]
        : [...clearLines(judged.candidate, units), ...lesserLines({ findings: findingsOf(checked) }, advice)];
  return {
    head: `${heads[which]}${candidate === undefined ? '' : `: ${nameOf(candidate)}`}`,
    tag: tags[which],
    mark: standing === 'refused' ? 'RULED OUT' : standing === 'not sure' ? 'NOT SURE' : undefined,
    lines: [
      candidate === undefined ? capital(askedText(checked, units)) : tiedText(candidate, advice, units),
      ...why,
      ...(filled.length === 0 || candidate === undefined
        ? []
        : [`We filled in: ${listed(filled.map(({ part }) => part))}`]),
      ...(advice.specs.length === 0 ? ['No cinch we tie passes here'] : []),
    ],
    candidate,
  };
}

const heads = {
  wants: 'Asked for',
  current: 'Current cinch',
  'command line': 'The cinch asked about',
} as const;
const tags = { wants: 'asked for', current: 'current cinch', 'command line': 'asked about' } as const;

/** "straight, 19 strands". */
const nameOf = ({ style, strands }: Candidate): string => `${shortStyle(style)}, ${String(strands)} strands`;

/** "4 3/4 in wide, 32 in long, on 3 in buckles". */
const tiedText = (candidate: Candidate, advice: Advice, units: Units): string =>
  [
    wideText(candidate, units),
    `${formatLength(candidate.length, units)} long`,
    buckledText(candidate, { advice, units }),
  ].join(', ');

/** "Should clear the elbow by about 1 3/8 in, needs 1 in". */
function clearLines(candidate: Candidate, units: Units): string[] {
  const { clearance, cordClearance } = candidate;
  const { inches, skin, where } = nearest(candidate);
  const odds = `Chance ${oddsText(clearance.chance)}${skin && !clearance.skin ? `, ${tooText(clearance)}` : ''}`;
  if (inches < 0) return [`Reaches onto the elbow, about ${quantityText(overlap(-inches), units)}`, odds];
  const needs = `, needs ${quantityText(dist(cordClearance.floor), units)}`;
  const at = skin ? needs : where === 'buckle' ? ' at the buckle' : ' above its point';
  return [`Should clear the elbow by about ${quantityText(gap(inches), units)}${at}`, odds];
}

/** Worst first. */
function lesserLines(judged: Pick<Judged, 'findings'>, { facts }: Advice): string[] {
  const found = toTell(judged, facts);
  return (['poor', 'acceptable', 'cannot-tell'] as const).flatMap((wanted) => {
    const names = found.filter(({ judgement }) => judgement === wanted).map(({ rule }) => ruleName(rule));
    return names.length === 0 ? [] : [`${leads[wanted]}: ${listed(names)}`];
  });
}

const leads = { poor: 'Poor', acceptable: 'Fair', 'cannot-tell': 'Not judged' } as const;
