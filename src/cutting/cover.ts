/** The plainest lower bounds: cord enough for the pieces, from put-ups filled as far as any set of pieces fills them. */
import { pick } from '../units/pick.ts';
import { fine, gridOf } from './grid.ts';
import { Knapsack } from './knapsack.ts';
import type { Material } from './material.ts';
import type { Steps } from './steps.ts';
import type { Origin } from './types.ts';

/** Lengths that could be cut from put-ups of each origin, the longest first, no more of them than there are pieces. */
export type Fills = Readonly<Record<Origin, readonly number[]>>;

/** How far each put-up could be filled if it had the choice of all pieces. */
export function fillsOf({ kinds, pieces }: Material, steps: Steps): Fills {
  const lengths = pieces.map(({ length }) => length);
  const longest = Math.max(1, ...kinds.map(({ length }) => length));
  const grid = gridOf(lengths, longest, fine);
  const copies = new Map<number, number>();
  for (const length of lengths) copies.set(length, (copies.get(length) ?? 0) + 1);
  const choices = [...copies].map(([length, count]) => ({
    size: grid.tight(length),
    value: length,
    copies: count,
  }));
  const { best } = new Knapsack(choices, grid.cells(longest), steps);
  const fills = { remnant: [] as number[], shelf: [] as number[], bought: [] as number[] };
  for (const { origin, length, count } of kinds) {
    const most = Math.min(length, best[grid.cells(length)] ?? 0);
    for (let i = 0; i < Math.min(count, pieces.length); i++) fills[origin].push(most);
  }
  for (const list of Object.values(fills)) list.sort((a, b) => b - a);
  return fills;
}

const sum = (list: readonly number[]): number => list.reduce((a, b) => a + b, 0);

/** How many of the list, taken from the front, add up to `need`; all of them when they do not reach. */
function howMany(list: readonly number[], need: number): number {
  let [count, left] = [0, need];
  while (left > 0 && count < list.length) left -= pick(list, count++);
  return count;
}

/** Bounds of plans that leave at most `short` pieces short and buy at most `bought` put-ups. */
export function coverBounds(
  { pieces }: Material,
  fills: Fills,
  found: { readonly short: number; readonly bought: number },
): { short: number; bought: number; opened: number } {
  const lengths = pieces.map(({ length }) => length);
  const all = sum(lengths);
  const here = sum(fills.remnant) + sum(fills.shelf);
  const rest = all - sum(lengths.slice(0, found.short));
  const ofBought = sum(fills.bought.slice(0, found.bought));
  return {
    short: howMany(lengths, all - here - sum(fills.bought)),
    bought: howMany(fills.bought, rest - here),
    opened: howMany(fills.shelf, rest - sum(fills.remnant) - ofBought),
  };
}
