/** Sources of error of a photo as columns, always in the same order. */
import type { ErrorSource } from '../photo/doubts.ts';

export const errorNames = [
  'click',
  'scale',
  'depth',
  'yaw',
  'tilt',
  'roll',
] as const satisfies readonly ErrorSource[];
