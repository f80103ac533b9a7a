/** OpenCV's map of four points onto four others. */
import { createRequire } from 'node:module';
import type { Point } from '../../src/math/homography.ts';

interface Matrix {
  readonly data64F: Float64Array;
  delete(): void;
}

// Its types are sources our compiler would check, so we write our own.
const require = createRequire(import.meta.url);
const { cv } = require('opencv-wasm') as {
  cv: {
    CV_32FC2: number;
    matFromArray(rows: number, columns: number, type: number, values: readonly number[]): Matrix;
    getPerspectiveTransform(from: Matrix, to: Matrix): Matrix;
  };
};

/** Row by row, the last entry 1. */
export function byOpenCv(from: readonly Point[], to: readonly Point[]): number[] {
  const matrixOf = (points: readonly Point[]): Matrix => cv.matFromArray(4, 1, cv.CV_32FC2, points.flat());
  const [a, b] = [matrixOf(from), matrixOf(to)];
  const h = cv.getPerspectiveTransform(a, b);
  const values = Array.from(h.data64F);
  for (const matrix of [a, b, h]) matrix.delete();
  return values;
}
