/** The styles and strand counts a shop ties. */
import type { Shop, Style } from '../order/types.ts';
import { styleIds } from './styles.ts';

export interface Kind {
  readonly style: Style;
  readonly strands: number;
}

/** Fewest strands first. Counts are odd; ropers are wide, straights narrow. */
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
