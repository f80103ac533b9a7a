/** `size` as a table for a spreadsheet: one row a spec; an order without any has one row that says so. */
import type { RankedSpec } from '../advice/advice.ts';
import type { Facts } from '../horse/facts.ts';
import { becauseOnly, shortFinding, toTell } from '../words/about-specs.ts';
import { csvText, type Cell } from '../pages/csv.ts';
import { unreadNote } from '../words/unread-note.ts';
import { rounded, roundedChance } from '../pages/json.ts';
import type { SizeResult } from '../words/types.ts';

interface Column {
  readonly name: string;
  readonly about: string;
  readonly of: (row: Row) => Cell | null;
}

interface Row {
  readonly order: string | undefined;
  readonly file: string;
  readonly outcome: 'passes' | 'nothing passes' | 'not read';
  readonly spec?: RankedSpec | undefined;
  readonly facts?: Facts;
  readonly note?: string | undefined;
}

const number =
  (of: (spec: RankedSpec) => number | undefined, round = rounded) =>
  ({ spec }: Row): Cell | null => {
    const value = spec === undefined ? undefined : of(spec);
    return value === undefined ? undefined : round(value);
  };

const text =
  (of: (spec: RankedSpec) => string | undefined) =>
  ({ spec }: Row): Cell =>
    spec === undefined ? undefined : of(spec);

/** Columns in order, each with what it holds. Lengths are inches. */
export const sizeColumns: readonly Column[] = [
  { name: 'order', about: 'the order', of: ({ order }) => order },
  { name: 'file', about: 'the file it came from', of: ({ file }) => file },
  { name: 'outcome', about: 'passes, nothing passes, or not read', of: ({ outcome }) => outcome },
  { name: 'rank', about: 'place in the order of merit, 1 is best', of: number((s) => s.rank) },
  { name: 'style', about: 'straight, high-flare or low-flare', of: text((s) => s.candidate.style) },
  { name: 'strands', about: 'body cords side by side', of: number((s) => s.candidate.strands) },
  { name: 'layers', about: '1 single, 2 double', of: number((s) => s.candidate.layers) },
  { name: 'width_in', about: 'width of the body at full spread', of: number((s) => s.candidate.width) },
  {
    name: 'buckle_width_in',
    about: 'width of the body at the buckle',
    of: number((s) => s.candidate.buckleWidth),
  },
  {
    name: 'flare_start_in',
    about: 'how far below the buckle a roper begins to widen; empty for a straight',
    of: number((s) => s.candidate.flareStart),
  },
  {
    name: 'length_in',
    about: 'finished length, outside to outside of the hardware',
    of: number((s) => s.candidate.length),
  },
  {
    name: 'buckle',
    about: 'the buckle by its name in the shop file',
    of: text((s) => s.candidate.buckle.id),
  },
  { name: 'clearance_in', about: 'elbow clearance', of: number((s) => s.candidate.clearance.inches) },
  { name: 'clearance_sd_in', about: 'its spread', of: number((s) => s.candidate.clearance.sd) },
  {
    name: 'chance',
    about: 'chance that the clearance is at least the floor, 0 to 1',
    of: number((s) => s.candidate.clearance.chance, roundedChance),
  },
  { name: 'latigo_run_in', about: 'latigo left on each side', of: number((s) => s.candidate.run) },
  { name: 'because', about: 'why it comes before the next', of: text((s) => becauseOnly(s, 'in')) },
  {
    name: 'not_good',
    about: 'rules that find it less than good, with the judgement, as far as "size" tells them',
    of: ({ spec, facts }) =>
      spec === undefined || facts === undefined
        ? undefined
        : toTell(spec, facts).map(shortFinding).join('; '),
  },
  { name: 'note', about: 'why there is no spec', of: ({ note }) => note },
];

/** The table with its head. */
export const sizeCsv = (results: readonly SizeResult[]): string =>
  csvText([sizeColumns.map(({ name }) => name), ...results.flatMap(sizeCells)]);

/** The rows of one order. */
export const sizeCells = (result: SizeResult): Cell[][] =>
  rowsOf(result).map((row) => sizeColumns.map(({ of }) => of(row) ?? undefined));

function rowsOf(result: SizeResult): Row[] {
  if (!result.ok) {
    const { order, file } = result;
    const note = unreadNote(result);
    return [{ order, file, outcome: 'not read', note }];
  }
  const { advice, file } = result;
  const { facts } = advice;
  const { order } = facts.order;
  if (advice.specs.length === 0) {
    return [{ order, file, outcome: 'nothing passes', note: 'every style and strand count is ruled out' }];
  }
  return advice.specs.map((spec) => ({ order, file, outcome: 'passes', spec, facts }));
}
