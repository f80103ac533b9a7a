/** The words for a style of cinch, simplest to tie first, as orders, outcomes and the command line write them. */

export const styleWords = ['straight', 'high-flare', 'low-flare'] as const;
