/** Heart girth from height: a line through breed averages, moved halfway to measured horses. */

/**
 * Light horses, in cm. Breed averages give 1.104 H + 17.2, residual sd 5.3; that reads 2.9 high on 52 horses
 * known second-hand, so we take off half [choice]. Within a breed the sd is 6.4 (same set; 5 in Criollo-type
 * mares). Other kinds get twice the line's spread [choice].
 */
export const heightGirthFit = {
  source: 'height-girth-fit',
  individuals: 'measured-horses',
  slope: 1.104,
  intercept: 15.7,
  fitSd: 5.3,
  withinBreedSd: 6.4,
  otherKindFactor: 2,
} as const;

/**
 * Per Henneke point away from 5 [choice]. At 155 cm, girth over height is 1.21, or 1.25 at score 7; obese
 * starts at 1.26 (Carter et al. 2009, from memory).
 */
export const girthByCondition = { source: 'carter-2009', usual: 5, perPoint: 0.02 } as const;

/** Published average of one draft breed: 210.9 cm girth at 161 cm. */
export const draftGirthRatio = 1.31;
