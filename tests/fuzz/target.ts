/** What one kind of input is tried with: where it starts from, how it is damaged, what must hold, and which command lines follow. */
import type { Random } from '../../src/math/random.ts';

/** A command line, and what it came to. */
export interface RanLine {
  readonly line: readonly string[];
  readonly code: number;
  readonly stdout: string;
}

/** What the door made of an input. */
export type Standing = 'good' | 'faulty';

export interface Target {
  readonly name: string;
  /** The name under which a run finds the input, and the files beside it. */
  readonly file: string;
  readonly beside: Readonly<Record<string, Buffer>>;
  /** Inputs to start from. */
  readonly seeds: readonly Buffer[];
  /** A new input out of older ones. */
  readonly change: (parents: readonly Buffer[], chance: Random) => Buffer;
  /** The input through its door, with all that must hold there. Throws a Slip. */
  readonly look: (input: Buffer) => Standing;
  /** Command lines to run with it. */
  readonly lines: (standing: Standing, input: Buffer, chance: Random) => readonly (readonly string[])[];
  /** What must hold of a run besides what must hold of every run; `read` gives a file's contents afterwards. Throws a Slip. */
  readonly after?: (ran: RanLine, read: (name: string) => Buffer | undefined) => void;
  /** Whether runs write files, so that the folder has to be made anew. */
  readonly writes?: true;
  /** Whether it has no reader of its own that could be tried without a command line. */
  readonly onlyRuns?: true;
}

/** Something that must hold and does not. */
class Slip extends Error {}

/** Throws a Slip unless something holds. */
export function hold(holds: boolean, otherwise: () => string): void {
  if (!holds) throw new Slip(otherwise());
}
