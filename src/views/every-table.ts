/** Every cinch we tried as a table, passing ones best first. */
import type { Advice } from '../advice/advice.ts';
import type { Judged } from '../advice/judge.ts';
import type { Facts } from '../horse/facts.ts';
import { gap } from '../units/phrase.ts';
import { formatLength } from '../units/print.ts';
import { visible } from '../units/clean.ts';
import { toTell } from '../words/about-specs.ts';
import { shortStyle } from '../words/counter-words.ts';
import type { Block } from '../pages/sheet.ts';
import { chanceText, quantityText, type Units } from '../units/text.ts';
import { judgementWords, ruleName } from '../words/words.ts';

const right = 'right';

/** The heading and the table. */
export const everyBlocks = ({ every, facts }: Pick<Advice, 'every' | 'facts'>, units: Units): Block[] => [
  { kind: 'heading', text: 'Everything we tried, passing ones first' },
  {
    kind: 'table',
    columns: [
      { head: 'Style' },
      { head: 'Strands', align: right },
      { head: 'Wide', align: right },
      { head: 'Long', align: right },
      { head: 'Buckle' },
      { head: 'Clears', align: right },
      { head: 'Chance', align: right },
      { head: 'Says' },
    ],
    rows: every.map((entry) => cells(entry, facts, units)),
    noted: true,
  },
  { kind: 'text', text: 'x ruled out, ! poor, ? cannot tell, ~ fair, + good.', tone: 'quiet' },
];

function cells(entry: Judged, facts: Facts, units: Units): string[] {
  const { style, strands, width, length, buckle, clearance } = entry.candidate;
  const bare = (text: string): string => text.replace(/ (in|cm)$/, '');
  return [
    shortStyle(style),
    String(strands),
    bare(formatLength(width, units)),
    bare(formatLength(length, units)),
    visible(buckle.id),
    bare(quantityText(gap(clearance.inches), units)),
    chanceText(clearance.chance),
    saysText(entry, facts),
  ];
}

/** The first rule that rules it out, else only its worst findings. */
function saysText(entry: Judged, facts: Facts): string {
  const [worst, ...rest] = toTell(entry, facts);
  if (worst === undefined) return '+';
  const { sign } = judgementWords[worst.judgement];
  const same = [worst, ...rest.filter(({ judgement }) => judgement === worst.judgement)];
  return `${sign} ${same.map(({ rule }) => ruleName(rule)).join(', ')}`;
}
