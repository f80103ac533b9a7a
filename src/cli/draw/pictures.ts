/** Orders become pictures: which cinches of each are shown. */
import type { Advice } from '../../advice/advice.ts';
import type { Checked } from '../../advice/check.ts';
import type { CinchAsked, Order, Shop } from '../../order/types.ts';
import type { Scene } from '../../picture/scene.ts';
import type { Shown } from '../../picture/shown.ts';
import { overWants, type ToCheck } from '../asked-cinch.ts';
import type { DrawOptions } from './asked.ts';

export interface Picture {
  readonly order: string;
  readonly scene: Scene | undefined;
  /** Why there is none. */
  readonly none: string | undefined;
  /** Nothing passes, or what is shown does not. */
  readonly refused: boolean;
}

export interface Asking {
  readonly options: DrawOptions;
  readonly shop: Shop;
  /** The cinch named on the command line. */
  readonly asked: CinchAsked | undefined;
}

const BEST = 3;

/** A picture for each order, or why there is none. */
export async function picturesOf(orders: readonly Order[], asking: Asking): Promise<Picture[]> {
  const { sizeOrder } = await import('../../index.ts');
  const { sideScene } = await import('../../picture/page.ts');
  const { units } = asking.options;
  const made: Picture[] = [];
  for (const order of orders) {
    const advice = sizeOrder(order, asking.shop);
    const { shown, none, refused } = await shownOf(advice, asking);
    const scene = shown.length === 0 ? undefined : sideScene({ advice, shown, units });
    made.push({ order: order.order, scene, none, refused });
  }
  return made;
}

interface Choice {
  readonly shown: readonly Shown[];
  readonly none: string | undefined;
  readonly refused: boolean;
}

async function shownOf(advice: Advice, asking: Asking): Promise<Choice> {
  const { specs } = advice;
  const { options } = asking;
  const { shownSpec, shownChecked } = await import('../../picture/shown.ts');
  const none = specs.length === 0 ? 'nothing the shop can tie passes for this pair; see size' : undefined;
  const wanted = toShow(advice.facts.order, asking);
  if (typeof wanted === 'string') return { shown: [], none: wanted, refused: false };
  if (wanted.length > 0) {
    const checked = await checkedOf(wanted, advice);
    const { standingOf } = await import('../../report/about-check.ts');
    const best = specs.slice(0, 1).map((spec) => shownSpec(spec, advice, options.units));
    return {
      shown: [...checked.map((each) => shownChecked(each, advice, options.units)), ...best],
      none: undefined,
      refused: none !== undefined || checked.some((each) => standingOf(each) === 'refused'),
    };
  }
  const chosen =
    options.spec === undefined ? specs.slice(0, BEST) : specs.slice(options.spec - 1, options.spec);
  if (none === undefined && chosen.length === 0) {
    const missing = `there is no spec of rank ${String(options.spec)}: ${String(specs.length)} pass`;
    return { shown: [], none: missing, refused: false };
  }
  return {
    shown: chosen.map((spec) => shownSpec(spec, advice, options.units)),
    none,
    refused: none !== undefined,
  };
}

/** The cinches to be shown beside the best, or why they cannot be. */
function toShow({ wants, current }: Order, { options, asked }: Asking): ToCheck[] | string {
  if (asked !== undefined) return [overWants(asked, wants)];
  const missing = [
    options.wants === true && wants === undefined ? '"wants"' : undefined,
    options.current === true && current === undefined ? '"current"' : undefined,
  ].filter((key) => key !== undefined);
  if (missing.length > 0) return `it names no cinch under ${missing.join(' or ')}`;
  return [
    ...(options.wants === true && wants !== undefined ? [{ which: 'wants', cinch: wants } as const] : []),
    ...(options.current === true && current !== undefined
      ? [{ which: 'current', cinch: current } as const]
      : []),
  ];
}

async function checkedOf(wanted: readonly ToCheck[], advice: Advice): Promise<Checked[]> {
  const { checkCinch } = await import('../../advice/check.ts');
  return wanted.map(({ which, cinch, kept }) => ({ ...checkCinch(cinch, which, advice), kept }));
}
