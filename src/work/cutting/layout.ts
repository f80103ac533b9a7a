/** Which pieces come from which spools, and what it costs. */
import { pick } from '../../units/pick.ts';
import type { Material } from './material.ts';

export interface Spool {
  readonly kind: number;
  pieces: number[];
  free: number;
}

export interface Layout {
  spools: Spool[];
  /** Batches left uncut. */
  short: number[];
}

/** Compared in this order. */
export interface Cost {
  readonly short: number;
  readonly bought: number;
  readonly opened: number;
  readonly waste: number;
}

/** The part of a leftover that is waste. */
export function wasteOf(free: number, usable: number): number {
  return free < usable ? free : 0;
}

/** Unused spools cost nothing. */
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

/** Negative when `a` is better, 0 when equal. */
export function compareCosts(a: Cost, b: Cost): number {
  return a.short - b.short || a.bought - b.bought || a.opened - b.opened || a.waste - b.waste;
}
