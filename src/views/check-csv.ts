/** `check` as a table for a spreadsheet: one row a rule for each cinch judged. */
import type { Checked } from '../advice/check.ts';
import type { Finding } from '../advice/judge.ts';
import { findingsOf, standingOf } from '../words/about-check.ts';
import { csvText, type Cell } from '../pages/csv.ts';
import { unreadNote } from '../words/unread-note.ts';
import { rounded } from '../pages/json.ts';
import { phraseText } from '../units/text.ts';
import type { CheckResult } from '../words/types.ts';

interface Row {
  readonly order: string | undefined;
  readonly file: string;
  readonly checked?: Checked | undefined;
  readonly finding?: Finding | undefined;
  readonly note?: string | undefined;
}

interface Column {
  readonly name: string;
  readonly about: string;
  readonly of: (row: Row) => Cell | null;
}

/** Columns in order, each with what it holds. Lengths are inches. */
export const checkColumns: readonly Column[] = [
  { name: 'order', about: 'the order', of: ({ order }) => order },
  { name: 'file', about: 'the file it came from', of: ({ file }) => file },
  { name: 'which', about: 'wants, current or command line', of: ({ checked }) => checked?.which },
  {
    name: 'standing',
    about: 'passes, refused, not sure or not read',
    of: ({ checked }) => (checked === undefined ? 'not read' : standingOf(checked)),
  },
  { name: 'style', about: 'style as judged', of: ({ checked }) => checked?.judged?.candidate.style },
  { name: 'strands', about: 'strands as judged', of: ({ checked }) => checked?.judged?.candidate.strands },
  {
    name: 'length_in',
    about: 'finished length as judged',
    of: ({ checked }) => numberOf(checked?.judged?.candidate.length),
  },
  { name: 'buckle', about: 'buckle as judged', of: ({ checked }) => checked?.judged?.candidate.buckle.id },
  { name: 'rule', about: 'the rule', of: ({ finding }) => finding?.rule },
  { name: 'judgement', about: 'what it says', of: ({ finding }) => finding?.judgement },
  {
    name: 'margin',
    about: 'how far from the nearest bound, in the unit of the thing judged',
    of: ({ finding }) => numberOf(finding?.margin),
  },
  {
    name: 'text',
    about: 'why',
    of: ({ finding, note }) => (finding === undefined ? note : phraseText(finding.reason, 'in', 'decimals')),
  },
];

const numberOf = (value: number | undefined): Cell | null =>
  value === undefined ? undefined : rounded(value);

/** The table with its head. */
export const checkCsv = (results: readonly CheckResult[]): string =>
  csvText([
    checkColumns.map(({ name }) => name),
    ...results.flatMap(rowsOf).map((row) => checkColumns.map(({ of }) => of(row) ?? undefined)),
  ]);

function rowsOf(result: CheckResult): Row[] {
  if (!result.ok) {
    const { order, file } = result;
    const note = unreadNote(result);
    return [{ order, file, note }];
  }
  const { order } = result.advice.facts.order;
  return result.checked.flatMap((checked): Row[] => {
    const base = { order, file: result.file, checked };
    if (checked.judged === undefined) {
      return [
        {
          ...base,
          note: checked.cannot === undefined ? undefined : phraseText(checked.cannot, 'in', 'decimals'),
        },
      ];
    }
    return findingsOf(checked).map((finding) => ({ ...base, finding }));
  });
}
