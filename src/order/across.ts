/** What checks across keys look at. */
import type { Loaded } from '../yaml/load.ts';

/** The tree, what was reported, and how to locate a fault. */
export type Across = Pick<Loaded, 'tree' | 'settled' | 'locate'>;
