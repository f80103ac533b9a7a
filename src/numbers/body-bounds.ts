/** Proportions outside of which a tape, or a word, is doubted: told, so that somebody looks again; no cinch is sized by them. */

export const bodyBounds = {
  /** Depth of a barrel over its girth: of ellipses half as wide as deep to a tenth wider than deep, with a tenth of slack [choice]. */
  depthOverGirth: { min: 0.27, max: 0.46 },
  /** Body length over height at the withers: breed means lie between 0.95 and 1.1 [practice]; single horses a good tenth further [choice]. */
  lengthOverHeight: { min: 0.8, max: 1.25 },
  /** Inches: a pony stands 148 cm at most by the rules of shows, from memory; with an inch of shoes and an inch for the tape [choice]. */
  tallestPony: 60.3,
} as const;
