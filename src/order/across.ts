/** What checks across the keys of a document look at. */
import type { Loaded } from '../yaml/load.ts';

/** The tree, what was reported already, and how a fault finds its place. */
export type Across = Pick<Loaded, 'tree' | 'settled' | 'locate'>;
