/** A quote: cinch, alternatives, price, ready day, and what to measure first. */
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
import { valueOf } from '../units/pick.ts';
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
  /** More than the quoted total. */
  readonly dearerBy: Minor | undefined;
}

/** Priced as of the day the order was taken. */
export interface Invoice {
  readonly number: string;
  /** The deposit unless `--paid` says otherwise. */
  readonly paid: Minor | undefined;
  readonly due: Minor | undefined;
  readonly isPaidSaid: boolean;
}

export interface Quote {
  readonly order: Order;
  readonly facts: Facts;
  readonly shop: Shop;
  readonly day: string;
  /** Undefined when the shop does not say. */
  readonly validUntil: string | undefined;
  readonly taken: Taken;
  /** The customer's wish, judged. */
  readonly wants: Checked | undefined;
  readonly alternatives: readonly Alternative[];
  /** Inches of clearance that `chance` is about. */
  readonly floor: number;
  readonly assumptions: readonly Assumption[];
  readonly price: Price;
  readonly invoice: Invoice | undefined;
  /** What the price assumes. */
  readonly assumed: readonly string[];
  readonly window: PromiseWindow | undefined;
  /** To measure before cutting. */
  readonly before: readonly Ask[];
  /** Measurements that disagree. */
  readonly doubts: readonly Phrase[];
  readonly welfare: readonly Phrase[];
  /** Ring to ring was taped. */
  readonly measured: boolean;
  readonly cautions: readonly string[];
  readonly houseRules: readonly string[];
}

export interface Written {
  readonly day: string;
  /** From a schedule; without it bench hours decide. */
  readonly promise?: PromiseWindow | 'none' | undefined;
  readonly invoice?: { readonly number: string; readonly paid: Minor | undefined } | undefined;
}

/** Never throws for specs of that advice. */
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
  const isPaidSaid = paid !== undefined;
  if (total === undefined) return { number, paid: undefined, due: undefined, isPaidSaid };
  const given = paid ?? deposit ?? 0;
  return { number, paid: given, due: sumOf([total, -given]), isPaidSaid };
}

/** After the last delivery; undefined when we can't get something. */
function windowOf(
  spec: Judged,
  minutes: Rate | undefined,
  { day, advice }: { day: string; advice: Advice },
): PromiseWindow | undefined {
  const { shop, order } = advice.facts;
  const ticket = ticketOf(spec, advice, { day });
  const share = valueOf(sharedShelf([{ key: order.order, ticket }], shop, day).shares, order.order);
  if (minutes === undefined || share.shelf === 'refuse') return undefined;
  const eve = share.from === undefined ? day : daysAfter(share.from, -1);
  const window = promiseByHours(minutes, eve > day ? eve : day, shop);
  return window && { ...window, basis: window.basis + waitText(share) };
}

/** The best other, then one of a new style near the top, else the next. */
function othersThan(spec: Judged, { specs, mustHeal }: Advice): RankedSpec[] {
  const own = spec.candidate.clearance.chance;
  const rest = specs.filter(
    (other) =>
      !same(other, spec) &&
      other.judgementOf('elbow-clearance') !== 'poor' &&
      !(mustHeal && other.candidate.clearance.chance < own),
  );
  const [first, second] = rest;
  if (first === undefined || second === undefined) return rest;
  const styles = new Set([spec.candidate.style, first.candidate.style]);
  const another = rest.slice(1, NEAR_THE_TOP).find(({ candidate }) => !styles.has(candidate.style));
  return [first, another ?? second];
}

/** Ranks [choice]. */
const NEAR_THE_TOP = 8;

interface Beside {
  readonly spec: Judged;
  readonly price: Price;
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
