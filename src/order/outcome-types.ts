/** What came of a cinch that was tied, as it stands behind the door. */
import type { OutcomeResult } from '../numbers/outcome-results.ts';
import type { Inches } from '../units/length.ts';
import type { Fault, Problem } from '../yaml/problem.ts';
import type { Horse, Saddle, Style } from './types.ts';

export interface Outcome {
  /** Number of its order; where there is none, the pair stands in the outcome itself. */
  readonly order: string | undefined;
  readonly pair: { readonly horse: Horse; readonly saddle: Saddle } | undefined;
  readonly tied: {
    readonly style: Style;
    readonly strands: number;
    /** Undefined when nobody wrote it down. */
    readonly buckle: string | undefined;
    readonly length: Inches;
  };
  /** In use until this was reported. */
  readonly days: number;
  readonly result: OutcomeResult;
  /** A fault that is found later, put where its key stands in the file. */
  readonly locate: (fault: Fault, path: readonly string[]) => Problem;
}

/** What can be held against orders and shop of an outcome, faulty or not: undefined is what was not written or not understood. */
export interface OutcomeParts extends Pick<Outcome, 'order' | 'locate'> {
  readonly hasPair: boolean;
  readonly tied: Outcome['tied'] | undefined;
}
