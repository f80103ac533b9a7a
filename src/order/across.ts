/** What checks across keys look at. */
import type { Loaded } from '../yaml/load.ts';

export type Across = Pick<Loaded, 'tree' | 'settled' | 'locate'>;
