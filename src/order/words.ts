/** The words an order may use where only certain words are allowed: each list stands here once, for the door and for the types behind it. */

export const styles = ['straight', 'high-flare', 'low-flare'] as const;
export const riggingStyles = ['ring', 'flat-plate', 'in-skirt', 'dropped'] as const;
export const barrelWords = ['slab-sided', 'average', 'round'] as const;
export const withersWords = ['low', 'average', 'high'] as const;
export const kinds = ['pony', 'stock', 'light', 'draft', 'mule', 'donkey'] as const;
export const troubles = [
  'elbow-gall',
  'buckle-rub',
  'saddle-rolls',
  'creeps-forward',
  'slips-back',
  'girthy',
] as const;
export const uses = [
  'roping',
  'ranch',
  'trail',
  'barrels',
  'reining',
  'packing',
  'endurance',
  'pleasure',
] as const;
