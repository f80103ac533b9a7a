/** Climbs to the top of a smooth function of a few numbers: Newton's steps, shortened until they climb, with a guard where it is not curved. */

/** A function at a point: its value, which way it rises, and how strongly it bends down (minus its second derivatives, or their expectation). */
export interface Slope {
  readonly value: number;
  readonly gradient: readonly number[];
  readonly bend: readonly (readonly number[])[];
}

export interface Top {
  readonly at: readonly number[];
  readonly value: number;
  /** False when it climbs on and on, as a likelihood does where the data are separated. */
  readonly reached: boolean;
  readonly steps: number;
}

const MOST_STEPS = 100;
const MOST_HALVINGS = 40;
/** The rise that the next step promises, below which the top is reached. */
const ENOUGH = 1e-14;

/**
 * The top of a function. A step solves bend x step = gradient; where the bend is not positive a ridge is added until it is, and a
 * step that does not climb is halved (Nocedal & Wright 2006, chapters 3.2 and 3.4).
 */
export function climb(slopeAt: (at: readonly number[]) => Slope, start: readonly number[]): Top {
  let at = [...start];
  let here = slopeAt(at);
  for (let steps = 0; steps < MOST_STEPS; steps++) {
    const step = stepFrom(here);
    const promise = step.reduce((sum, part, i) => sum + part * (here.gradient[i] ?? 0), 0);
    if (!(promise > ENOUGH * Math.max(1, Math.abs(here.value)))) {
      return { at, value: here.value, reached: Number.isFinite(promise), steps };
    }
    const next = shortened({ at, step, promise, value: here.value }, slopeAt);
    if (next === undefined) return { at, value: here.value, reached: promise < 1e-9, steps };
    ({ at, slope: here } = next);
  }
  return { at, value: here.value, reached: false, steps: MOST_STEPS };
}

interface Try {
  readonly at: readonly number[];
  readonly step: readonly number[];
  readonly promise: number;
  readonly value: number;
}

/** The longest of the step and its halves that climbs by a fair part of what it promises. */
function shortened(
  { at, step, promise, value }: Try,
  slopeAt: (at: readonly number[]) => Slope,
): { at: number[]; slope: Slope } | undefined {
  let share = 1;
  for (let i = 0; i < MOST_HALVINGS; i++) {
    const there = at.map((each, j) => each + share * (step[j] ?? 0));
    const slope = slopeAt(there);
    if (slope.value >= value + 1e-4 * share * promise) return { at: there, slope };
    share /= 2;
  }
  return undefined;
}

function stepFrom({ gradient, bend }: Slope): number[] {
  const size = Math.max(1e-12, ...bend.map((row, i) => Math.abs(row[i] ?? 0)));
  for (let ridge = 0; ridge < 1e12; ridge = ridge === 0 ? 1e-10 : ridge * 100) {
    const raised = bend.map((row, i) => row.map((value, j) => (i === j ? value + ridge * size : value)));
    const factor = choleskyOf(raised);
    if (factor !== undefined) return solve(factor, gradient);
  }
  return gradient.map(() => 0);
}

/** Lower triangle L with L L' = A; undefined when A is not positive definite. */
function choleskyOf(a: readonly (readonly number[])[]): number[][] | undefined {
  const lower: number[][] = [];
  for (const [i, row] of a.entries()) {
    const own: number[] = [];
    for (let j = 0; j <= i; j++) {
      const other = j === i ? own : (lower[j] as number[]);
      const left = own.reduce((rest, part, k) => rest - part * (other[k] as number), row[j] as number);
      if (i === j && !(left > 0)) return undefined;
      own.push(i === j ? Math.sqrt(left) : left / (other[j] as number));
    }
    lower.push(own);
  }
  return lower;
}

function solve(lower: readonly (readonly number[])[], right: readonly number[]): number[] {
  const half: number[] = [];
  lower.forEach((row, i) => {
    let sum = right[i] ?? 0;
    for (let k = 0; k < i; k++) sum -= (row[k] ?? 0) * (half[k] ?? 0);
    half.push(sum / (row[i] ?? 1));
  });
  const found = half.map(() => 0);
  for (let i = lower.length - 1; i >= 0; i--) {
    let sum = half[i] ?? 0;
    for (let k = i + 1; k < lower.length; k++) sum -= (lower[k]?.[i] ?? 0) * (found[k] ?? 0);
    found[i] = sum / (lower[i]?.[i] ?? 1);
  }
  return found;
}

/** Inverse of a positive definite matrix; undefined of any other. */
export function inverseOf(matrix: readonly (readonly number[])[]): number[][] | undefined {
  const factor = choleskyOf(matrix);
  if (factor === undefined) return undefined;
  const columns = matrix.map((_, i) =>
    solve(
      factor,
      matrix.map((__, j) => (i === j ? 1 : 0)),
    ),
  );
  return columns;
}
