/** A number with its spread and where it came from. */

/** `measured` by tape, by `photo`, `told` by the customer, `assumed` by us, or `computed`. */
export type BasisKind = 'measured' | 'photo' | 'told' | 'assumed' | 'computed';

export interface Estimate {
  readonly value: number;
  /** Standard deviation, same unit. */
  readonly sd: number;
  readonly kind: BasisKind;
  readonly basis: string;
}

/** One input, with its unit and basis. */
export interface Assumption {
  readonly input: string;
  readonly value: number;
  readonly unit: 'in' | 'ratio';
  readonly basis: string;
  readonly sd: number;
  readonly kind: BasisKind;
}

/** One line of working. */
export interface Working {
  readonly symbol: string;
  readonly sum: string;
  readonly result: string;
}

/** At most two decimals, no trailing zeros. */
export const short = (value: number): string => String(Math.round(value * 100) / 100);

/** An estimate as an input. */
export function asAssumption(input: string, estimate: Estimate, unit: Assumption['unit'] = 'in'): Assumption {
  return { input, unit, value: estimate.value, sd: estimate.sd, kind: estimate.kind, basis: estimate.basis };
}
