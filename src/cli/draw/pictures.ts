/** Chooses which cinches of each order are drawn. */
import type { Advice } from '../../advice/advice.ts';
import type { Checked } from '../../advice/check.ts';
import type { CinchAsked, Order, Shop } from '../../order/types.ts';
import type { Shown } from '../../draw/shown.ts';
import { overWants, type ToCheck } from '../asked-cinch.ts';
import { isFlat, type DrawOptions } from './asked.ts';

export interface Picture {
  readonly order: string;
  readonly advice: Advice;
  readonly shown: readonly Shown[];
}

/** `refused` when nothing passes. */
export interface Made {
  readonly order: string;
  readonly picture: Picture | undefined;
  readonly none: string | undefined;
  readonly refused: boolean;
}

export interface Asking {
  readonly options: DrawOptions;
  readonly shop: Shop;
  readonly asked: CinchAsked | undefined;
}

const BEST = 3;

/** One each, or the reason for none. */
export async function picturesOf(orders: readonly Order[], asking: Asking): Promise<Made[]> {
  const { sizeOrder } = await import('../../index.ts');
  const made: Made[] = [];
  for (const order of orders) {
    const advice = sizeOrder(order, asking.shop);
    const { shown, none, refused } = await shownOf(advice, asking);
    const picture = shown.length === 0 ? undefined : { order: order.order, advice, shown };
    made.push({ order: order.order, picture, none, refused });
  }
  return made;
}

interface Choice {
  readonly shown: readonly Shown[];
  readonly none: string | undefined;
  readonly refused: boolean;
}

const nothing = (none: string, refused = false): Choice => ({ shown: [], none, refused });

async function shownOf(advice: Advice, asking: Asking): Promise<Choice> {
  const wanted = toShow(advice.facts.order, asking);
  if (typeof wanted === 'string') return nothing(wanted);
  return wanted.length > 0 ? askedOnes(wanted, advice, asking) : bestOnes(advice, asking);
}

/** On the side, with our pick. */
async function askedOnes(wanted: readonly ToCheck[], advice: Advice, { options }: Asking): Promise<Choice> {
  const { specs } = advice;
  const { shownSpec, shownChecked } = await import('../../draw/shown.ts');
  const { standingOf } = await import('../../words/about-check.ts');
  const checked = await checkedOf(wanted, advice);
  const asked = checked.map((each) => shownChecked(each, advice, options.units));
  const beside = isFlat(options) ? [] : specs.slice(0, 1);
  const refused = specs.length === 0 || checked.some((each) => standingOf(each) === 'refused');
  const [first] = asked;
  if (options.template === true && first !== undefined && first.candidate === undefined)
    return nothing(`no template: ${first.lines.join('. ')}`, refused);
  return {
    shown: [...asked, ...beside.map((spec) => shownSpec(spec, advice, options.units))],
    none: undefined,
    refused,
  };
}

/** By rank; else the ticket's when flat, the best three otherwise. */
async function bestOnes(advice: Advice, { options }: Asking): Promise<Choice> {
  const { specs, facts } = advice;
  const { spec: rank, units } = options;
  if (specs.length === 0) return nothing('no cinch we tie passes here; see size', true);
  const { shownSpec, shownChecked } = await import('../../draw/shown.ts');
  if (rank === undefined && isFlat(options) && facts.order.wants !== undefined) {
    const { takenOf } = await import('../../work/taken.ts');
    if (takenOf(advice)?.takes === 'wish') {
      const checked = await checkedOf([{ which: 'wants', cinch: facts.order.wants }], advice);
      return {
        shown: checked.map((each) => shownChecked(each, advice, units)),
        none: undefined,
        refused: false,
      };
    }
  }
  const chosen =
    rank === undefined
      ? specs.slice(0, isFlat(options) || options.onPhoto === true ? 1 : BEST)
      : specs.slice(rank - 1, rank);
  if (chosen.length === 0)
    return nothing(`there is no rank ${String(rank)}: the last is ${String(specs.length)}`, true);
  return { shown: chosen.map((spec) => shownSpec(spec, advice, units)), none: undefined, refused: false };
}

/** Or why none can be shown. */
function toShow({ wants, current }: Order, { options, asked }: Asking): ToCheck[] | string {
  if (asked !== undefined) return [overWants(asked, wants)];
  const told = [
    { which: 'wants', cinch: wants, meant: options.wants === true },
    { which: 'current', cinch: current, meant: options.current === true },
  ] as const;
  const missing = told.filter(({ cinch, meant }) => meant && cinch === undefined);
  if (missing.length > 0)
    return `it names no cinch under ${missing.map(({ which }) => `"${which}"`).join(' or ')}`;
  return told.flatMap(({ which, cinch, meant }) => (meant && cinch !== undefined ? [{ which, cinch }] : []));
}

async function checkedOf(wanted: readonly ToCheck[], advice: Advice): Promise<Checked[]> {
  const { checkCinch } = await import('../../advice/check.ts');
  return wanted.map(({ which, cinch, kept }) => ({ ...checkCinch(cinch, which, advice), kept }));
}
