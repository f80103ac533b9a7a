/** Newton's method: the top of a smooth function of a few numbers. */

/** `bend` is minus the second derivatives, or their expectation. */
export interface Slope {
  readonly value: number;
  readonly gradient: readonly number[];
  readonly bend: readonly (readonly number[])[];
}

export interface Top {
  readonly at: readonly number[];
  /** False when it keeps climbing or is not concave. */
  readonly reached: boolean;
}

const MOST_STEPS = 100;
const MOST_HALVINGS = 40;
/** Stops when a step promises less. */
const ENOUGH = 1e-14;

/** Halves a step that climbs too little (Nocedal & Wright 2006, chapter 3). */
export function climb(slopeAt: (at: readonly number[]) => Slope, start: readonly number[]): Top {
  let at = start;
  let here = slopeAt(at);
  for (let steps = 0; steps < MOST_STEPS; steps += 1) {
    const { value, gradient } = here;
    const step = inverseOf(here.bend)?.map((row) => dot(row, gradient));
    if (step === undefined) return { at, reached: false };
    const promise = dot(step, gradient);
    if (!(promise > ENOUGH * Math.max(1, Math.abs(value)))) return { at, reached: Number.isFinite(promise) };
    let share = 1;
    const from = at;
    const stepped = (): number[] => from.map((each, i) => each + share * (step[i] ?? 0));
    for (let i = 0; i < MOST_HALVINGS; i += 1, share /= 2) {
      at = stepped();
      here = slopeAt(at);
      if (here.value >= value + 1e-4 * share * promise) break;
    }
    if (!(here.value >= value + 1e-4 * share * promise)) return { at: from, reached: promise < 1e-9 };
  }
  return { at, reached: false };
}

const dot = (a: readonly number[], b: readonly number[]): number =>
  a.reduce((sum, part, i) => sum + part * (b[i] ?? 0), 0);

/** Undefined unless the matrix is positive definite. */
export function inverseOf(matrix: readonly (readonly number[])[]): number[][] | undefined {
  // Gauss-Jordan; no row exchange is needed.
  const rows = matrix.map((row, i) => [...row, ...matrix.map((_, j) => (i === j ? 1 : 0))]);
  for (const [i, head] of rows.entries()) {
    const pivot = head[i] ?? 0;
    if (!(pivot > 0)) return undefined;
    for (let k = 0; k < head.length; k += 1) head[k] = (head[k] ?? 0) / pivot;
    for (const row of rows) {
      const factor = row[i] ?? 0;
      if (row !== head)
        for (let k = 0; k < row.length; k += 1) row[k] = (row[k] ?? 0) - factor * (head[k] ?? 0);
    }
  }
  return rows.map((row) => row.slice(matrix.length));
}
