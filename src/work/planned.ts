/** A backlog as it will be tied: one spec per order. */
import type { Advice } from '../advice/advice.ts';
import type { Candidate } from '../cinch/candidate.ts';
import type { Order } from '../order/types.ts';
import type { Phrase } from '../units/phrase.ts';
import { byText } from '../units/by-text.ts';
import type { Rate } from '../units/money.ts';
import { minutesOf } from './bill.ts';
import { takenOf, type Takes } from './taken.ts';
import { ticketOf, type Ticket } from './ticket.ts';

export interface Planned {
  readonly order: Order;
  readonly candidate: Candidate;
  readonly takes: Takes;
  readonly ticket: Ticket;
  /** Whole order; undefined without labor. */
  readonly minutes: Rate | undefined;
  /** Measurements that disagree. */
  readonly doubts: readonly Phrase[];
  /** What comes before any cinch. */
  readonly welfare: readonly Phrase[];
}

/** Undefined when nothing passes. */
export function plannedOf(advice: Advice, day: string): Planned | undefined {
  const { order, shop } = advice.facts;
  const taken = takenOf(advice);
  if (taken === undefined) return undefined;
  const { spec, takes } = taken;
  return {
    order,
    candidate: spec.candidate,
    takes,
    ticket: ticketOf(spec, advice, { day }),
    minutes: minutesOf(spec.candidate, order, shop.labor),
    doubts: advice.remarks,
    welfare: advice.welfare,
  };
}

export interface Entry {
  readonly file: string;
  /** Undefined when unreadable. */
  readonly order: string | undefined;
}

/** By order number, then file, then place in the file. */
export function inOrder<E extends Entry>(entries: readonly E[]): E[] {
  return [...entries].sort(
    (a, b) =>
      Number(a.order === undefined) - Number(b.order === undefined) ||
      byText(a.order ?? '', b.order ?? '') ||
      byText(a.file, b.file),
  );
}

/** Unique keys: order number, plus file if repeated, plus a count if that repeats. */
export function keysOf(entries: readonly { readonly file: string; readonly order: string }[]): string[] {
  const twice = repeated(entries.map(({ order }) => order));
  const named = entries.map(({ order, file }) => (twice.has(order) ? `${order} (${file})` : order));
  const again = repeated(named);
  const used = new Set(named);
  return named.map((name) => {
    if (!again.has(name)) return name;
    let number = 1;
    while (used.has(`${name}, no. ${String(number)}`)) number++;
    const key = `${name}, no. ${String(number)}`;
    used.add(key);
    return key;
  });
}

function repeated(names: readonly string[]): Set<string> {
  const seen = new Set<string>();
  return new Set(names.filter((name) => seen.has(name) || !seen.add(name)));
}

/** Turn at the shelf; no due day is last. */
export const earliestDue = <T extends Pick<Planned, 'ticket'>>(orders: readonly T[]): T[] =>
  [...orders].sort(({ ticket: { due: a = '9' } }, { ticket: { due: b = '9' } }) => byText(a, b));

export interface Keyed extends Planned {
  readonly key: string;
  readonly file: string;
}
