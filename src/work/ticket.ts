/** The bench ticket: all the maker needs to tie one order; no customer, no prices. */
import type { Advice } from '../advice/advice.ts';
import { isUnsure, type Judged } from '../advice/judge.ts';
import { isUseful } from '../advice/measure-next.ts';
import type { Buckle, Order, Shop, Style } from '../order/types.ts';
import { ACCENT_PLY, BODY_PLY } from '../numbers/plies.ts';
import { bench } from '../numbers/bench-numbers.ts';
import { strungLength } from '../cinch/cord.ts';
import { nearestWord } from '../units/nearest.ts';
import { dividedBy, toDouble, wholeRate } from '../units/money.ts';
import { chance, say, type Phrase } from '../units/phrase.ts';
import { accentNeeds, placedBars, type AccentNeed, type PlacedBar } from '../cinch/accent.ts';
import { flatOf, profileOf, type Flat } from '../cinch/flat.ts';
import type { Candidate } from '../cinch/candidate.ts';
import { minutesOf, optionsOf } from './bill.ts';
import { piecesOf, sectionsOf, type Piece, type Section } from './strands.ts';
import { checksFor, stepsFor } from './ticket-steps.ts';

/** Of one cinch, inches. */
export interface TicketLengths {
  /** Outside to outside of the hardware, flat, under light hand tension. */
  readonly finished: number;
  /** Already allowed for in the finished length. */
  readonly stretch: number;
  /** Outside to outside of the buckles. */
  readonly frame: number;
  /** One strand, bar to bar, off the frame. */
  readonly strung: number;
  /** The same on the frame. */
  readonly frameBars: number;
}

export interface Ticket {
  readonly order: string;
  readonly horse: string | undefined;
  readonly shop: string;
  readonly day: string;
  readonly due: string | undefined;
  readonly quantity: number;
  /** Ring to ring is taped; until then, do not cut. */
  readonly measured: boolean;
  readonly style: Style;
  readonly strands: number;
  readonly layers: 0 | 1 | 2;
  readonly buckle: Buckle;
  readonly dees: readonly { readonly id: string; readonly count: number; readonly option: string }[];
  readonly options: readonly string[];
  /** The customer's words, without private details. */
  readonly notes: string | undefined;
  /** Ring to buckle, each side, inches. */
  readonly run: number;
  /** Whole order. */
  readonly hours: number | undefined;
  /** Double rigged: a keeper holds the connecting strap. */
  readonly keeper: boolean;
  readonly lengths: TicketLengths;
  /** Low edge of the buckle to the middle. */
  readonly half: number;
  readonly flare: Flat['flare'];
  readonly profile: readonly { readonly at: number; readonly width: number }[];
  readonly bars: readonly PlacedBar[];
  readonly barInches: number;
  readonly sections: readonly Section[];
  readonly pieces: readonly Piece[];
  readonly accents: readonly AccentNeed[];
  /** Inches, plus or minus. */
  readonly tolerances: { readonly length: number; readonly width: number; readonly bar: number };
  readonly steps: readonly Phrase[];
  readonly checks: readonly Phrase[];
  /** A sore that must heal first, and measurements that disagree. */
  readonly doubts: readonly Phrase[];
  /** What to ask before starting. */
  readonly open: readonly string[];
  readonly cautions: readonly string[];
}

/** Never throws for specs of that advice. */
export function ticketOf(spec: Judged, advice: Advice, { day }: { day: string }): Ticket {
  const { order, shop, lengthNeed } = advice.facts;
  const { candidate } = spec;
  const { style, strands, layers, buckle, length } = candidate;
  const flat = flatOf(candidate);
  const sections = sectionsOf(strands, order.colors?.body ?? []);
  const bars = placedBars(flat, order.colors?.accent ?? []);
  const known = optionsOf(order, shop).flatMap(({ option }) => option ?? []);
  const drawn = {
    order: order.order,
    horse: order.horse.name,
    shop: shop.name,
    day,
    due: order.due,
    quantity: order.quantity,
    measured: lengthNeed.measured,
    style,
    strands,
    layers,
    buckle,
    dees: known.flatMap(({ name, dees }) => (dees === undefined ? [] : [{ ...dees, option: name }])),
    options: known.map(({ name }) => name),
    notes: benchNotes(order.notes),
    run: candidate.run,
    hours: hoursOf(candidate, order, shop),
    keeper: order.saddle.double === true,
    lengths: {
      finished: length,
      stretch: lengthNeed.stretch,
      frame: length + bench('frame-take-up'),
      strung: strungLength(length),
      frameBars: strungLength(length) + bench('frame-take-up'),
    },
    half: flat.half,
    flare: flat.flare,
    profile: profileOf(flat, buckle.barWidth),
    bars,
    barInches: flat.barInches,
    sections,
    pieces: piecesOf(sections, length),
    accents: accentNeeds(bars),
    tolerances: {
      length: bench('length-tolerance'),
      width: bench('width-tolerance'),
      bar: bench('bar-tolerance'),
    },
    doubts: [...advice.welfare, ...advice.remarks, ...notSure(spec, advice)],
    open: openOf(advice, sections),
    cautions: advice.cautions,
  };
  return { ...drawn, steps: stepsFor(drawn), checks: checksFor(drawn) };
}

/** A cinch likely to rub, or one that is not sure while a tape could tell. */
function notSure(spec: Judged, { facts, ask }: Advice): Phrase[] {
  const { clearance } = spec.candidate;
  if (clearance.chance >= facts.model['chance-good']) return [];
  const useful = ask.filter((each) => !each.beforeCutting && isUseful(each)).map(({ input }) => input);
  if (useful.length === 0 && !isUnsure(spec)) return [];
  const lead = isUnsure(spec) ? 'NOT SURE. ' : '';
  const measure = useful.length === 0 ? '' : `: measure ${useful.slice(0, 2).join(' or ')} before you tie`;
  return [say`${lead}The chance to clear the elbow is ${chance(clearance.chance)}${measure}.`];
}

/** Drops sentences with a phone number, mail address or price. */
function benchNotes(notes = ''): string | undefined {
  const all = notes.trim().split(/(?<=[.;!?])\s+|\n+/);
  const kept = all.filter((text) => !/@|\p{Sc}|\b\d{3}[\s.-]?\d{4}\b|\d+\.\d\d\b/u.test(text));
  const rest = kept.length < all.length ? ['(More in the order.)'] : [];
  return [...kept, ...rest].join(' ') || undefined;
}

function hoursOf(candidate: Candidate, order: Order, { labor }: Shop): number | undefined {
  const minutes = minutesOf(candidate, order, labor);
  return minutes === undefined ? undefined : toDouble(dividedBy(minutes, wholeRate(60)));
}

function openOf({ facts: { order, shop } }: Advice, sections: readonly Section[]): string[] {
  const { colors } = order;
  const open: string[] = [];
  if (colors?.body === undefined) open.push('no body cord color chosen');
  if (colors?.accent === undefined) open.push('no accent cord color chosen');
  const tied = new Set(sections.map(({ color }) => color));
  for (const color of colors?.body ?? []) {
    if (!tied.has(color)) open.push(`${color}: more colors than strands`);
  }
  open.push(...unknownCords(order, shop));
  for (const { name, option } of optionsOf(order, shop)) {
    if (option !== undefined) continue;
    const known = shop.options.map((each) => each.name);
    open.push(`option ${name}: ${notThere(name, known)}`);
  }
  return open;
}

function unknownCords({ colors }: Order, { cords }: Shop): string[] {
  const unknown = (ply: number, kind: string, named: readonly string[] = []): string[] => {
    const known = cords.filter((cord) => cord.ply === ply).map(({ color }) => color);
    const plain = new Set(known.map((color) => color.toLowerCase()));
    return named
      .filter((color) => !plain.has(color.toLowerCase()))
      .map((color) => `${color} ${kind} cord: ${notThere(color, known)}`);
  };
  return [...unknown(BODY_PLY, 'body', colors?.body), ...unknown(ACCENT_PLY, 'accent', colors?.accent)];
}

function notThere(name: string, known: readonly string[]): string {
  const near = nearestWord(name, known);
  return `not in the shop file${near === undefined ? '' : ` (did you mean ${near}?)`}`;
}
