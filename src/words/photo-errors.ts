/** Sources of photo error, in column order. */
import type { ErrorSource } from '../photo/read/errors.ts';

export const errorNames = [
  'click',
  'scale',
  'depth',
  'yaw',
  'tilt',
  'roll',
] as const satisfies readonly ErrorSource[];
