/** What one panel of a picture shows: a cinch laid on the side, and the words above it. */
import type { Advice, RankedSpec } from '../advice/advice.ts';
import type { Checked } from '../advice/check.ts';
import type { Candidate } from '../fit/candidate.ts';
import { askedText, standingOf, standingText, whichText } from '../report/about-check.ts';
import { elbowText, lesserTexts, ruleWords, toTell } from '../report/about-specs.ts';
import { capital, type Units } from '../report/text.ts';
import { specName, tiedText } from '../report/words.ts';
import { listed } from '../units/phrase.ts';

export interface Shown {
  readonly head: string;
  /** What it is called at its edge, where several lie on each other. */
  readonly tag: string;
  /** What must be seen first: that it is refused, or not sure. */
  readonly mark: string | undefined;
  readonly lines: readonly string[];
  /** Undefined when it cannot be laid on this horse. */
  readonly candidate: Candidate | undefined;
}

/** One of those that pass. */
export function shownSpec(spec: RankedSpec, { facts }: Advice, units: Units): Shown {
  const { candidate, rank } = spec;
  const found = toTell(spec, facts);
  const open = found.filter(({ judgement }) => judgement === 'cannot-tell');
  const doubts = [
    ...lesserTexts(found, 'customer'),
    ...(open.length === 0
      ? []
      : [`nobody can tell ${listed(open.map(({ rule }) => ruleWords(rule, 'customer')))}`]),
  ];
  return {
    head: `No. ${String(rank)}: ${specName(candidate)}`,
    tag: `No. ${String(rank)}`,
    mark: undefined,
    lines: [
      capital(tiedText(candidate, facts.order, units)),
      capital(elbowText(spec, units)),
      ...(doubts.length === 0 ? [] : [capital(doubts.join('; '))]),
    ],
    candidate,
  };
}

/** One that somebody wants, rides in, or named on the command line. */
export function shownChecked(checked: Checked, { facts, specs }: Advice, units: Units): Shown {
  const candidate = checked.judged?.candidate;
  const standing = standingOf(checked);
  const cinch = candidate === undefined ? '' : `: ${specName(candidate)}`;
  return {
    // Whoever is handed a picture knows of no command line.
    head: `${checked.which === 'command line' ? 'The cinch asked about' : whichText(checked)}${cinch}`,
    tag: tags[checked.which],
    mark: standing === 'refused' ? 'REFUSED' : standing === 'not sure' ? 'NOT SURE' : undefined,
    lines: [
      candidate === undefined
        ? capital(askedText(checked, units))
        : capital(tiedText(candidate, facts.order, units)),
      capital(standingText(checked, facts, { units, reader: 'customer' })),
      ...(checked.filled.length === 0 || candidate === undefined
        ? []
        : [`Taken, since not said: ${takenText(checked)}`]),
      ...(specs.length === 0 ? ['Nothing the shop can tie passes for this pair.'] : []),
    ],
    candidate,
  };
}

const tags = { wants: 'wanted', current: 'ridden in now', 'command line': 'asked about' } as const;

const takenText = ({ filled }: Checked): string => listed(filled.map(({ part }) => part));
