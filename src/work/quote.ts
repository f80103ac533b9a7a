/** A quote: the cinch that suits, what else would do, what it costs, when it can be ready, and what must be measured first. */
import type { Advice, RankedSpec } from '../advice/advice.ts';
import type { Ask } from '../advice/measure-next.ts';
import type { Judged } from '../advice/judge.ts';
import { checkCinch, type Checked } from '../advice/check.ts';
import type { Assumption } from '../horse/estimate.ts';
import type { Facts } from '../horse/facts.ts';
import type { Order, Shop } from '../order/types.ts';
import { daysAfter } from '../units/days.ts';
import { sumOf, type Minor, type Rate } from '../units/money.ts';
import type { Phrase } from '../units/phrase.ts';
import { billOf } from './bill.ts';
import type { Missing } from './line.ts';
import { priceOf, type Price, type When } from './price.ts';
import { promiseByHours, waitText, type PromiseWindow } from './promise.ts';
import { sharedShelf } from './shelf.ts';
import { same, type Taken } from './taken.ts';
import { ticketOf } from './ticket.ts';
import { tradeOffs } from './trade-offs.ts';

export interface Alternative {
  readonly spec: RankedSpec;
  readonly tradeOffs: readonly Phrase[];
  /** Its total less the total quoted; undefined while a total is. */
  readonly dearerBy: Minor | undefined;
}

/** What is asked for when a cinch is tied: it is priced as on the day the order was taken. */
export interface Invoice {
  readonly number: string;
  /** The deposit where nobody says what was paid; undefined, as what is due, while the total is. */
  readonly paid: Minor | undefined;
  readonly due: Minor | undefined;
  /** Whether somebody said what was paid. */
  readonly isPaidSaid: boolean;
}

export interface Quote {
  readonly order: Order;
  readonly facts: Facts;
  readonly shop: Shop;
  /** The day it is written, and the last day it holds; undefined when the shop does not say. */
  readonly day: string;
  readonly validUntil: string | undefined;
  /** What is quoted. */
  readonly taken: Taken;
  /** What the customer asked for, judged; undefined when nothing was named. */
  readonly wants: Checked | undefined;
  /** Up to two others, best first. */
  readonly alternatives: readonly Alternative[];
  /** Inches asked of the elbow clearance, of which the percents are sure. */
  readonly floor: number;
  readonly assumptions: readonly Assumption[];
  readonly price: Price;
  /** Undefined while it is a quote. */
  readonly invoice: Invoice | undefined;
  /** What prices assume because nobody said. */
  readonly assumed: readonly string[];
  readonly window: PromiseWindow | undefined;
  /** What must be measured before cord is cut; empty when all of it is. */
  readonly before: readonly Ask[];
  /** Where what was measured hardly goes together: to be measured again. */
  readonly doubts: readonly Phrase[];
  /** What comes before any cinch: a sore that must heal first. */
  readonly welfare: readonly Phrase[];
  /** Whether ring to ring was taped, so that the length is final. */
  readonly measured: boolean;
  readonly cautions: readonly string[];
  readonly houseRules: readonly string[];
}

export interface Written {
  /** ISO 8601 day on which the paper is written. */
  readonly day: string;
  /** From a schedule, which may have none; without one the bench hours alone decide. */
  readonly promise?: PromiseWindow | 'none' | undefined;
  /** Of what was tied, and what was paid for it. */
  readonly invoice?: { readonly number: string; readonly paid: Minor | undefined } | undefined;
}

/** A quote on what is taken of an advice. Pure; never throws for specs of that advice. */
export function quoteOf(taken: Taken, advice: Advice, { day, promise, invoice }: Written): Quote {
  const { spec } = taken;
  const { order, shop, floor, lengthNeed } = advice.facts;
  const bill = billOf(spec.candidate, order, shop);
  const from = invoice === undefined ? day : (order.taken ?? day);
  const window =
    promise === 'none' ? undefined : (promise ?? windowOf(spec, bill.minutes, { day: from, advice }));
  const isRushOpen = invoice !== undefined && order.taken === undefined && order.due !== undefined;
  const missing = isRushOpen && shop.rush !== undefined ? [...bill.missing, dayTaken] : bill.missing;
  const when = { shop, day: from, ready: window?.earliest };
  const price = priceOf({ ...bill, missing }, order, when);
  return {
    order,
    facts: advice.facts,
    shop,
    day,
    validUntil: shop.quoteDays === undefined ? undefined : daysAfter(day, shop.quoteDays),
    taken,
    wants: order.wants === undefined ? undefined : checkCinch(order.wants, 'wants', advice),
    alternatives: othersThan(spec, advice).map((other) =>
      alternativeOf(other, { spec, price, when, advice }),
    ),
    floor,
    assumptions: advice.assumptions,
    price,
    invoice: invoice && invoiceOf(invoice, price),
    assumed: bill.taken,
    window,
    before: advice.ask.filter(({ beforeCutting }) => beforeCutting),
    doubts: advice.remarks,
    welfare: advice.welfare,
    measured: lengthNeed.measured,
    cautions: advice.cautions,
    houseRules: shop.houseRules,
  };
}

const dayTaken: Missing = {
  what: 'the day the order was taken: the rush charge depends on it',
  where: 'taken',
  file: 'order',
};

function invoiceOf({ number, paid }: NonNullable<Written['invoice']>, { total, deposit }: Price): Invoice {
  const given = total === undefined ? undefined : (paid ?? deposit ?? 0);
  const due = total === undefined || given === undefined ? undefined : sumOf([total, -given]);
  return { number, paid: given, due, isPaidSaid: paid !== undefined };
}

/** By bench hours, from the day on which the last delivery comes; undefined when some of it is not to be had. */
function windowOf(
  spec: Judged,
  minutes: Rate | undefined,
  { day, advice }: { day: string; advice: Advice },
): PromiseWindow | undefined {
  const { shop, order } = advice.facts;
  const ticket = ticketOf(spec, advice, { day });
  const share = sharedShelf([{ key: order.order, ticket }], shop, day).shares.get(order.order);
  if (minutes === undefined || share?.shelf === 'refuse') return undefined;
  const eve = share?.from === undefined ? day : daysAfter(share.from, -1);
  const window = promiseByHours(minutes, eve > day ? eve : day, shop);
  return window && { ...window, basis: window.basis + waitText(share) };
}

/** The best two others; where they are of one style, the second gives way to the best of another style near the top. */
function othersThan(spec: Judged, { specs }: Advice): RankedSpec[] {
  const rest = specs.filter((other) => !same(other, spec));
  const [first, second] = rest;
  if (first === undefined || second === undefined) return rest;
  const styles = new Set([spec.candidate.style, first.candidate.style]);
  const another = rest.slice(1, NEAR_THE_TOP).find(({ candidate }) => !styles.has(candidate.style));
  return [first, another ?? second];
}

/** A customer is offered another style only when it ranks among so many [choice]. */
const NEAR_THE_TOP = 8;

interface Beside {
  readonly spec: Judged;
  readonly price: Price;
  /** Of the one that is quoted: what is compared is the cinches. */
  readonly when: When;
  readonly advice: Advice;
}

function alternativeOf(other: RankedSpec, { spec, price, when, advice }: Beside): Alternative {
  const { order, shop } = advice.facts;
  const { total } = priceOf(billOf(other.candidate, order, shop), order, when);
  const both = total !== undefined && price.total !== undefined;
  return {
    spec: other,
    tradeOffs: tradeOffs(other, spec),
    dearerBy: both ? sumOf([total, -price.total]) : undefined,
  };
}
