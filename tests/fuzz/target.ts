/** How one kind of input is tried. */
import type { Random } from '../../src/math/random.ts';

export interface RanLine {
  readonly line: readonly string[];
  readonly code: number;
  readonly stdout: string;
}

export type Standing = 'good' | 'faulty';

export interface Target {
  readonly name: string;
  /** The input's name in a run; `beside` are further files. */
  readonly file: string;
  readonly beside: Readonly<Record<string, Buffer>>;
  readonly seeds: readonly Buffer[];
  /** A new input out of older ones. */
  readonly change: (parents: readonly Buffer[], chance: Random) => Buffer;
  /** Passes the input through its door. @throws Slip */
  readonly look: (input: Buffer) => Standing;
  readonly lines: (standing: Standing, input: Buffer, chance: Random) => readonly (readonly string[])[];
  /** Beyond what every run must hold; `read` gives files as they are afterwards. @throws Slip */
  readonly after?: (ran: RanLine, read: (name: string) => Buffer | undefined) => void;
  /** Runs write files, so the folder is made anew. */
  readonly writes?: true;
  /** Whether it has no reader of its own that could be tried without a command line. */
  readonly onlyRuns?: true;
}

class Slip extends Error {}

/** @throws Slip unless `holds` */
export function hold(holds: boolean, otherwise: () => string): void {
  if (!holds) throw new Slip(otherwise());
}
