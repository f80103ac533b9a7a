/** A number with its spread and basis. */

/** `measured` is taped, `told` by the customer, `assumed` by us. */
export type BasisKind = 'measured' | 'photo' | 'told' | 'assumed' | 'computed';

export interface Estimate {
  readonly value: number;
  /** Standard deviation, same unit. */
  readonly sd: number;
  readonly kind: BasisKind;
  readonly basis: string;
}

export interface Assumption {
  readonly input: string;
  readonly value: number;
  readonly unit: 'in' | 'ratio';
  readonly basis: string;
  readonly sd: number;
  readonly kind: BasisKind;
}

export interface Working {
  readonly symbol: string;
  readonly sum: string;
  readonly result: string;
}

/** At most two decimals. */
export const short = (value: number): string => String(Math.round(value * 100) / 100);

/** An estimate as an input. */
export function asAssumption(input: string, estimate: Estimate, unit: Assumption['unit'] = 'in'): Assumption {
  return { input, unit, value: estimate.value, sd: estimate.sd, kind: estimate.kind, basis: estimate.basis };
}
