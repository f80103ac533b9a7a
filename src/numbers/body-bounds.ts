/** Proportions outside which we ask for the tape again; they never size a cinch. */

export const bodyBounds = {
  /** Width over depth from 0.5 to 1.1, with a tenth of slack [choice]. */
  depthOverGirth: { min: 0.27, max: 0.46 },
  /** Breed averages run from 0.95 to 1.1 [practice]; single horses go a good tenth past [choice]. */
  lengthOverHeight: { min: 0.8, max: 1.25 },
  /** Inches: shows allow 148 cm (from memory); one inch for shoes, one for the tape [choice]. */
  tallestPony: 60.3,
} as const;
