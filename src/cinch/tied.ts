/** What a shop ties: in each style the strand counts. */
import type { Shop, Style } from '../order/types.ts';
import { styleIds } from './styles.ts';

/** A style and a strand count: all that the customer sees of a cinch but for its length and buckle. */
export interface Kind {
  readonly style: Style;
  readonly strands: number;
}

/** Every kind that a shop ties, fewest strands first; counts are odd. Makers tie wide ropers, narrow straights. */
export function kindsOf({ strands, model }: Pick<Shop, 'strands' | 'model'>): Kind[] {
  const kinds: Kind[] = [];
  const first = strands.min + ((strands.min + 1) % 2);
  for (let count = first; count <= strands.max; count += 2)
    for (const style of styleIds) {
      const tied = style === 'straight' ? count <= model['straight-most'] : count >= model['roper-fewest'];
      if (tied) kinds.push({ style, strands: count });
    }
  return kinds;
}
