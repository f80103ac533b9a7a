/** One order as a row: the best spec, or why there is none. */
import type { Advice, RankedSpec } from '../advice/advice.ts';
import type { Problem } from '../yaml/problem.ts';
import type { Order, Saddle } from '../order/types.ts';
import { styles } from '../cinch/styles.ts';
import { inARow, len, say, type Phrase } from '../units/phrase.ts';
import { columnNames, type ColumnName } from './columns.ts';
import { problemText } from './problem-text.ts';

/** null is an empty cell. */
export type Cell = string | number | Phrase | null;

export type Cells = Readonly<Partial<Record<ColumnName, Cell>>>;

export const verdicts = ['sized', 'tight', 'none fits', 'faulty'] as const;

export type Verdict = (typeof verdicts)[number];

export interface Row {
  readonly cells: Cells;
  readonly problems: readonly Problem[];
}

export interface Place {
  readonly file: string;
  readonly document: number;
  readonly line: number;
}

const empty = Object.fromEntries(columnNames.map((name) => [name, null])) as Record<ColumnName, Cell>;

const rowAt = (place: Place): Record<ColumnName, Cell> => ({ ...empty, ...place });

/** Lengths in inches. */
export function rowOf(advice: Advice, place: Place): Row {
  const { facts, first } = advice;
  const cells = rowAt(place);
  putOrder(cells, facts.order);
  cells.verdict = verdictOf(first);
  cells.room = facts.room.value;
  cells.roomSd = facts.room.sd;
  cells.ask = askCell(advice);
  cells.remarks = advice.remarks.length === 0 ? null : inARow(advice.remarks);
  cells.welfare = advice.welfare.length === 0 ? null : inARow(advice.welfare);
  if (first === undefined) {
    cells.reason = firstRefusal(advice);
  } else {
    putSpec(cells, first);
    cells.lengthBasis = lengthBasis(facts.lengthNeed.measured);
  }
  return { cells, problems: [] };
}

/** For an order we could not read. */
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
  cells.buckleWidth = candidate.buckleWidth;
  cells.flareStart = candidate.flareStart ?? null;
  cells.buckle = candidate.buckle.id;
  cells.length = candidate.length;
  cells.clearance = clearance.inches;
  cells.clearanceSd = clearance.sd;
  cells.chance = clearance.chance;
  cells.latigoRun = candidate.run;
  cells.becauseOf = becauseOf?.words ?? null;
}

/** By the elbow alone. */
export function verdictOf(best: RankedSpec | undefined): Verdict {
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

function askCell({ firstAsk: first }: Advice): Cell {
  return first === undefined ? null : `${first.input}: ${first.how}`;
}

/** "provisional" until ring to ring is taped. */
export const lengthBasis = (measured: boolean): 'taped' | 'provisional' =>
  measured ? 'taped' : 'provisional';

/** "straight, 11 strands: too close, ...". */
export function firstRefusal({ firstRefused: first }: Advice): Phrase {
  if (first === undefined) return say`no room below the buckle for any cinch`;
  const [start = '', ...words] = first.reason.words;
  const which = `${styles[first.style].name}, ${String(first.strands)} strands: `;
  return { words: [which + start, ...words], values: first.reason.values };
}
