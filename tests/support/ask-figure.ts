/** Compares asking the first question with asking any, on invented orders answered from the truth. */
import { parseArgs } from 'node:util';
import { pathToFileURL } from 'node:url';
import { adviceOn } from '../../src/advice/advice.ts';
import { askAbout, type AskResult } from '../../src/advice/ask.ts';
import { oddsOf } from '../../src/advice/odds.ts';
import { questions, type QuestionName } from '../../src/advice/questions.ts';
import { askedOf } from '../../src/advice/unknowns.ts';
import { factsOf } from '../../src/horse/facts.ts';
import type { Candidate } from '../../src/cinch/candidate.ts';
import { seededRandom } from '../../src/math/random.ts';
import { sizeOrder } from '../../src/index.ts';
import { readOrders } from '../../src/order/read-orders.ts';
import type { Order } from '../../src/order/types.ts';
import { defaultModel as model } from '../../src/numbers/numbers.ts';
import { defaultShop as shop } from '../../src/cinch/default-shop.ts';
import { orderText, truthOf } from './backlog/order.ts';
import { plainCinch } from './plain-case.ts';
import { clears } from './second-geometry.ts';
import { asTold } from './second-lines.ts';

type Truth = ReturnType<typeof truthOf>;

/** On the true horse, by the second geometry. */
function does(tied: Candidate, { horse, saddle }: Truth): boolean {
  const { girth, elbowRoom, barrel } = horse;
  const { setBack, ringToRing } = saddle;
  const known = { girthTaped: true, barrelTold: true, setBackMeasured: true };
  const plain = { ...known, girth, elbowRoom, setBack, ringToRing, round: barrel === 'round' };
  const run = (ringToRing - tied.length - model.stretch) / 2;
  const reaches = run >= model['run-low'] && run <= model['run-high'];
  return reaches && clears(plain, plainCinch(tied), asTold);
}

const trueLengths = ({ horse, saddle }: Truth): Readonly<Record<string, readonly number[]>> => ({
  'ring to ring': [saddle.ringToRing],
  'elbow room': [horse.elbowRoom],
  'ring set-back': [saddle.setBack],
  'heart girth': [horse.girth],
});

interface Behind {
  readonly truth: Truth;
  readonly normal: () => number;
}

/** Answered from the truth, as tapes read. */
function answered(name: QuestionName, order: Order, { truth, normal }: Behind) {
  const facts = factsOf(order, model);
  if (name === 'barrel shape') {
    const told = { ...order, horse: { ...order.horse, barrel: truth.horse.barrel } };
    return { read: told, believed: { order: told, model } };
  }
  const question = questions.find((each) => each.name === name)!;
  const asked = askedOf(question.unknowns(facts), { order, model });
  const [unknown] = asked.unknowns;
  const [length] = trueLengths(truth)[name]!;
  const read = Math.max(unknown!.least, length! + unknown!.reading * normal());
  const weight = unknown!.sd ** 2 / (unknown!.sd ** 2 + unknown!.reading ** 2);
  const weighed = unknown!.value + weight * (read - unknown!.value);
  return {
    read: unknown!.enter(order, read),
    believed: { order: unknown!.enter(order, weighed), model: asked.believedModel },
  };
}

/** The new first cinch, or today's if that is surer. */
function tiedAfter(name: QuestionName, { advice }: AskResult, behind: Behind) {
  const { read, believed } = answered(name, advice.facts.order, behind);
  const facts = factsOf(believed.order, believed.model);
  const now = advice.specs[0]?.candidate;
  const next = adviceOn(factsOf(read, model), shop).specs[0]?.candidate;
  if (now === undefined || next === undefined) return next ?? now;
  return oddsOf(next, facts).both > oddsOf(now, facts).both ? next : now;
}

export interface Figure {
  readonly orders: number;
  /** Shares that clear and reach: nothing asked, any question, the first. */
  readonly unasked: number;
  readonly any: number;
  readonly first: number;
  /** First minus any, and its standard error over orders. */
  readonly more: number;
  readonly error: number;
}

/** No photo: it shows what tapes show. */
const tapes: readonly QuestionName[] = questions
  .map(({ name }) => name)
  .filter((name) => name !== 'side photo');

export interface Asking {
  readonly count: number;
  readonly seed: number;
  readonly strata: number;
  /** Leaves out ring to ring, which must be asked anyway. */
  readonly uncut: boolean;
}

export function askFigure({ count, seed, strata, uncut }: Asking): Figure {
  const rows: { unasked: number; any: number; first: number }[] = [];
  for (let number = 1; number <= count; number++) {
    const [entry] = readOrders(orderText(seed, number), 'order.yaml');
    if (entry?.ok !== true) continue;
    const truth = truthOf(seed, number);
    const result = askAbout(sizeOrder(entry.order, shop), { strata, seed: 1 });
    const names = result.worths
      .map(({ name }) => name)
      .filter((name) => tapes.includes(name) && !(uncut && name === 'ring to ring'));
    if (names.length < 2) continue;
    const random = seededRandom(seed, 2 ** 41 + number);
    const successes = names.map((name) => {
      const tied = tiedAfter(name, result, { truth, normal: () => random.normal() });
      return tied !== undefined && does(tied, truth) ? 1 : 0;
    });
    const now = result.advice.specs[0]?.candidate;
    rows.push({
      unasked: now !== undefined && does(now, truth) ? 1 : 0,
      any: successes.reduce((sum: number, success) => sum + success, 0) / successes.length,
      first: successes[0]!,
    });
  }
  const mean = (of: (row: (typeof rows)[number]) => number): number =>
    rows.reduce((sum, row) => sum + of(row), 0) / rows.length;
  const more = mean((row) => row.first - row.any);
  const variance = mean((row) => (row.first - row.any - more) ** 2);
  return {
    orders: rows.length,
    unasked: mean(({ unasked }) => unasked),
    any: mean(({ any }) => any),
    first: mean(({ first }) => first),
    more,
    error: Math.sqrt(variance / (rows.length - 1)),
  };
}

const percent = (share: number): string => `${(100 * share).toFixed(1)} %`;

/** As in docs/learn.md. */
const figureText = ({ orders, unasked, any, first, more, error }: Figure): string =>
  `${orders} orders with at least two questions open: ${percent(unasked)} clear and reach with nothing asked, ${percent(any)} after any one question, ${percent(first)} after the first; ${percent(more)} more, give or take ${percent(error)}`;

if (import.meta.url === pathToFileURL(process.argv[1] ?? '').href) {
  const { positionals, values } = parseArgs({
    allowPositionals: true,
    options: { seed: { type: 'string', default: '7' } },
  });
  const [count, seed] = [Number(positionals[0] ?? 500), Number(values.seed)];
  const asking = { count, seed, strata: 24, uncut: false };
  process.stdout.write(`${figureText(askFigure(asking))}\n`);
  process.stdout.write(`Without ring to ring: ${figureText(askFigure({ ...asking, uncut: true }))}\n`);
}
