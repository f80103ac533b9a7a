/** Plies of mohair cord: what cinches are strung with and what bars are woven with [common practice, no source]. */

export const BODY_PLY = 8;
export const ACCENT_PLY = 2;
