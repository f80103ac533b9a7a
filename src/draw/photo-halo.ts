/** Lines that are seen on any photo. */
import type { Facts } from '../horse/facts.ts';
import type { Units } from '../units/text.ts';
import type { Place, Shape } from './scene.ts';

/** What everything drawn on one photo shares. */
export interface OnPhoto {
  readonly facts: Facts;
  readonly place: Place;
  readonly units: Units;
  /** 1 when the horse looks to the right, -1 to the left. */
  readonly facing: 1 | -1;
  /** Of the photo on the paper, points: no number leaves it. */
  readonly size: readonly [number, number];
}

/** Every line once in white and wider, under all of them: it is seen on a black horse and on a white one. */
export function haloed(shapes: readonly Shape[]): Shape[] {
  const halos = shapes.flatMap((shape): Shape[] =>
    shape.kind === 'label' || shape.stroke === undefined ? [] : [{ ...shape, stroke: 'halo' }],
  );
  return [...halos, ...shapes];
}
