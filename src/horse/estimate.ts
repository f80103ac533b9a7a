/** A number that knows how sure it is and where it came from. */

/** `measured` with a tape, by `photo`, `told` in words by the customer, `assumed` by us, `computed` from the others. */
export type BasisKind = 'measured' | 'photo' | 'told' | 'assumed' | 'computed';

export interface Estimate {
  readonly value: number;
  /** Standard deviation, same unit. */
  readonly sd: number;
  readonly kind: BasisKind;
  /** Where it came from, in plain words. */
  readonly basis: string;
}

/** One line of the list of inputs: what was used, in which unit, from where, how sure. */
export interface Assumption {
  readonly input: string;
  readonly value: number;
  readonly unit: 'in' | 'ratio';
  readonly basis: string;
  readonly sd: number;
  readonly kind: BasisKind;
}

/** One line of working: a symbol, what was put in, what came out. */
export interface Working {
  readonly symbol: string;
  readonly sum: string;
  readonly result: string;
}

/** Two decimals at most, no trailing zeros: how numbers stand inside a line of working. */
export const short = (value: number): string => String(Math.round(value * 100) / 100);

/** An estimate as a line of the list of inputs. */
export function asAssumption(input: string, estimate: Estimate, unit: Assumption['unit'] = 'in'): Assumption {
  return { input, unit, value: estimate.value, sd: estimate.sd, kind: estimate.kind, basis: estimate.basis };
}
