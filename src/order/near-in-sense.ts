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
  'horse.age': 'leave out the age of the horse; age under current is the age of the cinch',
  'horse.barrel.width': 'give the depth of the barrel, or its shape in a word, not its width',
  'saddle.rigging.name': 'write a named position alone, as in rigging: 7/8',
};
