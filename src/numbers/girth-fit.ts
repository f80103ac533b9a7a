/** Heart girth from height: a line through published breed averages, moved halfway to measured horses. */

/**
 * For light horses. Breed averages alone give 1.104 H + 17.2 cm, residual sd 5.3; that reads 2.9 cm high on
 * a set of 52 horses known second-hand, so half is taken off [choice]. Within a breed the sd is 6.4 cm (same
 * set; 5 in published Criollo-type mares). Other kinds get twice the line's spread [choice].
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
 * Per Henneke point away from 5 [choice]. At 155 cm the fit's girth over height is 1.21, 1.25 at score 7;
 * horses are called obese from 1.26 (Carter et al. 2009, from memory).
 */
export const girthByCondition = { source: 'carter-2009', usual: 5, perPoint: 0.02 } as const;

/** Published average of one heavy draft breed: 210.9 cm of girth at 161 cm height. */
export const draftGirthRatio = 1.31;
