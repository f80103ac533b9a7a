/** What one number is: value, unit, meaning and whose word it is; one of the model has an accepted range, too. */

/** Where a number comes from: `published` and `practice` name an entry of `sources`, `choice` is our own engineering choice. */
export interface NumberBasis {
  kind: 'published' | 'practice' | 'choice';
  source: string;
}

/** `in*k` is a length of the average (72 in girth) horse that grows with the horse; `in` does not grow; the rest are plain. */
export type NumberUnit = 'in' | 'in*k' | 'in/in' | 'ratio' | 'lbf' | 'chance' | 'deg' | 'strands';

/** A number that no shop file overrides. */
export interface FixedNumber<Unit extends string> {
  readonly value: number;
  readonly unit: Unit;
  readonly about: string;
  readonly basis: NumberBasis;
}

export interface ModelNumber extends FixedNumber<NumberUnit> {
  /** Accepted range for a shop's override, inclusive. */
  readonly min: number;
  readonly max: number;
}

export const choice: NumberBasis = { kind: 'choice', source: 'engineering-choice' };
export const practice: NumberBasis = { kind: 'practice', source: 'common-practice' };
/** A number that a text gives: `source` names its entry. */
export const published = (source: string): NumberBasis => ({ kind: 'published', source });

/** Makes the numbers of a table that no shop file overrides, all on one basis. */
export const fixedOn =
  <Unit extends string>(basis: NumberBasis) =>
  (value: number, unit: Unit, about: string): FixedNumber<Unit> => ({ value, unit, about, basis });

/** A number of the model: value, unit and range, then what it is and its basis. */
export const n =
  (value: number, unit: NumberUnit, range: [number, number]) =>
  (about: string, basis: NumberBasis): ModelNumber => ({
    value,
    unit,
    min: range[0],
    max: range[1],
    about,
    basis,
  });
