/** One order of a backlog as a row: the best spec and the numbers a clerk needs, or why there is none. */
import type { Advice, RankedSpec } from '../advice/advice.ts';
import type { Problem } from '../yaml/problem.ts';
import type { Order, Saddle } from '../order/types.ts';
import { styles } from '../cinch/styles.ts';
import { inARow, len, say, type Phrase } from '../units/phrase.ts';
import type { ColumnName } from './columns.ts';
import { problemText } from './problem-text.ts';

/** A phrase keeps its lengths as numbers until somebody prints it; nothing is an empty cell. */
export type Cell = string | number | Phrase | null;

export type Cells = Readonly<Partial<Record<ColumnName, Cell>>>;

export const verdicts = ['sized', 'tight', 'none fits', 'faulty'] as const;

/** In our own plain words; see the column `verdict`. */
export type Verdict = (typeof verdicts)[number];

export interface Row {
  readonly cells: Cells;
  /** Of a faulty order, all of them. */
  readonly problems: readonly Problem[];
}

/** Where an order stands. */
export interface Place {
  readonly file: string;
  /** Both from 1. */
  readonly document: number;
  readonly line: number;
}

/**
 * Every column, empty but for the place. Rows are filled cell by cell: putting thousands of them together from parts took longer than
 * sizing.
 */
const rowAt = ({ file, document, line }: Place): Record<ColumnName, Cell> => ({
  order: null,
  customer: null,
  horse: null,
  file,
  document,
  line,
  due: null,
  quantity: null,
  verdict: null,
  rigging: null,
  room: null,
  'room-sd': null,
  style: null,
  strands: null,
  layers: null,
  width: null,
  'buckle-width': null,
  'flare-start': null,
  buckle: null,
  length: null,
  'length-basis': null,
  clearance: null,
  'clearance-sd': null,
  chance: null,
  'latigo-run': null,
  because: null,
  'measure-first': null,
  reason: null,
  'same-number-as': null,
  problem: null,
  doubts: null,
});

/** The row of an order that was sized. Lengths are inches. */
export function rowOf(advice: Advice, place: Place): Row {
  const { facts, first } = advice;
  const cells = rowAt(place);
  putOrder(cells, facts.order);
  cells.verdict = verdictOf(first);
  cells.room = facts.room.value;
  cells['room-sd'] = facts.room.sd;
  cells['measure-first'] = measureFirst(advice);
  cells.doubts = advice.remarks.length === 0 ? null : inARow(advice.remarks);
  if (first === undefined) {
    cells.reason = firstRefusal(advice);
  } else {
    putSpec(cells, first);
    cells['length-basis'] = facts.lengthNeed.measured ? 'taped' : 'provisional';
  }
  return { cells, problems: [] };
}

/** The row of an order that could not be read; which one it is stands in it as far as it is known. */
export function faultyRow(order: string | undefined, problems: readonly Problem[], place: Place): Row {
  const cells = rowAt(place);
  cells.order = order ?? null;
  cells.verdict = 'faulty';
  cells.problem = problemText(problems);
  return { cells, problems };
}

function putOrder(cells: Record<ColumnName, Cell>, order: Order): void {
  cells.order = order.order;
  cells.customer = order.customer?.name ?? null;
  cells.horse = order.horse.name ?? null;
  cells.due = order.due ?? null;
  cells.quantity = order.quantity;
  cells.rigging = riggingCell(order.saddle);
}

function putSpec(cells: Record<ColumnName, Cell>, { candidate, becauseOf }: RankedSpec): void {
  const { clearance } = candidate;
  cells.style = candidate.style;
  cells.strands = candidate.strands;
  cells.layers = candidate.layers;
  cells.width = candidate.width;
  cells['buckle-width'] = candidate.buckleWidth;
  cells['flare-start'] = candidate.flareStart ?? null;
  cells.buckle = candidate.buckle.id;
  cells.length = candidate.length;
  cells.clearance = clearance.inches;
  cells['clearance-sd'] = clearance.sd;
  cells.chance = clearance.chance;
  cells['latigo-run'] = candidate.run;
  cells.because = becauseOf?.words ?? null;
}

/** Good at the elbow or not: all else that is less than good has no word of its own here. */
function verdictOf(best: RankedSpec | undefined): Verdict {
  if (best === undefined) return 'none fits';
  return best.judgementOf('elbow-clearance') === 'good' ? 'sized' : 'tight';
}

function riggingCell({ rigging }: Saddle): Cell {
  if (rigging.kind === 'named') return rigging.name;
  const { setBack } = rigging;
  if (setBack === 0) return 'ring at full position';
  const far = len(Math.abs(setBack));
  return setBack > 0 ? say`ring ${far} back of full position` : say`ring ${far} ahead of full position`;
}

function measureFirst({ firstAsk: first }: Advice): Cell {
  return first === undefined ? null : `${first.input}: ${first.how}`;
}

/** Style and strands with the reason, as one phrase. */
function firstRefusal({ firstRefused: first }: Advice): Cell {
  if (first === undefined) return 'no side is left below the buckle to tie anything';
  const [start = '', ...words] = first.reason.words;
  const which = `${styles[first.style].name}, ${String(first.strands)} strands: `;
  return { words: [which + start, ...words], values: first.reason.values };
}
