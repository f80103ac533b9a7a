/** A backlog as it will be tied: of each order the spec that is taken, in one order whatever the order of the files. */
import type { Advice } from '../advice/advice.ts';
import type { Candidate } from '../cinch/candidate.ts';
import type { Order } from '../order/types.ts';
import type { Phrase } from '../units/phrase.ts';
import { byText } from '../units/by-text.ts';
import type { Rate } from '../units/money.ts';
import { minutesOf } from './bill.ts';
import { takenOf, type Takes } from './taken.ts';
import { ticketOf, type Ticket } from './ticket.ts';

/** An order and the spec that is taken for it. */
export interface Planned {
  readonly order: Order;
  readonly candidate: Candidate;
  readonly takes: Takes;
  readonly ticket: Ticket;
  /** Of the whole order; undefined when the shop file has no labor. */
  readonly minutes: Rate | undefined;
  /** Where its tapes disagree. */
  readonly doubts: readonly Phrase[];
  /** What comes before any cinch. */
  readonly welfare: readonly Phrase[];
}

/** What is taken for one order, on a day; undefined when nothing passes. Pure. */
export function plannedOf(advice: Advice, day: string): Planned | undefined {
  const { order, shop } = advice.facts;
  const taken = takenOf(advice);
  if (taken === undefined) return undefined;
  const { spec, takes } = taken;
  const { candidate } = spec;
  return {
    order,
    candidate,
    takes,
    ticket: ticketOf({ candidate }, advice, { day }),
    minutes: minutesOf(candidate, order, shop.labor),
    doubts: advice.remarks,
    welfare: advice.welfare,
  };
}

/** Where an entry of a backlog comes from. */
export interface Entry {
  readonly file: string;
  /** Its number; undefined when it could not even be read. */
  readonly order: string | undefined;
}

/** Entries by order number, then by file, then as they stand in the file. */
export function inOrder<E extends Entry>(entries: readonly E[]): E[] {
  return [...entries].sort(
    (a, b) =>
      Number(a.order === undefined) - Number(b.order === undefined) ||
      byText(a.order ?? '', b.order ?? '') ||
      byText(a.file, b.file),
  );
}

/**
 * A name for each entry of a sorted list, unlike every other: the order's number; with the file where two orders have the
 * same, and with a number where two of one file have.
 */
export function keysOf(entries: readonly { readonly file: string; readonly order: string }[]): string[] {
  const twice = repeated(entries.map(({ order }) => order));
  const named = entries.map(({ order, file }) => (twice.has(order) ? `${order} (${file})` : order));
  const again = repeated(named);
  const used = new Set(named.filter((name) => !again.has(name)));
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

/** Who comes first to the shelf: the earliest due; those due the same day, then those without a due day, as they stand. */
export const earliestDue = <T extends Pick<Planned, 'ticket'>>(orders: readonly T[]): T[] =>
  [...orders].sort(({ ticket: { due: a = '9' } }, { ticket: { due: b = '9' } }) => byText(a, b));

/** A planned order with its own name in the backlog. */
export interface Keyed extends Planned {
  readonly key: string;
  readonly file: string;
}
