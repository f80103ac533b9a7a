/** Simple lower bounds: total cord needed against spools filled as far as any pieces can, and lots as far as any orders can. */
import { pick } from '../../units/pick.ts';
import { totalOf, type Material } from './material.ts';
import type { Origin } from './types.ts';

/** For each reachable sum up to `longest`, the last piece used; -1 where no pieces add up to it. */
export function sumsOf(lengths: readonly number[], longest: number): Int32Array {
  const last = new Int32Array(longest + 1).fill(-1);
  let reached = 0;
  lengths.forEach((length, i) => {
    for (let sum = Math.min(longest, reached + length); sum >= length; sum--) {
      if (last[sum] === -1 && (sum === length || last[sum - length] !== -1)) last[sum] = i;
    }
    reached += length;
  });
  return last;
}

/** The longest sum up to a length. */
export function fullest(last: Int32Array, length: number): number {
  let sum = length;
  while (sum > 0 && last[sum] === -1) sum--;
  return sum;
}

/** Most length cut from each kind of spool if it could pick from all pieces. */
export function fillsOf({ kinds, pieces }: Material): number[] {
  const longest = Math.max(0, ...kinds.map(({ length }) => length));
  const last = sumsOf(
    pieces.map(({ length }) => length),
    longest,
  );
  return kinds.map(({ length }) => fullest(last, length));
}

/** Lower bounds for plans with at most `short` pieces short and `bought` spools bought. */
export function coverBounds(
  material: Material,
  fills: readonly number[],
  found: { readonly short: number; readonly bought: number },
): { short: number; bought: number; opened: number } {
  const { kinds, pieces } = material;
  const lengths = pieces.map(({ length }) => length);
  const of = (origin: Origin): number[] =>
    kinds
      .flatMap((kind, k) =>
        kind.origin === origin
          ? Array.from({ length: Math.min(kind.count, pieces.length) }, () => pick(fills, k))
          : [],
      )
      .sort((a, b) => b - a);
  const [remnant, shelf, bought] = [of('remnant'), of('shelf'), of('bought')];
  const here = mostFromLots(material, fills);
  const rest = sum(lengths.slice(found.short));
  return {
    short: howMany(lengths, sum(lengths) - here - sum(bought)),
    bought: howMany(bought, rest - here),
    opened: howMany(shelf, rest - sum(remnant) - sum(bought.slice(0, found.bought))),
  };
}

/** Most length cut from lots on hand; an order comes whole from one lot. */
function mostFromLots(material: Material, fills: readonly number[]): number {
  const { kinds, pieces, batches } = material;
  const room = new Map<number, number>();
  kinds.forEach(({ origin, lotNumber, count }, k) => {
    if (origin === 'bought') return;
    const own = Math.min(count, pieces.length) * pick(fills, k);
    room.set(lotNumber, (room.get(lotNumber) ?? 0) + own);
  });
  const rooms = [...room.values()];
  if (batches.length === pieces.length) return sum(rooms);
  const totals = batches.map((_, batch) => totalOf(material, batch));
  const last = sumsOf(totals, Math.max(0, ...rooms));
  return sum(rooms.map((each) => fullest(last, each)));
}

const sum = (list: readonly number[]): number => list.reduce((a, b) => a + b, 0);

/** How many entries from the start of the list add up to `need`; all of them if they fall short. */
function howMany(list: readonly number[], need: number): number {
  let [count, left] = [0, need];
  while (left > 0 && count < list.length) left -= pick(list, count++);
  return count;
}
