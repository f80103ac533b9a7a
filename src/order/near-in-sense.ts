/** Trade words that mean ours but look different, for hints. */

/** A written word -> its possible meanings [common practice, no source]. */
export type Sense<W extends string = string> = Readonly<Record<string, W | readonly W[]>>;

/** "Quarter Horse" and quarter_horse are alike. */
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

/** By block: keys not ours, with the one meant. */
const keySense: Readonly<Record<string, Sense>> = {
  '': { name: 'shop' },
  buckles: { name: 'id', width: 'bar', 'bar-width': 'bar' },
};

/** If the block has it. */
export function sensedKey(key: string, parent: string, allowed: readonly string[]): string | undefined {
  const sense = Object.hasOwn(keySense, parent) ? (keySense[parent] ?? {}) : {};
  return sensed(key, sense).find((word) => allowed.includes(word));
}

/** By path: where moving the key would be wrong. */
export const elsewhereOther: Readonly<Record<string, string>> = {
  'horse.age': 'leave out the age of the horse; age under current is the age of the cinch',
  'horse.barrel.width': 'give the depth of the barrel, or its shape in a word, not its width',
  'saddle.rigging.name': 'write a named position alone, as in rigging: 7/8',
};
