/** Heart girth from height: a line through published breed averages, moved halfway to measured horses. */

/**
 * For light horses. Breed averages alone give 1.104 H + 17.2 cm, residual sd 5.3; that reads 2.9 cm high on
 * an open set of 52 horses known second-hand, so half of that is taken off [choice]. A horse differs from
 * its breed's average by 6.4 cm more (same set; 5 in published Criollo-type mares). Other kinds get twice
 * the spread of the line [choice].
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
 * Each Henneke point away from 5 changes an estimated girth by 2% [choice]. Check: at 155 cm the fit's girth
 * over height is 1.21, 1.25 at score 7; a published ratio calls horses obese from 1.26 (Carter et al. 2009,
 * from memory).
 */
export const girthByCondition = { source: 'carter-2009', usual: 5, perPoint: 0.02 } as const;

/** Published average of one heavy draft breed: 210.9 cm girth at 161 cm height. */
export const draftGirthRatio = 1.31;
