/** A layout under work: which pieces lie on which put-ups, and what that costs. */
import { pick } from '../../units/pick.ts';
import type { Material } from './material.ts';

/** One physical put-up that is cut from. */
export interface Spool {
  /** Place in `Material.kinds`. */
  readonly kind: number;
  /** Places in `Material.pieces`. */
  pieces: number[];
  free: number;
}

export interface Layout {
  spools: Spool[];
  /** Batches of which nothing is cut. */
  short: number[];
}

/** Named costs, compared one after the other. */
export interface Cost {
  readonly short: number;
  readonly bought: number;
  readonly opened: number;
  readonly waste: number;
}

/** What a leftover of this length counts as waste. */
export function wasteOf(free: number, usable: number): number {
  return free < usable ? free : 0;
}

/** The costs of a layout; put-ups nothing is cut from cost nothing. */
export function costOf(material: Material, { spools, short }: Layout): Cost {
  const used = spools.filter(({ pieces }) => pieces.length > 0);
  const count = (origin: string): number =>
    used.filter(({ kind }) => pick(material.kinds, kind).origin === origin).length;
  return {
    short: short.reduce((sum, batch) => sum + pick(material.batches, batch).pieces.length, 0),
    bought: count('bought'),
    opened: count('shelf'),
    waste: used.reduce((sum, { free }) => sum + wasteOf(free, material.usable), 0),
  };
}

/** Below 0 when `a` is the better one, 0 when they cost the same. */
export function compareCosts(a: Cost, b: Cost): number {
  return a.short - b.short || a.bought - b.bought || a.opened - b.opened || a.waste - b.waste;
}
