/** A checked outcome: how a tied cinch turned out. */
import type { OutcomeResult } from '../numbers/outcome-results.ts';
import type { Inches } from '../units/length.ts';
import type { Fault, Problem } from '../yaml/problem.ts';
import type { Horse, Saddle, Style } from './types.ts';

export interface Outcome {
  /** Without one, `pair` has horse and saddle. */
  readonly order: string | undefined;
  readonly pair: { readonly horse: Horse; readonly saddle: Saddle } | undefined;
  readonly tied: {
    readonly style: Style;
    readonly strands: number;
    readonly buckle: string | undefined;
    readonly length: Inches;
  };
  /** In use when reported. */
  readonly days: number;
  readonly result: OutcomeResult;
  /** Locates a fault found later. */
  readonly locate: (fault: Fault, path: readonly string[]) => Problem;
}

/** For checks against orders and shop, even of a faulty outcome. */
export interface OutcomeParts extends Pick<Outcome, 'order' | 'locate'> {
  readonly hasPair: boolean;
  readonly tied: Outcome['tied'] | undefined;
}
