/** Plies of mohair cord for strands and for woven bars [common practice, no source]. */

export const BODY_PLY = 8;
export const ACCENT_PLY = 2;
