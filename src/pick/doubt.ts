/** One thing that looks wrong, and whether the order would be refused for it. */

export type Told = 'room' | 'depth' | 'ring';

export interface Doubt {
  /** What is wrong and what to do. */
  readonly text: string;
  /** Whether the order would be refused; otherwise just check it. */
  readonly refused: boolean;
  /** The length it reports, so that nothing else repeats it. */
  readonly tells?: Told;
}

/** The order would be refused. */
export const refused = (text: string, tells?: Told): Doubt => ({
  text,
  refused: true,
  ...(tells === undefined ? {} : { tells }),
});

/** The order would still be read. */
export const doubtful = (text: string): Doubt => ({ text, refused: false });
