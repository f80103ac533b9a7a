/** How much the cinch must keep this saddle from slipping. */
import type { Order } from '../order/types.ts';

export interface SlipNeed {
  /** 2 or more: hold the saddle. */
  readonly level: number;
  readonly because: readonly string[];
}

/** One point per cause, two for a saddle that slips. */
export function slipNeed({ horse, use }: Order): SlipNeed {
  const because: string[] = [];
  let level = 0;
  const add = (points: number, why: string): void => {
    level += points;
    because.push(why);
  };
  if (horse.trouble.includes('saddle-rolls')) add(2, 'the saddle rolls');
  if (horse.trouble.includes('creeps-forward')) add(2, 'the saddle creeps forward');
  if (horse.trouble.includes('slips-back')) add(2, 'the saddle slips back');
  if (horse.barrel === 'round') add(1, 'round barrel');
  if (horse.barrel === 'slab-sided') add(1, 'slab-sided barrel');
  if (horse.withers === 'low') add(1, 'low (mutton) withers');
  if ((horse.condition ?? 0) >= 7) add(1, 'the horse is fleshy');
  if (use === 'roping') add(1, 'roping work');
  return { level, because };
}
