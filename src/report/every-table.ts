/** Every candidate that was tried, refused ones too, in one table no wider than the page. */
import Table from 'cli-table3';
import type { Advice } from '../advice/advice.ts';
import type { Judged } from '../advice/judge.ts';
import type { Facts } from '../facts/facts.ts';
import type { Style } from '../order/types.ts';
import { formatLength } from '../units/print.ts';
import { visible } from './clean.ts';
import { toTell } from './about-specs.ts';
import { sentence, type Page } from './page.ts';
import { chanceText } from './text.ts';
import { fit } from './width.ts';
import { judgementWords, ruleName } from './words.ts';

const shortStyle: Readonly<Record<Style, string>> = {
  straight: 'straight',
  'high-flare': 'high',
  'low-flare': 'low',
};
const head = ['Style', 'Strands', 'Layers', 'Wide', 'Long', 'Buckle', 'Clears', 'Sure', 'Says'];
const widths = [8, 7, 6, 5, 5, 12, 6, 5];

const legend = 'What each says: x refused by, ! poor on, ? cannot tell, ~ acceptable on, + good.';

/** The table, passing ones best first; the last column says what refuses it, else what is less than good. */
export function everyTable({ every, facts }: Pick<Advice, 'every' | 'facts'>, page: Page): string[] {
  const last = page.width - widths.reduce((sum, width) => sum + width + 1, 0);
  const all = [...widths, Math.max(10, last)];
  const lines = sentence(page, legend);
  for (let from = 0; from === 0 || from < every.length; from += PART) {
    const table = new Table({
      head: from === 0 ? head.map((text) => page.pen.strong(text)) : [],
      colWidths: all,
      chars: noBorders,
      style: { head: [], border: [], 'padding-left': 0, 'padding-right': 0 },
    });
    for (const entry of every.slice(from, from + PART)) table.push(cells(entry, all, { page, facts }));
    lines.push(...String(table).split('\n'));
  }
  return lines.map((line) => line.trimEnd());
}

interface Setting {
  readonly page: Page;
  readonly facts: Facts;
}

/** The layout compares every cell with every other, so a long table is made in parts. */
const PART = 30;

function cells(entry: Judged, all: readonly number[], { page: { units }, facts }: Setting): string[] {
  const { style, strands, layers, width, length, buckle, clearance } = entry.candidate;
  const bare = (inches: number, how: 'finished' | 'computed'): string =>
    formatLength(inches, units, how).replace(/ (in|cm)$/, '');
  const texts = [
    shortStyle[style],
    String(strands),
    layers === 0 ? '-' : String(layers),
    bare(width, 'finished'),
    bare(length, 'finished'),
    visible(buckle.id),
    bare(clearance.inches, 'computed'),
    chanceText(clearance.chance),
    saysText(entry, facts),
  ];
  return texts.map((text, i) => fit(text, all[i] ?? 0));
}

/** Refusals first; of the rest only the worst kind there is. */
function saysText(entry: Judged, facts: Facts): string {
  const [worst, ...rest] = toTell(entry, facts);
  if (worst === undefined) return '+ good';
  const { sign } = judgementWords[worst.judgement];
  const same = [worst, ...rest.filter(({ judgement }) => judgement === worst.judgement)];
  return `${sign} ${same.map(({ rule }) => ruleName(rule)).join(', ')}`;
}

const noBorders = {
  top: '',
  'top-mid': '',
  'top-left': '',
  'top-right': '',
  bottom: '',
  'bottom-mid': '',
  'bottom-left': '',
  'bottom-right': '',
  left: '',
  'left-mid': '',
  mid: '',
  'mid-mid': '',
  right: '',
  'right-mid': '',
  middle: ' ',
};
