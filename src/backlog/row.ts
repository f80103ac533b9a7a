/** One order of a backlog as a row: the best spec and the numbers a clerk needs, or why there is none. */
import type { Advice, RankedSpec } from '../advice/advice.ts';
import type { Problem } from '../order/problem.ts';
import type { Order, Saddle } from '../order/types.ts';
import { styles } from '../stock/styles.ts';
import { len, say, type Phrase } from '../units/phrase.ts';
import type { ColumnName } from './columns.ts';

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

/** The row of an order that was sized. Lengths are inches. Written out cell by cell: putting objects together costs more than sizing. */
export function rowOf(advice: Advice, { file, document, line }: Place): Row {
  const { facts, first: best } = advice;
  const { order, room } = facts;
  const spec = best?.candidate;
  const cells: Required<Cells> = {
    order: order.order,
    customer: order.customer?.name ?? null,
    horse: order.horse.name ?? null,
    file,
    document,
    line,
    due: order.due ?? null,
    quantity: order.quantity,
    verdict: verdictOf(best),
    rigging: riggingCell(order.saddle),
    room: room.value,
    'room-sd': room.sd,
    style: spec?.style ?? null,
    strands: spec?.strands ?? null,
    layers: spec?.layers ?? null,
    width: spec?.width ?? null,
    'buckle-width': spec?.buckleWidth ?? null,
    'flare-start': spec?.flareStart ?? null,
    buckle: spec?.buckle.id ?? null,
    length: spec?.length ?? null,
    'length-basis': spec === undefined ? null : facts.lengthNeed.measured ? 'taped' : 'provisional',
    clearance: spec?.clearance.inches ?? null,
    'clearance-sd': spec?.clearance.sd ?? null,
    chance: spec?.clearance.chance ?? null,
    'latigo-run': spec?.run ?? null,
    because: best?.becauseOf?.words ?? null,
    'measure-first': measureFirst(advice),
    reason: best === undefined ? firstRefusal(advice) : null,
    'same-number-as': null,
    problem: null,
  };
  return { cells, problems: [] };
}

/** The row of an order that could not be read; which one it is stands in it as far as it is known. */
export const faultyRow = (order: string | undefined, problems: readonly Problem[], place: Place): Row => ({
  cells: { ...place, order: order ?? null, verdict: 'faulty' },
  problems,
});

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
