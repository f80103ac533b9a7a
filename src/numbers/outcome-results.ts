/** Results of a cinch, in the words of outcome files. */
export const outcomeResults = [
  'good',
  'elbow-rub',
  'buckle-rub',
  'slipped',
  'too-long',
  'too-short',
] as const;
export type OutcomeResult = (typeof outcomeResults)[number];
