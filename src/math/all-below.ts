/** The chance that several bell-curved values that move together all stay below their bounds. */
import { gainedTogether } from './normal-pair.ts';
import { normalCdf } from './normal.ts';

/** With a bound this high a value adds less than a thousandth to the risk. */
const OUT_OF_REACH = 3.1;
/** One that stays below its bound this surely where another does adds nothing. */
const SURE = 0.9999;
/** Keeps chances that doubles cannot hold from dividing by nothing. */
const LEAST = 1e-100;

/** One value, by its place among the bounds. */
interface Value {
  readonly place: number;
  /** Chance that it stays below its bound. */
  readonly own: number;
}

/** One that is not counted yet. */
interface Open extends Value {
  /** How many times likelier one of those counted makes it. */
  readonly helped: number;
}

/**
 * That of each value where the one that tells most of it stays below its bound: the tree of pairs that comes nearest (Chow & Liu 1968,
 * IEEE Trans. Inf. Theory 14:462). Bounds of standard normal values, and the correlation of two of them by their places; at least one.
 */
export function allBelow(bounds: readonly number[], correlation: (a: number, b: number) => number): number {
  const least = Math.min(...bounds);
  let chance = normalCdf(least);
  if (least > OUT_OF_REACH) return chance;
  let counted: Value = { place: bounds.indexOf(least), own: Math.max(LEAST, chance) };
  let open = bounds.flatMap((bound, place): Open[] =>
    place === counted.place || bound > OUT_OF_REACH
      ? []
      : [{ place, own: Math.max(LEAST, normalCdf(bound)), helped: 0 }],
  );
  for (;;) {
    const by = counted;
    open = open.flatMap(({ place, own, helped: before }) => {
      const gained = gainedTogether(
        bounds[by.place] as number,
        bounds[place] as number,
        correlation(by.place, place),
      );
      const helped = Math.max(before, 1 + gained / (by.own * own));
      return own * helped < SURE ? [{ place, own, helped }] : [];
    });
    const [first, ...rest] = open;
    if (first === undefined) return chance;
    const best = rest.reduce((a, b) => (b.helped > a.helped ? b : a), first);
    chance *= best.own * best.helped;
    open = open.filter((each) => each !== best);
    counted = best;
  }
}
