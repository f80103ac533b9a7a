/** One number of the program: its value, unit, meaning and basis. */

/** `published` and `practice` name an entry of `sources`; `choice` is our own. */
export interface NumberBasis {
  kind: 'published' | 'practice' | 'choice';
  source: string;
}

/** `in*k` is for the average horse and grows with the horse; `in` does not. */
export type NumberUnit = 'in' | 'in*k' | 'in/in' | 'ratio' | 'lbf' | 'chance' | 'deg' | 'strands';

/** Shop files cannot change it. */
export interface FixedNumber<Unit extends string> {
  readonly value: number;
  readonly unit: Unit;
  readonly about: string;
  readonly basis: NumberBasis;
}

export interface ModelNumber extends FixedNumber<NumberUnit> {
  /** Range for a shop file, inclusive. */
  readonly min: number;
  readonly max: number;
}

export const choice: NumberBasis = { kind: 'choice', source: 'engineering-choice' };
export const practice: NumberBasis = { kind: 'practice', source: 'common-practice' };
/** `source` names an entry of `sources`. */
export const published = (source: string): NumberBasis => ({ kind: 'published', source });

/** Makes numbers of one basis. */
export const fixedOn =
  <Unit extends string>(basis: NumberBasis) =>
  (value: number, unit: Unit, about: string): FixedNumber<Unit> => ({ value, unit, about, basis });

/** A number of the model. */
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
