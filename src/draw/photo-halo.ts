/** Lines that show on any photo. */
import type { Facts } from '../horse/facts.ts';
import type { Units } from '../units/text.ts';
import type { Place, Shape } from './scene.ts';

/** Shared by everything drawn on one photo. */
export interface OnPhoto {
  readonly facts: Facts;
  readonly place: Place;
  readonly units: Units;
  /** 1 when the horse faces right, -1 left. */
  readonly facing: 1 | -1;
  /** Points; no number goes outside. */
  readonly size: readonly [number, number];
}

/** Draws each line first in wider white, so it shows on black and white horses. */
export function haloed(shapes: readonly Shape[]): Shape[] {
  const halos = shapes.flatMap((shape): Shape[] =>
    shape.kind === 'label' || shape.stroke === undefined ? [] : [{ ...shape, stroke: 'halo' }],
  );
  return [...halos, ...shapes];
}
