/** What one number of the model is: value, unit, accepted range, meaning and whose word it is. */

/** Where a number comes from: `published` and `practice` name an entry of `sources`, `choice` is our own engineering choice. */
export interface NumberBasis {
  kind: 'published' | 'practice' | 'choice';
  source: string;
}

/** `in*k` is a length of the average (72 in girth) horse that grows with the horse; `in` does not grow; the rest are plain. */
export type NumberUnit = 'in' | 'in*k' | 'in/in' | 'ratio' | 'lbf' | 'chance' | 'deg';

export interface ModelNumber {
  value: number;
  unit: NumberUnit;
  /** Accepted range for a shop's override, inclusive. */
  min: number;
  max: number;
  about: string;
  basis: NumberBasis;
}

export const choice: NumberBasis = { kind: 'choice', source: 'engineering-choice' };
export const practice: NumberBasis = { kind: 'practice', source: 'common-practice' };
/** A number that a text gives: `source` names its entry. */
export const published = (source: string): NumberBasis => ({ kind: 'published', source });

/** A number of the table: value, unit and range, then what it is and its basis. */
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
