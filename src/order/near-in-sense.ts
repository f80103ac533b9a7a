/** Words people of the trade use for ours, too far off in letters to be found by likeness: for hints only, nothing is put right. */

/** A word as written -> the word, or words, that the writer may mean [common practice, no source]. */
export type Sense<W extends string = string> = Readonly<Record<string, W | readonly W[]>>;

/** Lower case, with hyphens for spaces and underscores: "Quarter Horse" and quarter_horse are looked up alike. */
export function sensed<W extends string>(text: string, sense: Sense<W>): readonly W[] {
  const word = text
    .trim()
    .toLowerCase()
    .replaceAll(/[\s_-]+/g, '-');
  const plain = withoutEnding(word);
  const found = [word, plain]
    .map((each) => (Object.hasOwn(sense, each) ? sense[each] : undefined))
    .find(Boolean);
  return found === undefined ? [] : typeof found === 'string' ? [found] : found;
}

/** "trail riding" is trail, "ranch work" ranch. */
export const withoutEnding = (word: string): string => word.replace(/[-\s](?:riding|work|horse|sided)$/i, '');

export const kindSense = {
  'quarter-horse': 'stock',
  quarter: 'stock',
  qh: 'stock',
  draught: 'draft',
  'draft-cross': 'draft',
  burro: 'donkey',
} as const satisfies Sense;

export const withersSense = {
  mutton: 'low',
  'mutton-withered': 'low',
  flat: 'low',
  medium: 'average',
  normal: 'average',
} as const satisfies Sense;

export const barrelSense = {
  medium: 'average',
  normal: 'average',
  fat: 'round',
  keg: 'round',
  'well-sprung': 'round',
  flat: 'slab-sided',
  'flat-sided': 'slab-sided',
  narrow: 'slab-sided',
  slab: 'slab-sided',
} as const satisfies Sense;

/** The words of the Henneke scale stand in leaves.ts. */
export const conditionSense = {
  chubby: 'fleshy',
  skinny: 'thin',
} as const satisfies Sense;

export const doubleSense = {
  double: 'true',
  'double-rig': 'true',
  'double-rigged': 'true',
  'double-rigging': 'true',
  single: 'false',
  'single-rig': 'false',
  'single-rigged': 'false',
  'single-rigging': 'false',
} as const satisfies Sense;

export const troubleSense = {
  gall: 'elbow-gall',
  galls: 'elbow-gall',
  'girth-gall': 'elbow-gall',
  'girth-galls': 'elbow-gall',
  'cinch-gall': 'elbow-gall',
  galled: 'elbow-gall',
  sore: 'elbow-gall',
  'sore-elbow': 'elbow-gall',
  rub: ['buckle-rub', 'elbow-gall'],
  rolls: 'saddle-rolls',
  rolling: 'saddle-rolls',
  slips: ['saddle-rolls', 'slips-back'],
  slides: ['saddle-rolls', 'slips-back'],
  'slides-back': 'slips-back',
  creeps: 'creeps-forward',
  'slides-forward': 'creeps-forward',
  cinchy: 'girthy',
} as const satisfies Sense;

export const useSense = {
  heading: 'roping',
  header: 'roping',
  heeling: 'roping',
  heeler: 'roping',
  'team-roping': 'roping',
  'calf-roping': 'roping',
  'trail-riding': 'trail',
  'barrel-racing': 'barrels',
} as const satisfies Sense;

export const styleSense = {
  roper: ['high-flare', 'low-flare'],
  flare: ['high-flare', 'low-flare'],
  flared: ['high-flare', 'low-flare'],
} as const satisfies Sense;

/** Keys that are not ours, by the block they stand in -> the key of that block that is meant. */
const keySense: Readonly<Record<string, Sense>> = {
  '': { name: 'shop' },
  buckles: { name: 'id', width: 'bar', 'bar-width': 'bar' },
};

/** Our key for a key in a block, if the block has it: `name` at the top is meant in a shop, not in an order. */
export function sensedKey(key: string, parent: string, allowed: readonly string[]): string | undefined {
  const sense = Object.hasOwn(keySense, parent) ? (keySense[parent] ?? {}) : {};
  return sensed(key, sense).find((word) => allowed.includes(word));
}

/** Keys of one block that would mean another thing in another: path -> what to say instead of where it belongs. */
export const elsewhereOther: Readonly<Record<string, string>> = {
  'horse.age': 'the age of the horse is not asked for; age under current is that of the cinch',
  'horse.barrel.width': 'the width of the barrel is not asked for: its depth, or its shape in a word',
  'saddle.rigging.name': 'a position with a name stands alone, as in rigging: 7/8',
};
