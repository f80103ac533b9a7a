/** The chance that correlated normal values all stay below their bounds. */
import { gainedTogether } from './normal-pair.ts';
import { normalCdf } from './normal.ts';

/** A bound this high adds less than 0.001 to the risk. */
const OUT_OF_REACH = 3.1;
/** A value this sure, given another, adds nothing. */
const SURE = 0.9999;
/** Avoids dividing by zero. */
const LEAST = 1e-100;

interface Value {
  readonly place: number;
  /** Chance that it stays below its bound. */
  readonly own: number;
}

interface Open extends Value {
  /** Factor by which one counted value raises the chance. */
  readonly helped: number;
}

/**
 * Multiplies each value's chance given the counted value that tells most about it (Chow & Liu 1968, IEEE
 * Trans. Inf. Theory 14:462). Takes standard normal bounds, at least one.
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
