/** The three styles of cinch. */
import type { Style } from '../order/types.ts';

export interface StyleEntry {
  readonly id: Style;
  readonly name: string;
  readonly effort: number;
  readonly about: string;
}

export const styles: Readonly<Record<Style, StyleEntry>> = {
  straight: { id: 'straight', name: 'straight', effort: 0, about: 'the same width all along' },
  'high-flare': {
    id: 'high-flare',
    name: 'high-flare roper',
    effort: 1,
    about: 'drawn in at the buckles, with a flare that starts high on the side',
  },
  'low-flare': {
    id: 'low-flare',
    name: 'low-flare roper',
    effort: 2,
    about: 'drawn in at the buckles and below; it flares only near the chest',
  },
};

/** Simplest first. */
export const styleIds = Object.keys(styles) as readonly Style[];
