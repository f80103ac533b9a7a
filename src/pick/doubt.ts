/** One thing that looks wrong, and whether the order would be refused for it. */

/** A length that is shown beside the photo. */
export type Told = 'room' | 'depth' | 'ring';

export interface Doubt {
  /** In plain words, with what to do. */
  readonly text: string;
  /** Whether the order's door would refuse the block; otherwise it is only to be looked at. */
  readonly refused: boolean;
  /** The length that it tells itself, which then is told nowhere else. */
  readonly tells?: Told;
}

/** A doubt for which the order's door would refuse the block. */
export const refused = (text: string, tells?: Told): Doubt => ({
  text,
  refused: true,
  ...(tells === undefined ? {} : { tells }),
});

/** A doubt with which the order is read. */
export const doubtful = (text: string): Doubt => ({ text, refused: false });
