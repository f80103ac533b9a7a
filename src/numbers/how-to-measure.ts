/** How to tape a length, in one line. */

export const howToMeasure = {
  'ring to ring': 'saddle and pad on, tape from ring to ring under the girth groove, snug and level',
  'elbow room': 'horse square, from the girth groove straight forward to the back of the elbow',
} as const;
